package understorey.advice;

import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.DIOPTRES;
import static understorey.advice.Measure.ISO;
import static understorey.advice.Measure.KILOGRAMS;
import static understorey.advice.Measure.METRES;
import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.MILLIMETRES;
import static understorey.advice.Measure.PRINT_WIDTH;
import static understorey.advice.Measure.SHUTTER_SECONDS;
import static understorey.advice.Measure.TIMES;

/** What would help a picture that the bag does not take as asked. */
public sealed interface HelpAdvice extends Advice {

    /** A thing to buy or to borrow; other help is something to do. */
    sealed interface Thing extends HelpAdvice {
    }

    /** There is no body that takes the lens. */
    record NoCamera() implements Thing {
    }

    record HelpLonger(@In(MILLIMETRES) double focal) implements Thing {
    }

    record HelpWider(@In(MILLIMETRES) double focal) implements Thing {
    }

    /** Something in the bag brings the lens closer. */
    record HelpAttach(String attachment, @In(TIMES) double times) implements HelpAdvice {
    }

    record HelpTube(@In(MILLIMETRES) double length) implements Thing {
    }

    record HelpCloseUpLens(@In(DIOPTRES) double power) implements Thing {
    }

    record HelpStepUpRing(@In(MILLIMETRES) double lens, @In(MILLIMETRES) double thread, String filter) implements Thing {

        @Override
        public Severity severity() {
            return Severity.OBJECTION;
        }
    }

    record HelpPolariser(@In(MILLIMETRES) double thread) implements Thing {
    }

    record HelpSupport(@In(METRES) double height) implements Thing {
    }

    /** Legs that carry more. */
    record HelpStrongerSupport(@In(KILOGRAMS) double load, @In(METRES) double height) implements Thing {
    }

    /** From the distance asked the lens does not focus: step back, and crop. */
    record HelpCrop(@In(METRES) double distance, @In(TIMES) double times) implements HelpAdvice {
    }

    /** Another spot: nearer, farther, or with nothing so near. */
    record HelpSpotNearer(@In(TIMES) double times) implements HelpAdvice {
    }

    record HelpSpotFarther(@In(TIMES) double times) implements HelpAdvice {
    }

    record HelpSpotClear(@In(METRES) double near) implements HelpAdvice {
    }

    record HelpSmallerPrint(@In(PRINT_WIDTH) double print) implements HelpAdvice {
    }

    /** Higher than the bag accepts, and enough to stop the flowers. */
    record HelpIso(@In(ISO) int iso, @In(SHUTTER_SECONDS) double time) implements HelpAdvice {
    }

    /** A larger frame, whose depth of field holds more of the flower. */
    record HelpFrameWider(@In(METRES) double width) implements HelpAdvice {
    }

    /** A focus stack, which the hands or the wind rule out. */
    record HelpStack(@In(COUNT) int frames) implements HelpAdvice {
    }

    /** Less wind at the flowers. */
    record HelpShelter(@In(METRES_PER_SECOND) double wind) implements HelpAdvice {
    }

    /** No air outdoors is still enough for the flowers at this shutter speed. */
    record HelpClamp() implements Thing {
    }

    /** A companion has what is missing. */
    record Borrow(String whose, String item) implements Thing {
    }

    /** A companion's own camera takes it. */
    record BorrowCamera(String whose, String item) implements Thing {
    }
}
