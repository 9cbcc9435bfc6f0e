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
    /** Green leaves, which a meter makes middle grey in a frame full of them: from memory, right to a third of a stop. */
    private static final double LEAVES = 0.09;
    /** A sensor clips at 18/√2 = 12.7 % of the exposure that saturates it: ISO 12232 as quoted in secondary copies, stops. */
    private static final double HEADROOM_STOPS = Math.log(100 * Math.sqrt(2) / 18) / Math.log(2);
    /** Less than that under clipping, and one channel of the petals clips: common practice, no source. */
    private static final double LEAST_MARGIN_STOPS = 1 / 3.0;
    /** Nearer to the middle than that nobody sees on which side they stand. */
    private static final double MIDDLE_STOPS = 1 / 4.0;

    private Petals() {
    }

    /** Stops above middle grey in the light metered; negative below. */
    static double stops(Subject.Reflectance reflectance) {
        return above(share(reflectance));
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

    /** Stops of a surface above middle grey. */
    static double above(double reflectance) {
        return Math.log(reflectance / MIDDLE_GREY) / Math.log(2);
    }

    /** Stops by which petals stay under clipping when a surface is metered as middle grey; negative where they clip. */
    static double marginStops(double petals, double metered) {
        return HEADROOM_STOPS - above(petals) + above(metered);
    }

    /** The histogram to aim for; null if the flower's colour is unknown. */
    static @Nullable Advice aim(Subject subject) {
        if (subject.reflectance() == null) {
            return null;
        }
        double stops = stops(subject.reflectance());
        double margin = marginStops(share(subject.reflectance()), LEAVES);
        if (margin < LEAST_MARGIN_STOPS) {
            return new ToneAdvice.PetalsClip(subject.name(), stops, LEAST_MARGIN_STOPS - margin);
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
