package understorey.advice;

import static understorey.advice.Measure.KILOGRAMS;
import static understorey.advice.Measure.METRES;

/** What keeps a support from holding the camera for a picture. */
public sealed interface SupportAdvice extends Advice {

    /** Nothing in the bag holds the camera. */
    record NoSupport() implements SupportAdvice {
    }

    record SupportTooTall(String support, @In(METRES) double lowest, @In(METRES) double asked) implements SupportAdvice {
    }

    record SupportTooShort(String support, @In(METRES) double highest, @In(METRES) double asked) implements SupportAdvice {
    }

    record SupportOverloaded(String support, @In(KILOGRAMS) double carries, @In(KILOGRAMS) double load) implements SupportAdvice {
    }

    /** It would hold the camera, and is left at home. */
    record SupportAtHome(String support) implements SupportAdvice {
    }
}
