package understorey.advice;

import static understorey.advice.Measure.F_NUMBER;
import static understorey.advice.Measure.ISO;
import static understorey.advice.Measure.SHUTTER_SECONDS;
import static understorey.advice.Measure.STOPS;

/** Why an aperture was chosen, and what keeps the frame from being too bright. */
public sealed interface ApertureAdvice extends Advice {

    /** Makes a picture a compromise or rules it out. */
    sealed interface Objection extends ApertureAdvice {

        @Override
        default Severity severity() {
            return Severity.OBJECTION;
        }
    }

    /** The aperture that holds the sharpness asked. */
    record ApertureForDepth(@In(F_NUMBER) double aperture) implements ApertureAdvice {
    }

    /** For a flower deeper than one frame holds. */
    record ApertureForPart(@In(F_NUMBER) double aperture) implements ApertureAdvice {
    }

    /** Further down than the sharpness asked needs: both of its ends gain. */
    record ApertureBalanced(@In(F_NUMBER) double aperture, @In(F_NUMBER) double asked) implements ApertureAdvice {
    }

    /** Opened from there for a shorter time, within the sharpness asked. */
    record ApertureOpened(@In(F_NUMBER) double aperture, @In(F_NUMBER) double first) implements ApertureAdvice {
    }

    record ApertureOpenedOn(@In(F_NUMBER) double aperture, @In(F_NUMBER) double first, @In(ISO) int iso) implements ApertureAdvice {
    }

    /** The lens is sharp enough wide open. */
    record ApertureWideOpen(@In(F_NUMBER) double aperture) implements ApertureAdvice {
    }

    /** The depth is held wide open, and the lens is sharper two stops from there. */
    record ApertureStoppedDown(@In(F_NUMBER) double aperture) implements ApertureAdvice {
    }

    /** Smaller would blur everything by diffraction. */
    record ApertureAtLimit(@In(F_NUMBER) double aperture) implements ApertureAdvice {
    }

    /** Each frame of a stack at its sharpest. */
    record ApertureForStack(@In(F_NUMBER) double aperture) implements ApertureAdvice {
    }

    /** There is one aperture only. */
    record ApertureFixed(@In(F_NUMBER) double aperture) implements ApertureAdvice {
    }

    /** Smaller for a time that a shutter goes down to. */
    record StoppedDown(@In(F_NUMBER) double aperture, @In(F_NUMBER) double first,
            @In(SHUTTER_SECONDS) double shortest) implements ApertureAdvice {
    }

    record StoppedDownShows(@In(F_NUMBER) double aperture, @In(F_NUMBER) double first, @In(SHUTTER_SECONDS) double shortest,
            @In(STOPS) double stops) implements ApertureAdvice {
    }

    /** A filter lengthens a time that no shutter goes down to. */
    record DimmedByFilter(String filter, @In(STOPS) double stops, @In(SHUTTER_SECONDS) double shortest) implements ApertureAdvice {
    }

    record DimmedByFilterAndRing(String filter, String ring, @In(STOPS) double stops,
            @In(SHUTTER_SECONDS) double shortest) implements ApertureAdvice {
    }

    /** Shorter than a shutter goes, whatever the lens does. */
    record TooBright(@In(SHUTTER_SECONDS) double shortest, @In(F_NUMBER) double aperture, @In(STOPS) double stops) implements Objection {
    }
}
