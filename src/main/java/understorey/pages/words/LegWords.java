package understorey.pages.words;

import understorey.brief.Brief;
import understorey.order.Leg;

/** A part of the running order in a few words. */
public final class LegWords {

    private LegWords() {
    }

    /** {@code walk to the old coppice}, {@code 2 Carpet under oaks}. */
    public static String of(Leg leg, Brief brief) {
        return switch (leg.what()) {
            case WALK -> (leg.shot() == null ? "walk back to " : "walk to ") + Words.place(brief.trip().site(), leg.spot());
            case SET_UP -> "set up";
            case WAIT -> "wait";
            case SHOOT -> brief.shot(leg.shot()).number() + " " + leg.shot();
        };
    }
}
