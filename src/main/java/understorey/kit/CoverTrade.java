package understorey.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.CoverAdvice;
import understorey.kit.camera.Reach;
import understorey.optics.AngleOfView;
import understorey.optics.FlowerCover;
import understorey.optics.FlowerLayer;
import understorey.optics.GroundView;
import understorey.optics.Incline;
import understorey.plan.Lens;
import understorey.plan.Slope;
import understorey.plan.Subject;

/**
 * Carpet of flowers through each lens of a bag: how dense it looks, how deep it is, how large the trees behind it are.
 *
 * <p>Each lens is compared without a crop, at the focal length that it would use and at its ends. A lens that shows no
 * ground in focus is left out. All are aimed from the planned height as {@link GroundView#through} says: the nearest
 * flowers on the bottom edge are as large in the frame as planned. So a longer lens is further back and looks flatter.
 * The planned lens keeps its crop and its tilt.
 *
 * @param choices  by rising equivalent focal length; equals in order of fit
 * @param loweredM height a hand's breadth over the flower heads; null if the camera is hardly higher
 * @param lowered  the planned lens from there, its axis along the ground, in a good stand; null without the height
 */
public record CoverTrade(List<CoverChoice> choices, @Nullable Double loweredM, @Nullable FlowerCover lowered) {

    /** Least share of the frame that ground must fill to count as a carpet. */
    private static final double LEAST_GROUND = 1e-6;
    private static final double HAND_M = 0.1;
    /** A camera less than half as high again is low already: common practice, no source. */
    private static final double WORTH_LOWERING = 1.5;
    /** A tenth more flower is hardly seen: common practice, no source. */
    private static final double WORTH_TELLING = 1.1;

    /**
     * The lenses of a bag on one picture; null if the subject's flower area is unknown, there is no lens, or the
     * picture shows no ground.
     *
     * @param slope of the spot; null for level ground
     */
    public static @Nullable CoverTrade of(ShotFit shot, @Nullable Slope slope) {
        Subject subject = shot.intent().shot().subject();
        LensFit best = shot.best();
        if (best == null || subject.flowerAreaIndex() == null) {
            return null;
        }
        Floor floor = new Floor(best, subject, subject.flowerAreaIndex(), alongViewDeg(slope, shot.intent().shot().facingDeg()));
        if (!shows(floor.typical(floor.planned))) {
            return null;
        }
        List<CoverChoice> choices = new ArrayList<>();
        Set<Lens> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (LensFit fit : shot.tried()) {
            if (seen.add(fit.camera().lens())) {
                floor.choose(fit, choices);
            }
        }
        choices.sort((one, other) -> Double.compare(one.equivalentMm(), other.equivalentMm()));
        double loweredM = floor.headsM + HAND_M;
        return floor.planned.heightM() < WORTH_LOWERING * loweredM
                ? new CoverTrade(List.copyOf(choices), null, null)
                : new CoverTrade(List.copyOf(choices), loweredM, floor.typical(floor.planned.along(loweredM)));
    }

    /**
     * Rise of a slope along a bearing, degrees. Positive rises away; it is 0 without a slope or without a bearing.
     * The slope across the view is left out.
     */
    public static double alongViewDeg(@Nullable Slope slope, @Nullable Double facingDeg) {
        return slope == null || facingDeg == null ? 0 : Incline.riseDeg(slope.angleDeg(), slope.facesDeg(), facingDeg);
    }

    /** The lens and focal length that serve the picture best. */
    public CoverChoice planned() {
        return choices.stream().filter(CoverChoice::planned).findFirst().orElseThrow();
    }

