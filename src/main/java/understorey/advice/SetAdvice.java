package understorey.advice;

import static understorey.advice.Measure.F_NUMBER;
import static understorey.advice.Measure.ISO;
import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.SHUTTER_SECONDS;
import static understorey.advice.Measure.STOPS;
import static understorey.advice.Measure.TIMES;

/** What the author sets on the camera, and what comes of it. */
public sealed interface SetAdvice extends Advice {

    /** Makes a picture a compromise or rules it out. */
    sealed interface Objection extends SetAdvice {

        @Override
        default Severity severity() {
            return Severity.OBJECTION;
        }
    }

    record ApertureSet(@In(F_NUMBER) double aperture) implements SetAdvice {
    }

    record ShutterSet(@In(SHUTTER_SECONDS) double time) implements SetAdvice {
    }

    record IsoSet(@In(ISO) int iso) implements SetAdvice {
    }

    /** The plan chooses the ISO for the shutter speed that is set. */
    record IsoForShutterSet(@In(ISO) int iso, @In(SHUTTER_SECONDS) double time) implements SetAdvice {
    }

    /** The plan chooses the aperture for the shutter speed that is set. */
    record ApertureForShutterSet(@In(F_NUMBER) double aperture, @In(SHUTTER_SECONDS) double time) implements SetAdvice {
    }

    /** One frame, although a stack would hold the depth of field. */
    record OneFrameSet() implements SetAdvice {
    }

    /** The lens does not open, or stop down, as far. */
    record ApertureNotOnLens(@In(F_NUMBER) double aperture, @In(F_NUMBER) double nearest) implements Objection {
    }

    /** Diffraction softens everything. */
    record ApertureSetSoft(@In(F_NUMBER) double aperture, @In(F_NUMBER) double useful) implements Objection {
    }

    record ApertureSetShallow(@In(F_NUMBER) double aperture, @In(F_NUMBER) double needed, @In(STOPS) double stops) implements Objection {
    }

    /** The body does not go as low. */
    record IsoNotOnBody(@In(ISO) int iso, @In(ISO) int base) implements Objection {
    }

    /** Higher than what the author's own bag accepts. */
    record IsoSetHigh(@In(ISO) int iso, @In(ISO) int top) implements SetAdvice {
    }

    record Overexposed(@In(STOPS) double stops) implements Objection {
    }

    record Underexposed(@In(STOPS) double stops) implements Objection {
    }

    /** A shutter speed at which the flowers blur is set for that blur. */
    record BlurAsSet(@In(SHUTTER_SECONDS) double time, @In(METRES_PER_SECOND) double wind, @In(TIMES) double times) implements SetAdvice {
    }

    record SetBlursFlowers(@In(SHUTTER_SECONDS) double time, @In(SHUTTER_SECONDS) double longest, @In(METRES_PER_SECOND) double wind,
            @In(TIMES) double times) implements Objection {
    }

    record SetBlursByHand(@In(SHUTTER_SECONDS) double time, @In(SHUTTER_SECONDS) double longest, Enum<?> posture) implements Objection {
    }
}
