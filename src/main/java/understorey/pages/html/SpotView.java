package understorey.pages.html;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.brief.SpotLight;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.sky.Interval;

/**
 * The light at one place of pictures, in words and drawings.
 *
 * @param name      of its spots, or of the site
 * @param horizon   what the sun must clear: the skyline, or a level horizon where no skyline is known
 * @param sunlit    when the sun is above it
 * @param overTrees when it is above the treetops of the clearing; null without one
 * @param mist      how likely it lies in the valley at dawn, and why; at the first place only
 */
public record SpotView(String name, String horizon, @Nullable String sunlit, @Nullable String overTrees, List<String> mist,
                       TemplateHTMLOutputModel skyline) {

    public static List<SpotView> of(Brief brief, Sentences sentences) {
        List<SpotView> views = new ArrayList<>();
        for (SpotLight spot : brief.places()) {
            views.add(of(brief, spot, views.size() + 1, sentences));
        }
        return views;
    }

    private static SpotView of(Brief brief, SpotLight spot, int number, Sentences sentences) {
        List<String> mist = new ArrayList<>();
        if (number == 1 && spot.place().mist().likelihood() != null) {
            mist.add("Chance of mist at dawn: " + Words.word(spot.place().mist().likelihood()) + ".");
        }
        if (number == 1) {
            mist.addAll(sentences.of(spot.place().mist().reasons()));
            mist.addAll(sentences.of(brief.inMist()));
        }
        ClockWords clock = sentences.clock();
        return new SpotView(spot.place().name(brief.trip().site()), spot.place().levelHorizon() ? "a level horizon" : "the skyline",
                spans(spot.place().sunlit(), clock), spot.place().overTrees() == null ? null
                : spot.place().overTrees().isEmpty() ? "never" : spans(spot.place().overTrees(), clock), mist,
                Drawn.of(spot.skyline(), "skyline" + number, sentences).svg());
    }

    /** Stretches in one line; null when there are none. */
    static @Nullable String spans(List<Interval> stretches, ClockWords clock) {
        if (stretches.size() == 1 && stretches.get(0).length().toHours() >= 23) {
            return "all day";
        }
        return stretches.isEmpty() ? null : stretches.stream().map(clock::span).collect(Collectors.joining(", "));
    }
}
