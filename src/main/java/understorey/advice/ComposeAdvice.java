package understorey.advice;

import static understorey.advice.Measure.METRES;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.STOPS;

/** What to look for when a picture is framed. */
public sealed interface ComposeAdvice extends Advice {

    /** Spoils the picture if nothing is done. */
    sealed interface Trouble extends ComposeAdvice {

        @Override
        default Severity severity() {
            return Severity.OBJECTION;
        }
    }

    /** The ground on the bottom edge is nearer than the depth of field. */
    record ForegroundSoft(@In(METRES) double nearest, @In(METRES) double from) implements Trouble {
    }

    record ForegroundSharp(@In(METRES) double nearest) implements ComposeAdvice {
    }

    /** Sky in the frame that the exposure for the ground does not hold. */
    record SkyWhite(@In(SHARE) double share, @In(STOPS) double over) implements Trouble {
    }

    record SkyHeld(@In(SHARE) double share) implements ComposeAdvice {
    }

    /** Trees as high as the site's are cut by the top edge when they are nearer. */
    record TreesWholeFrom(@In(METRES) double height, @In(METRES) double from) implements ComposeAdvice {
    }

    record TrunksOnly() implements ComposeAdvice {
    }

    /** The nearest plant of a view. */
    record NearestPlant(@In(SHARE) double share, @In(METRES) double nearest) implements ComposeAdvice {
    }

    record HeadFills(@In(SHARE) double share) implements ComposeAdvice {
    }

    /** One flower of a head that does not fit into the frame. */
    record FlowerFills(@In(SHARE) double share) implements ComposeAdvice {
    }

    /** A flower too large for a margin in the frame; the distance from which it would have one. */
    record FlowerOverfills(@In(SHARE) double share, @In(METRES) double distance) implements ComposeAdvice {
    }

    /** A view whose author names no line that leads in. */
    record LookForLine() implements ComposeAdvice {
    }

    /** A view from above. */
    record KeepFeetOut() implements ComposeAdvice {
    }

    /** A close-up. */
    record LookBehindFlower() implements ComposeAdvice {
    }
}
