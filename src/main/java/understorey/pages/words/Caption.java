package understorey.pages.words;

import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.kit.Intent;
import understorey.plan.Site;
import understorey.plan.Subject;

/**
 * The beginning of a caption for the published picture, which the author finishes: what, where and when. A caption goes
 * to everybody, whatever the audience of the plan: for a sensitive site it has the public name or none, and never a spot.
 */
public final class Caption {

    private Caption() {
    }

    public static String of(Brief brief, Intent intent) {
        Subject subject = intent.shot().subject();
        String place = place(brief.trip().site());
        return Words.capital(plain(subject.name()))
                + (subject.scientificName() == null ? "" : ", " + subject.scientificName())
                + ". " + (place == null ? "" : place + ", ") + Words.name(brief.date().getMonth()) + " " + brief.date().getYear() + ". …";
    }

    /** A common name without what is said beside it: "fly agaric (fungus)" is captioned "fly agaric". */
    private static String plain(String name) {
        int open = name.indexOf(" (");
        int close = name.indexOf(')', open + 1);
        return open < 1 || close < 0 ? name : name.substring(0, open) + name.substring(close + 1);
    }

    private static @Nullable String place(Site site) {
        return site.sensitive() ? site.publicName() : site.name();
    }
}
