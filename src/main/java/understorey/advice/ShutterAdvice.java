package understorey.advice;

import static understorey.advice.Measure.F_NUMBER;
import static understorey.advice.Measure.SHUTTER_SECONDS;
import static understorey.advice.Measure.STOPS;

/** What takes light on its way, and how to fire the shutter. */
public sealed interface ShutterAdvice extends Advice {

    /** Makes a picture a compromise or rules it out. */
    sealed interface Objection extends ShutterAdvice {

        @Override
        default Severity severity() {
            return Severity.OBJECTION;
        }
    }

    record FilterTakes(@In(STOPS) double stops) implements ShutterAdvice {
    }

    record ClosenessTakes(@In(F_NUMBER) double aperture, @In(F_NUMBER) double working, @In(STOPS) double stops) implements ShutterAdvice {
    }

    /** Longer than any frame makes sense. */
    record TooDark(@In(SHUTTER_SECONDS) double time) implements Objection {
    }

    /** Longer than the camera's own scale. */
    record Bulb(@In(SHUTTER_SECONDS) double time) implements ShutterAdvice {
    }

    record BulbWithoutRelease(@In(SHUTTER_SECONDS) double time) implements Objection {
    }

    /** How to fire the shutter: one way for each picture. */
    sealed interface Release extends ShutterAdvice {
    }

    record LetGoByRemote() implements Release {
    }

    record LetGoByTimer() implements Release {
    }

    /** Without a remote release, in wind: a self-timer cannot wait for a lull. */
    record LetGoByBurst() implements Release {
    }

    /** A time in which the shake of putting the camera up still shows. */
    record SettleFirst() implements ShutterAdvice {
    }
}
