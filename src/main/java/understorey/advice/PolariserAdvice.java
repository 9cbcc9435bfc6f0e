package understorey.advice;

import static understorey.advice.Measure.DEGREES;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.STOPS;

/** What a polariser does for a picture. */
public sealed interface PolariserAdvice extends Advice {

    record PolariserSky(@In(STOPS) double stops, @In(DEGREES) double angle) implements PolariserAdvice {
    }

    /** Darker in one part of the frame than in another. */
    record PolariserSkyUneven(@In(STOPS) double left, @In(STOPS) double middle, @In(STOPS) double right) implements PolariserAdvice {
    }

    /** Too near the sun, or straight away from it. */
    record PolariserSkyLittle(@In(DEGREES) double angle) implements PolariserAdvice {
    }

    /** Too little blue. */
    record PolariserSkyClouded() implements PolariserAdvice {
    }

    /** The camera looks down past the horizon. */
    record PolariserNoSky() implements PolariserAdvice {
    }

    /** Sheen in the middle and at the foot of the frame. */
    record PolariserLeaves(@In(SHARE) double middle, @In(SHARE) double foot) implements PolariserAdvice {
    }

    /** Sheen at the foot only: the middle looks no lower than the horizon. */
    record PolariserLeavesFoot(@In(SHARE) double foot) implements PolariserAdvice {
    }

    /** Looked at in another way the leaves would shine less. */
    record PolariserLeavesBest(@In(DEGREES) double angle) implements PolariserAdvice {
    }

    record PolariserLoss(@In(STOPS) double stops) implements PolariserAdvice {
    }
}
