package understorey.exposure;

import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.ToneAdvice;
import understorey.plan.Subject;

/**
 * Where petals stand in the histogram: their reflectance against the 18 % of middle grey. Reflectances by class of
 * colour are from memory, right to half a stop; petals that shine, or that the light comes through, stand higher.
 */
final class Petals {

    private static final double MIDDLE_GREY = 0.18;
    /** Nearer to the middle than that nobody sees on which side they stand. */
    private static final double MIDDLE_STOPS = 1 / 4.0;

    private Petals() {
    }

    /** Stops above middle grey in the light metered; negative below. */
    static double stops(Subject.Reflectance reflectance) {
        double share = switch (reflectance) {
            case WHITE -> 0.75;
            case YELLOW -> 0.5;
            case PINK -> 0.35;
            case GREEN -> 0.18;
            case BLUE_VIOLET -> 0.12;
            case RED -> 0.1;
        };
        return Math.log(share / MIDDLE_GREY) / Math.log(2);
    }

    /** The histogram to aim for; null if the flower's colour is unknown. */
    static @Nullable Advice aim(Subject subject) {
        if (subject.reflectance() == null) {
            return null;
        }
        double stops = stops(subject.reflectance());
        if (stops > MIDDLE_STOPS) {
            return new ToneAdvice.PetalsBright(subject.name(), stops);
        }
        if (stops < -MIDDLE_STOPS) {
            return new ToneAdvice.PetalsDark(subject.name(), -stops);
        }
        return new ToneAdvice.PetalsMiddle(subject.name());
    }
}
