package understorey.advice;

import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.F_NUMBER;
import static understorey.advice.Measure.METRES;
import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.WHOLE_METRES;

/** How the depth of field is held, and what becomes of the background. */
public sealed interface DepthAdvice extends Advice {

    /** Makes a picture a compromise or rules it out. */
    sealed interface Objection extends DepthAdvice {

        @Override
        default Severity severity() {
            return Severity.OBJECTION;
        }
    }

    /** A focus stack in even steps holds the depth, which one frame cannot. */
    record Stack(@In(COUNT) int frames, @In(METRES) double step) implements DepthAdvice {
    }

    /** The stack reaches beyond the focus ring: the whole camera moves. */
    record StackByRail(@In(COUNT) int frames, @In(METRES) double step) implements DepthAdvice {
    }

    record StackView(@In(COUNT) int frames, @In(METRES) double first, @In(METRES) double last) implements DepthAdvice {
    }

    record OneFrameTooMany(@In(COUNT) int frames) implements Objection {
    }

    /** Gusts shift the frames of a stack. */
    record OneFrameInWind(@In(METRES_PER_SECOND) double wind) implements DepthAdvice {
    }

    /** Hands shift the frames of a stack. */
    record OneFrameByHand() implements DepthAdvice {
    }

    /** One frame holds less than the whole flower, whose depth is a rule of thumb. */
    record FlowerDeeper(@In(METRES) double held, @In(METRES) double flower) implements DepthAdvice {
    }

    /** So much less that only a slice of the flower is sharp. */
    record FlowerSliced(@In(METRES) double held, @In(METRES) double flower) implements Objection {
    }

    /** One frame holds less than the whole flower, and a focus stack would hold it. */
    record FlowerByStack(@In(METRES) double held, @In(METRES) double flower, @In(COUNT) int frames, @In(F_NUMBER) double aperture)
            implements DepthAdvice {
    }

    record BackgroundMelts(@In(WHOLE_METRES) double behind, @In(SHARE) double near) implements DepthAdvice {
    }

    record BackgroundShows(@In(WHOLE_METRES) double behind, @In(SHARE) double near, @In(F_NUMBER) double widest,
            @In(SHARE) double open) implements DepthAdvice {
    }

    /** The background shows although the lens is open all the way. */
    record BackgroundShowsWideOpen(@In(WHOLE_METRES) double behind, @In(SHARE) double near) implements DepthAdvice {
    }
}
