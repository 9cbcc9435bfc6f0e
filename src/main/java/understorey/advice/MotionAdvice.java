package understorey.advice;

import static understorey.advice.Measure.F_NUMBER;
import static understorey.advice.Measure.ISO;
import static understorey.advice.Measure.METRES;
import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.MILLIMETRES;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.SHUTTER_SECONDS;
import static understorey.advice.Measure.TIMES;

/** Why an ISO was chosen, and how hands and wind limit the shutter speed. */
public sealed interface MotionAdvice extends Advice {

    /** Makes a picture a compromise or rules it out. */
    sealed interface Objection extends MotionAdvice {

        @Override
        default Severity severity() {
            return Severity.OBJECTION;
        }
    }

    /** Hands would hold it too. */
    record IsoBase(@In(ISO) int iso) implements MotionAdvice {
    }

    /** The camera is steady, so the ISO is the lowest. */
    record IsoBaseSteady(@In(ISO) int iso, String support) implements MotionAdvice {
    }

    /** Fast enough for the hand at the lowest ISO. */
    record IsoBaseHandHeld(@In(ISO) int iso, Enum<?> posture, @In(MILLIMETRES) double focal,
            @In(SHUTTER_SECONDS) double longest) implements MotionAdvice {
    }

    record IsoBaseMonopod(@In(ISO) int iso, String support, @In(MILLIMETRES) double focal,
            @In(SHUTTER_SECONDS) double longest) implements MotionAdvice {
    }

    /** Raised until the hand holds. */
    record IsoForHand(@In(ISO) int iso, Enum<?> posture, @In(SHUTTER_SECONDS) double longest,
            @In(MILLIMETRES) double focal) implements MotionAdvice {
    }

    record IsoForMonopod(@In(ISO) int iso, String support, @In(SHUTTER_SECONDS) double longest,
            @In(MILLIMETRES) double focal) implements MotionAdvice {
    }

    /** Even the highest ISO leaves a shutter speed too slow for the hand. */
    record HandTooSlow(@In(ISO) int iso, Enum<?> posture, @In(SHUTTER_SECONDS) double longest,
            @In(MILLIMETRES) double focal) implements Objection {
    }

    record MonopodTooSlow(@In(ISO) int iso, @In(SHUTTER_SECONDS) double longest, String support,
            @In(MILLIMETRES) double focal) implements Objection {
    }

    /** The ISO is raised until the stems do not blur. */
    record IsoForWind(@In(ISO) int iso, @In(METRES_PER_SECOND) double wind, @In(SHUTTER_SECONDS) double longest,
            @In(METRES) double nearest) implements MotionAdvice {
    }

    /** The ISO is raised until the frame takes minutes, not an hour. */
    record IsoForDark(@In(ISO) int iso, @In(SHUTTER_SECONDS) double time) implements MotionAdvice {
    }

    /** The ISO is raised until the camera times the frame itself, because there is no release for bulb. */
    record IsoWithoutRelease(@In(ISO) int iso, @In(SHUTTER_SECONDS) double time,
            @In(SHUTTER_SECONDS) double longest) implements MotionAdvice {
    }

    /** The ISO is raised, though the hands might hold so long. */
    record IsoForSlowHands(@In(ISO) int iso, @In(SHUTTER_SECONDS) double time) implements MotionAdvice {
    }

    /** The ISO is raised, because flowers hardly ever keep still for so long. */
    record IsoForStillness(@In(ISO) int iso, @In(SHUTTER_SECONDS) double time) implements MotionAdvice {
    }

    /** Raised, because a slower frame would meet gusts. */
    record IsoForGusts(@In(ISO) int iso, @In(METRES_PER_SECOND) double gust) implements MotionAdvice {
    }

    /**
     * At a lower ISO or stopped down further, while the wind is low.
     *
     * @param left  of the mean wind
     * @param share of the time
     */
    record InLull(@In(F_NUMBER) double aperture, @In(SHUTTER_SECONDS) double time, @In(ISO) int iso, @In(SHARE) double left,
            @In(SHARE) double share) implements MotionAdvice {
    }

    /**
     * The mean wind leaves the flowers sharp, a gust does not.
     *
     * @param share of the time in which the wind is low enough for the shutter speed
     */
    record GustsBlur(@In(METRES_PER_SECOND) double gust, @In(SHUTTER_SECONDS) double longest, @In(SHARE) double share)
            implements MotionAdvice {
    }

    /** Even the highest ISO leaves a shutter speed too slow for the flowers. */
    record WindTooStrong(@In(METRES_PER_SECOND) double wind, @In(SHUTTER_SECONDS) double longest, @In(ISO) int iso,
            @In(METRES) double nearest, @In(TIMES) double times) implements Objection {
    }

    /** The stems swing through several depths of field. */
    record SwingsOutOfFocus(@In(METRES) double swing, @In(METRES) double held, @In(METRES_PER_SECOND) double wind) implements Objection {
    }

    /** The stems are still enough for the shutter speed. */
    record StemsStill(@In(METRES_PER_SECOND) double wind, @In(METRES) double nearest) implements MotionAdvice {
    }
}
