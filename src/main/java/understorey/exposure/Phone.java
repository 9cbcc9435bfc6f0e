package understorey.exposure;

import java.util.List;
import understorey.advice.Advice;
import understorey.advice.PhoneAdvice;
import understorey.exposure.motion.Posture;
import understorey.exposure.scale.Bracket;
import understorey.kit.LensFit;
import understorey.plan.Subject;

/**
 * How to take a picture with a phone: its lenses are built in and have one aperture, and a tap on the screen sets focus and
 * exposure.
 */
final class Phone {

    /** Petals that a phone has locked as mid-grey go that much less far up than they are: common practice, no source. */
    private static final double HIGHLIGHTS_STOPS = 2 / 3.0;
    private static final double LEAST_STOPS = 1 / 6.0;
    /** A flower that takes less of the frame's shorter side leaves the spot that a tap meters to the leaves: common practice, no source. */
    private static final double FILLS_THE_SPOT = 1 / 3.0;
    /** Nearer to the ground than that a bag is at hand to rest on, a tree is not. */
    private static final double LOW_M = 0.5;

    private Phone() {
    }

    static boolean is(LensFit fit) {
        return fit.camera().lens().oneAperture();
    }

    /** Adds which camera, how to lock it, by how much to compensate, how to fire it and to hold it. */
    static void add(List<Advice> reasons, LensFit fit, Conditions conditions, double seconds, boolean awaitsLull) {
        if (fit.camera().body().fixedLenses().size() > 1) {
            reasons.add(new PhoneAdvice.PhoneCamera(fit.camera().lens().name(), fit.equivalentMm() / fit.cropTimes()));
        }
        Subject subject = fit.intent().shot().subject();
        reasons.add(new PhoneAdvice.PhoneLock(subject.name()));
        if (subject.reflectance() != null) {
            double stops = compensationStops(subject.reflectance(), fillsTheSpot(fit), conditions);
            if (Math.abs(stops) >= LEAST_STOPS) {
                reasons.add(stops > 0 ? new PhoneAdvice.PhoneBrighter(subject.name(), stops)
                        : new PhoneAdvice.PhoneDarker(subject.name(), -stops));
            }
        }
        if (!fit.released() && awaitsLull) {
            reasons.add(new PhoneAdvice.PhoneBurst());
        } else if (!fit.released() && Reminders.shakes(fit, seconds)) {
            reasons.add(new PhoneAdvice.PhoneTimer());
        }
        if (fit.support() == null) {
            reasons.add(fit.heightM() < LOW_M ? new PhoneAdvice.PhoneBracedLow() : new PhoneAdvice.PhoneBraced());
        }
    }

    private static boolean fillsTheSpot(LensFit fit) {
        Double widthMm = fit.flowerWidthMm();
        return widthMm != null && widthMm / 1000 >= FILLS_THE_SPOT * Math.min(fit.frameWidthM(), fit.frameHeightM());
    }

    /**
     * Exposure compensation where focus and exposure are locked, stops. Of a flower that fills the spot, up to where its petals belong,
     * two thirds of a stop short for those brighter than mid-grey; of smaller ones, down as far as petals among leaves clip. Less
     * where flecks of sun are brighter than the light metered.
     */
    static double compensationStops(Subject.Reflectance reflectance, boolean fillsTheSpot, Conditions conditions) {
        double petals = Petals.stops(reflectance);
        double stops = !fillsTheSpot ? -Petals.lessStops(reflectance) : petals > 0 ? Math.max(0, petals - HIGHLIGHTS_STOPS) : petals;
        return stops - Bracket.lessStops(conditions.aboveStops());
    }
}
