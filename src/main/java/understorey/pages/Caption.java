package understorey.pages;

import understorey.brief.Brief;
import understorey.kit.Intent;
import understorey.plan.Site;
import understorey.plan.Subject;

/**
 * The beginning of a caption for the published picture, which the author finishes: what, where, when, and its part in the
 * story. A caption goes to everybody, whoever reads the plan: of a sensitive site it has the public name or none, and never
 * a spot.
 */
final class Caption {

    private Caption() {
    }

    static String of(Brief brief, Intent intent) {
        Subject subject = intent.shot().subject();
        String name = subject.name();
        String place = place(brief.trip().site());
        return Character.toUpperCase(name.charAt(0)) + name.substring(1)
                + (subject.scientificName() == null ? "" : ", " + subject.scientificName())
                + ". " + (place == null ? "" : place + ", ") + Words.name(brief.date().getMonth()) + " " + brief.date().getYear() + ". "
                + part(intent) + ": …";
    }

    private static String place(Site site) {
        return site.sensitive() ? site.publicName() : site.name();
    }

    private static String part(Intent intent) {
        return switch (intent.role()) {
            case OPENING -> "The opening";
            case APPROACH -> "Going in";
            case DETAIL -> "A detail";
            case CLOSING -> "The close";
            case EXTRA -> "An extra";
        };
    }
}
