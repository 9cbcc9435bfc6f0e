package understorey.pages;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.brief.TimedShot;
import understorey.kit.CoverChoice;
import understorey.plan.Role;

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
    static CoverView of(TimedShot shot, Sentences sentences) {
        Role role = shot.intent().role();
        if (shot.cover() == null || role == Role.DETAIL || role == Role.CLOSING) {
            return null;
        }
        List<String> reasons = new ArrayList<>();
        for (Advice reason : shot.cover().reasons()) {
            reasons.add(sentences.of(reason));
        }
        List<Line> lenses = new ArrayList<>();
        for (CoverChoice choice : shot.cover().choices()) {
            lenses.add(new Line(choice.fit().camera().name() + ", " + Words.millimetres(choice.equivalentMm()),
                    choice.planned(), Words.metres(choice.nearestM()), Words.percent(choice.typical().cover()),
                    Words.percent(choice.typical().near()) + ", " + Words.percent(choice.typical().middle()) + ", "
                    + Words.percent(choice.typical().far()), Words.percent(choice.typical().flowers()), Words.metres(choice.depthM()),
                    Words.percent(choice.trunkScale())));
        }
        return new CoverView(reasons, lenses);
    }
}
