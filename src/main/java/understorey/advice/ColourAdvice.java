package understorey.advice;

import static understorey.advice.Measure.DEGREES;
import static understorey.advice.Measure.KELVIN;

/** Where to begin with the white balance. */
public sealed interface ColourAdvice extends Advice {

    record WhiteBalanceSun(@In(KELVIN) int kelvin, @In(KELVIN) int light, @In(DEGREES) double altitude) implements ColourAdvice {
    }

    /** The sun is down. */
    record WhiteBalanceTwilight(@In(KELVIN) int kelvin, @In(KELVIN) int light) implements ColourAdvice {
    }

    record WhiteBalanceSunAndShade(@In(KELVIN) int kelvin) implements ColourAdvice {
    }

    record WhiteBalanceShade(@In(KELVIN) int kelvin) implements ColourAdvice {
    }

    /** Sun and cloud by turns. */
    record WhiteBalanceBroken(@In(KELVIN) int kelvin) implements ColourAdvice {
    }

    record WhiteBalanceCloud(@In(KELVIN) int kelvin) implements ColourAdvice {
    }

    record WhiteBalanceMoon(@In(KELVIN) int kelvin) implements ColourAdvice {
    }

    /** Leaves overhead. */
    record GreenCast() implements ColourAdvice {
    }
}
