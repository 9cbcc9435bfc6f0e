package understorey.exposure;

import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.ToneAdvice;
import understorey.plan.Subject;

/**
 * Where petals are in the histogram: their reflectance against the 18 % of mid-grey. Reflectances by class of
 * colour are from memory, right to half a stop; petals that shine, or that the light comes through, are higher.
 */
final class Petals {

    /** Green leaves, which a meter makes mid-grey in a frame full of them: from memory, right to a third of a stop. */
    private static final double LEAVES = 0.09;
    /** Less than that under clipping, and one channel of the petals clips: common practice, no source. */
    private static final double LEAST_MARGIN_STOPS = 1 / 3.0;
    /** Closer to the middle than that, the side does not show. */
    private static final double MIDDLE_STOPS = 1 / 4.0;

    private Petals() {
    }

    /** Stops above mid-grey in the light metered; negative below. */
    static double stops(Subject.Reflectance reflectance) {
        return Tones.aboveMidGrey(share(reflectance));
    }

    private static double share(Subject.Reflectance reflectance) {
        return switch (reflectance) {
            case WHITE -> 0.75;
            case YELLOW -> 0.5;
            case PINK -> 0.35;
            case GREEN -> 0.18;
            case BLUE_VIOLET -> 0.12;
            case RED -> 0.1;
        };
    }

    /** Stops by which petals stay under clipping when a surface is metered as mid-grey; negative where they clip. */
    static double marginStops(double petals, double metered) {
        return Tones.HEADROOM_STOPS - Tones.aboveMidGrey(petals) + Tones.aboveMidGrey(metered);
    }

    /** Stops to give less than the meter makes of leaves, so that the petals keep their margin; 0 where they have it. */
    static double lessStops(Subject.Reflectance reflectance) {
        return Math.max(0, LEAST_MARGIN_STOPS - marginStops(share(reflectance), LEAVES));
    }

    /** The histogram to aim for; null if the flower's colour is unknown. */
    static @Nullable Advice aim(Subject subject) {
        if (subject.reflectance() == null) {
            return null;
        }
        double stops = stops(subject.reflectance());
        double less = lessStops(subject.reflectance());
        if (less > 0) {
            return new ToneAdvice.PetalsClip(subject.name(), stops, less);
        }
        if (stops > MIDDLE_STOPS) {
            return new ToneAdvice.PetalsBright(subject.name(), stops);
        }
        if (stops < -MIDDLE_STOPS) {
            return new ToneAdvice.PetalsDark(subject.name(), -stops);
        }
        return new ToneAdvice.PetalsMiddle(subject.name());
    }
}