    /** How thick the flowers look as planned, and what the longest lens, the widest and a lower camera change. */
    public List<Advice> reasons() {
        CoverChoice planned = planned();
        CoverChoice longest = choices.get(choices.size() - 1);
        CoverChoice widest = choices.get(0);
        List<Advice> reasons = new ArrayList<>();
        reasons.add(new CoverAdvice.CoverPlanned(planned.typical().cover(), planned.thick().cover(), planned.nearestM(),
                planned.typical().farthestM()));
        if (thicker(longest.typical(), planned.typical())) {
            reasons.add(new CoverAdvice.CoverLonger(longest.equivalentMm(), longest.nearestM(), longest.typical().cover(),
                    CoverChoice.TRUNK_BEHIND_M, planned.trunkScale(), longest.trunkScale()));
        }
        if (thicker(planned.typical(), widest.typical())) {
            reasons.add(new CoverAdvice.CoverWider(widest.equivalentMm(), widest.nearestM(), widest.typical().cover(),
                    CoverChoice.TRUNK_BEHIND_M, planned.trunkScale(), widest.trunkScale()));
        }
        if (loweredM != null && lowered != null && thicker(lowered, planned.typical())) {
            reasons.add(new CoverAdvice.CoverLowered(loweredM, lowered.cover()));
        }
        return List.copyOf(reasons);
    }

    private static boolean shows(FlowerCover cover) {
        return cover.ground() > LEAST_GROUND;
    }

    private static boolean thicker(FlowerCover one, FlowerCover other) {
        return one.cover() > WORTH_TELLING * other.cover();
    }

    /** Flowers in front of the planned camera. */
    private static final class Floor {
        private final LensFit best;
        private final double headsM;
        private final FlowerLayer typical;
        private final FlowerLayer thick;
        private final GroundView planned;

        Floor(LensFit best, Subject subject, Subject.AreaIndex index, double slopeDeg) {
            this.best = best;
            headsM = subject.heightM() == null ? Intent.UNKNOWN_PLANT_M : subject.heightM();
            typical = FlowerLayer.of(headsM, index.typical());
            thick = FlowerLayer.of(headsM, index.thick());
            planned = new GroundView(best.heightM(), Math.max(-90, Math.min(90, best.tiltDeg())), slopeDeg,
                    best.view(), closestM(best, best.focalMm()));
        }

        FlowerCover typical(GroundView view) {
            return FlowerCover.of(view, typical);
        }

        void choose(LensFit fit, List<CoverChoice> choices) {
            Lens lens = fit.camera().lens();
            double servesMm = fit.focalMm();
            if (fit == best) {
                choices.add(new CoverChoice(fit, fit.focalMm(), fit.cropTimes(), true, planned, typical(planned),
                        FlowerCover.of(planned, thick)));
                servesMm *= fit.cropTimes();
            } else {
                whole(fit, fit.focalMm(), choices);
            }
            if (!same(lens.shortestMm(), servesMm)) {
                whole(fit, lens.shortestMm(), choices);
            }
            if (!same(lens.longestMm(), servesMm) && !same(lens.longestMm(), lens.shortestMm())) {
                whole(fit, lens.longestMm(), choices);
            }
        }

        private void whole(LensFit fit, double focalMm, List<CoverChoice> choices) {
            double actingMm = focalMm == fit.focalMm() ? fit.actingFocalMm() : focalMm;
            AngleOfView view = AngleOfView.of(actingMm, fit.usedWidthMm() * fit.cropTimes(),
                    fit.usedHeightMm() * fit.cropTimes(), fit.magnification());
            GroundView ground = planned.through(view, closestM(fit, focalMm));
            FlowerCover cover = typical(ground);
            if (shows(cover)) {
                choices.add(new CoverChoice(fit, focalMm, 1, false, ground, cover, FlowerCover.of(ground, thick)));
            }
        }

        private static boolean same(double oneMm, double otherMm) {
            return oneMm < otherMm * Framing.SAME_FOCAL && otherMm < oneMm * Framing.SAME_FOCAL;
        }

        private static double closestM(LensFit fit, double focalMm) {
            return Reach.of(fit.camera(), focalMm).nearestMm() / 1000;
        }
    }
}
