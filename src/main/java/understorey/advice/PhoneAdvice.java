package understorey.advice;

import static understorey.advice.Measure.MILLIMETRES;
import static understorey.advice.Measure.STOPS;

/** How to take a picture with a phone. */
public sealed interface PhoneAdvice extends Advice {

    /** One of several cameras of the phone. */
    record PhoneCamera(String camera, @In(MILLIMETRES) double equivalent) implements PhoneAdvice {
    }

    /** Focus and exposure stay as they are on the flowers. */
    record PhoneLock(String subject) implements PhoneAdvice {
    }

    /** From an exposure locked on the petals. */
    record PhoneBrighter(String subject, @In(STOPS) double stops) implements PhoneAdvice {
    }

    record PhoneDarker(String subject, @In(STOPS) double stops) implements PhoneAdvice {
    }

    /** The contrast is more than one frame holds. */
    record PhoneHdr(@In(STOPS) double contrast) implements PhoneAdvice {
    }

    record PhoneTimer() implements PhoneAdvice {
    }

    /** In wind: a self-timer cannot wait for a lull. */
    record PhoneBurst() implements PhoneAdvice {
    }

    /** A phone without RAW. */
    record PhoneTones() implements PhoneAdvice {
    }

    record PhoneBraced() implements PhoneAdvice {
    }

    /** Near the ground. */
    record PhoneBracedLow() implements PhoneAdvice {
    }
}
