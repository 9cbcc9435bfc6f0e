package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.brief.TimedShot;
import understorey.light.Outlook;
import understorey.light.SunDirection;
import understorey.pages.tables.Row;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.sky.Interval;

/**
 * The light on one picture in words.
 *
 * @param grade   of the light wished for at the time planned: one word, or one a sky without a forecast what the sky
 *                will be; null without a wish
 * @param windows the best times of the day; null where the sky is not known or no hour is even fair
 * @param rows    all there is to say
 */
public record ShotLightView(@Nullable String grade, @Nullable String windows, List<Row> rows) {

    static ShotLightView of(TimedShot shot, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        List<String> grades = new ArrayList<>();
        for (TimedShot.Wished wished : shot.wished()) {
            String under = wished.sky() == null ? "" : ", " + Words.word(wished.sky()) + " sky";
            rows.add(new Row("Light wanted" + under, wishes(shot) + ": " + hope(wished.outlook(), sentences)));
            String grade = Words.word(wished.outlook().grade());
            grades.add(wished.sky() == null ? grade : grade + " if " + Words.word(wished.sky()));
        }
        if (shot.sunlight() != null) {
            add(rows, "Sun", shot.sunlight().reasons(), sentences);
            if (!shot.sunlight().overDay().isEmpty()) {
                rows.add(new Row("Light direction", sides(shot.sunlight().overDay(), sentences.clock())));
            }
        }
        if (shot.polariser() != null) {
            add(rows, "Polariser", shot.polariser().reasons(), sentences);
        }
        if (shot.whiteBalance() != null) {
            add(rows, "White balance", shot.whiteBalance().reasons(), sentences);
        }
        add(rows, "Mist", shot.mist(), sentences);
        return new ShotLightView(grades.isEmpty() ? null : String.join(", ", grades),
                ifKnown(shot.outlook(), outlook -> SpotView.spans(outlook.windows(), sentences.clock())), rows);
    }

    private static void add(List<Row> rows, String name, List<Advice> reasons, Sentences sentences) {
        if (!reasons.isEmpty()) {
            rows.add(new Row(name, inText(reasons, sentences)));
        }
    }

    /** The grade, why, the best times, and what spoils the rest. */
    private static String hope(Outlook outlook, Sentences sentences) {
        StringBuilder hope = new StringBuilder(Words.word(outlook.grade())).append(". ")
                .append(inText(outlook.because(), sentences));
        if (outlook.windows().isEmpty()) {
            hope.append(" Poor all day.");
        } else {
            hope.append(" Best ").append(SpotView.spans(outlook.windows(), sentences.clock())).append(" (")
                    .append(Words.word(outlook.best())).append(").");
        }
        boolean allDay = outlook.windows().isEmpty() && outlook.spoils().size() == 1;
        for (Outlook.Spoil spoil : allDay ? List.<Outlook.Spoil>of() : outlook.spoils()) {
            hope.append(' ').append(when(spoil.when(), outlook, sentences.clock())).append(": ")
                    .append(sentences.within(spoil.why()));
        }
        return hope.toString();
    }

    /** A stretch by the windows that it comes before, between or after. */
    private static String when(Interval stretch, Outlook outlook, ClockWords clock) {
        List<Interval> windows = outlook.windows();
        if (windows.isEmpty()) {
            return clock.span(stretch);
        }
        boolean first = !stretch.from().isAfter(windows.get(0).from());
        boolean last = !stretch.from().isBefore(windows.get(windows.size() - 1).to());
        return first ? "Before " + clock.of(stretch.to()) : last ? "From " + clock.of(stretch.from())
                : clock.span(stretch);
    }

    private static String sides(List<SunDirection.Stretch> stretches, ClockWords clock) {
        return stretches.stream().map(stretch -> switch (stretch.side()) {
            case BACK -> "backlight ";
            case SIDE -> "sidelight ";
            case FRONT -> "front light ";
            case OVERHEAD -> "overhead light ";
        } + clock.span(stretch.time())).collect(Collectors.joining(", "));
    }

    private static String wishes(TimedShot shot) {
        return shot.intent().shot().light().stream().map(Words::word).collect(Collectors.joining(", "));
    }

    private static String inText(List<Advice> reasons, Sentences sentences) {
        return String.join(" ", sentences.of(reasons));
    }
}
