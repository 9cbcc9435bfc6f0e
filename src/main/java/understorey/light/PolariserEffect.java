package understorey.light;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.PolariserAdvice;
import understorey.optics.Direction;
import understorey.optics.Polarisation;
import understorey.optics.Projection;
import understorey.sky.SunAt;

/**
 * Effect of a polariser on a picture, turned to its best.
 *
 * @param sky       null if the frame has no sky, or clouds or the night leave nothing to darken
 * @param leaves    null if no part of the frame looks down
 * @param lossStops light that it takes of the whole picture
 * @param reasons   why to use it or leave it
 */
public record PolariserEffect(@Nullable Sky sky, @Nullable Leaves leaves, double lossStops, List<Advice> reasons) {

    /** Cloud cover above which too little blue is left: common practice, no source. */
    private static final double MOST_OKTA = 4;
    /** The end of civil twilight; common practice, no source. */
    private static final double DARK_DEG = -6;
    /** More than this from edge to edge shows as a dark band: common practice, no source. */
    private static final double UNEVEN_STOPS = 1;
    /** Less is hardly seen: common practice, no source. */
    private static final double FEW_STOPS = 0.5;
    /** Share of the sheen from which a lower look is not advised: common practice, no source. */
    private static final double MOST_SHEEN = 0.9;

    /**
     * A clear sky over the width of the frame: on the level horizon where that is in the frame, else along its top.
     *
     * @param fromSunDeg  angle in space between the sun and the middle
     * @param degree      of polarisation in the middle, 0 to 0.8
     * @param leftStops   by which it darkens beyond the polariser's own loss at the left edge
     * @param middleStops by which it darkens in the middle
     * @param rightStops  by which it darkens at the right edge
     */
    public record Sky(double fromSunDeg, double degree, double leftStops, double middleStops, double rightStops) {

        /** True when it darkens by over a stop more in one part of the frame than in another. */
        public boolean uneven() {
            return mostStops() - Math.min(middleStops, Math.min(leftStops, rightStops)) > UNEVEN_STOPS;
        }

        double mostStops() {
            return Math.max(middleStops, Math.max(leftStops, rightStops));
        }
    }

    /**
     * Level leaves, wet, seen from above at the foot of the frame and in its middle. A polariser removes the share
     * {@link Polarisation#sheenShare} of the sheen of unpolarised light.
     *
     * @param footGrazingDeg   angle between the leaves and the line of sight
     * @param footShare        of the sheen, 0.5 to 1
     * @param middleGrazingDeg null if the middle of the frame does not look down
     * @param middleShare      of the sheen there; null if the middle of the frame does not look down
     */
    public record Leaves(double footGrazingDeg, double footShare, @Nullable Double middleGrazingDeg,
                         @Nullable Double middleShare) {
    }

    /** The effect under a sun, up or down, and a cloud cover of 0 to 8 okta; an unknown one (null) counts as clear. */
    public static PolariserEffect of(SunAt sun, Projection camera, @Nullable Double okta, double lossStops) {
        List<Advice> reasons = new ArrayList<>();
        Sky sky = null;
        if (camera.direction(0, 1).altitudeDeg() <= 0) {
            reasons.add(new PolariserAdvice.PolariserNoSky());
        } else if (okta != null && okta > MOST_OKTA) {
            reasons.add(new PolariserAdvice.PolariserSkyClouded());
        } else if (sun.altitudeDeg() >= DARK_DEG) {
            sky = sky(new Direction(sun.azimuthDeg(), sun.apparentAltitudeDeg()), camera);
            reasons.add(reason(sky));
        }
        Leaves leaves = leaves(camera);
        if (leaves != null) {
            addReasons(leaves, reasons);
        }
        if (lossStops > 0) {
            reasons.add(new PolariserAdvice.PolariserLoss(lossStops));
        }
        return new PolariserEffect(sky, leaves, lossStops, List.copyOf(reasons));
    }

    private static Sky sky(Direction sun, Projection camera) {
        boolean horizonInFrame = camera.direction(0, -1).altitudeDeg() <= 0;
        Projection.Place horizon = horizonInFrame ? camera.place(camera.axis().bearingDeg(), 0) : null;
        double y = horizon == null ? 1 : horizon.y();
        double middleDeg = sun.angleDeg(camera.direction(0, y));
        return new Sky(middleDeg, Polarisation.skyDegree(middleDeg),
                Polarisation.skyStops(sun.angleDeg(camera.direction(-1, y))), Polarisation.skyStops(middleDeg),
                Polarisation.skyStops(sun.angleDeg(camera.direction(1, y))));
    }

    private static Advice reason(Sky sky) {
        if (sky.uneven()) {
            return new PolariserAdvice.PolariserSkyUneven(sky.leftStops, sky.middleStops, sky.rightStops);
        }
        if (sky.mostStops() < FEW_STOPS) {
            return new PolariserAdvice.PolariserSkyLittle(sky.fromSunDeg);
        }
        return new PolariserAdvice.PolariserSky(sky.mostStops(), sky.fromSunDeg);
    }

    /** A level leaf is grazed at the angle by which one looks down on it. */
    private static @Nullable Leaves leaves(Projection camera) {
        double footDeg = -camera.direction(0, -1).altitudeDeg();
        double middleDeg = -camera.axis().altitudeDeg();
        if (footDeg <= 0) {
            return null;
        }
        boolean ground = middleDeg > 0;
        return new Leaves(footDeg, Polarisation.sheenShare(footDeg, Polarisation.WATER_INDEX), ground ? middleDeg : null,
                ground ? Polarisation.sheenShare(middleDeg, Polarisation.WATER_INDEX) : null);
    }

    private static void addReasons(Leaves leaves, List<Advice> reasons) {
        double bestDeg = 90 - Polarisation.brewsterDeg(Polarisation.WATER_INDEX);
        boolean between = leaves.footGrazingDeg >= bestDeg;
        double most = leaves.footShare;
        if (leaves.middleShare == null || leaves.middleGrazingDeg == null) {
            reasons.add(new PolariserAdvice.PolariserLeavesFoot(leaves.footShare));
        } else {
            between &= leaves.middleGrazingDeg <= bestDeg;
            most = Math.max(most, leaves.middleShare);
            reasons.add(new PolariserAdvice.PolariserLeaves(leaves.middleShare, leaves.footShare));
        }
        if (most < MOST_SHEEN && !between) {
            reasons.add(new PolariserAdvice.PolariserLeavesBest(bestDeg));
        }
    }
}
