package understorey.pages.html;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.TimedShot;
import understorey.kit.CoverChoice;
import understorey.optics.FlowerCover;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;

/**
 * How thick the flowers look on one picture, in words.
 *
 * @param reasons what the planned lens shows, and what a longer, a wider and a lower one would
 * @param lenses  by rising focal length
 */
public record CoverView(List<String> reasons, List<Line> lenses) {

    /** One lens at one focal length, as the picture frames the nearest flowers. */
    public record Line(String lens, boolean planned, String nearest, String cover, String byDepth, String frame, String depth,
                       String trunk) {
    }

    /** Null for a picture of one plant or flower, and where the density of the subject is unknown. */
    static @Nullable CoverView of(TimedShot shot, Sentences sentences) {
        if (shot.cover() == null || !shot.ofCarpet()) {
            return null;
        }
        return new CoverView(sentences.of(shot.cover().reasons()), shot.cover().choices().stream().map(CoverView::line).toList());
    }

    private static Line line(CoverChoice choice) {
        FlowerCover typical = choice.typical();
        return new Line(choice.fit().camera().name() + ", " + Words.millimetres(choice.equivalentMm()),
                choice.planned(), Words.metres(choice.nearestM()), Words.percent(typical.cover()),
                Words.percent(typical.near()) + ", " + Words.percent(typical.middle()) + ", " + Words.percent(typical.far()),
                Words.percent(typical.flowers()), Words.metres(choice.depthM()), Words.percent(choice.trunkScale()));
    }
}
