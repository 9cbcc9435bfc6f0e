package understorey.kit;

import understorey.kit.camera.Camera;
import understorey.optics.AngleOfView;
import understorey.optics.ThinLens;
import understorey.plan.Sharp;
import understorey.plan.Viewpoint;

/**
 * Height of a lens above the ground and the angle of its axis below the horizontal, where the author gives neither. Degrees;
 * a negative angle looks up. Both change evenly with every input.
 */
record Tilt(Intent intent, double magnification, double distanceM, double upMm) {

    /** A steeper camera sees only the ground at the photographer's feet: common practice, no source. */
    static final double STEEPEST_DEG = 45;
    /** A framed picture looks natural up to this angle, so a stance that is not given comes down to it: common practice, no source. */
    static final double NATURAL_DEG = 25;
    /** Tilted so far, a flower is still seen from the side: common practice, no source. */
    private static final double SLIGHT_DEG = 20;
    /** A tenth of the frame's height is left over a head: common practice, no source. */
    private static final double HEAD_ROW = 0.8;
    /** A frame lower than this share of the plant is for its flowers alone: common practice, no source. */
    private static final double CLOSE_UP_SHARE = 0.5;

    static Tilt of(Intent intent, Camera camera, double magnification, double cropTimes, double distanceM) {
        return new Tilt(intent, magnification, distanceM, camera.sensor().upMm(intent.orientation()) / cropTimes);
    }

    /**
     * Height that the picture asks for, metres. A height in figures stays. A stance comes down to a framed subject, until
     * the axis is no steeper than 45°, or 25° where the author gives no stance; under a steeper axis of the author's, until
     * the axis meets the flowers.
     */
    double heightM() {
        double nominalM = Intent.nominalHeightM(intent.viewpoint());
        if (intent.viewpoint() instanceof Viewpoint.Height || intent.sharp() instanceof Sharp.Range) {
            return nominalM;
        }
        Overhead overhead = Overhead.of(intent);
        if (overhead != null) {
            return Math.min(nominalM, overhead.heightM(distanceM));
        }
        double steepest = intent.assumed().contains("viewpoint") ? NATURAL_DEG : STEEPEST_DEG;
        return Math.min(nominalM, Math.max(aimM(), 0) + distanceM * Math.sin(Math.toRadians(steepest)));
    }

    /** True when a lens at a height meets the flowers of a framed picture without being tilted much, or no more than is asked. */
    boolean natural(double heightM) {
        return intent.sharp() instanceof Sharp.Range || Math.abs(deg(heightM)) <= Math.max(SLIGHT_DEG, Math.abs(deg(heightM())));
    }

    /** The angle as written; else the one for the plant of a framed picture, or for the far edge of a view. */
    double deg(double heightM) {
        if (intent.shot().tiltDeg() != null) {
            return intent.shot().tiltDeg();
        }
        if (intent.sharp() instanceof Sharp.Range range) {
            return overGroundDeg(heightM, range);
        }
        return Math.max(-STEEPEST_DEG, Math.min(STEEPEST_DEG, Math.toDegrees(Math.asin(clamp((heightM - aimM()) / distanceM)))));
    }

    /**
     * Tilt that puts the far edge of the carpet, which is the far limit of what is to be sharp, on the upper third of
     * the frame. Ground square h·cos α below the lens, of a rise α, lies D from the lens at asin(h·cos α / D) below the
     * ground's own horizon. No steeper than 45° to the ground. From below the flowers it looks up as far as the nearest
     * sharp head needs to have a tenth of the frame above it, but no farther than the edge stays on the lower third.
     */
    private double overGroundDeg(double heightM, Sharp.Range range) {
        double cosRise = Math.cos(Math.toRadians(intent.riseDeg()));
        double edgeDeg = Math.toDegrees(Math.asin(clamp(heightM * cosRise / range.farM())));
        double half = AngleOfView.of(ThinLens.focalMmFor(magnification, distanceM * 1000), upMm, upMm, magnification).verticalDeg() / 2;
        double thirdDeg = rowDeg(half, 1 / 3.0);
        Double plantM = intent.shot().subject().heightM();
        double headDeg = plantM == null ? -90 : Math.toDegrees(Math.atan((plantM - heightM) * cosRise / range.nearM()));
        double mostDeg = Math.min(STEEPEST_DEG, edgeDeg + thirdDeg);
        double leastDeg = Math.min(STEEPEST_DEG, edgeDeg) - thirdDeg;
        double downDeg = Math.min(mostDeg, Math.max(leastDeg, rowDeg(half, HEAD_ROW) - headDeg));
        return Math.max(-90, Math.min(90, downDeg - intent.riseDeg()));
    }

    /** Angle from the axis of a row of the frame; its top edge is row 1. */
    private static double rowDeg(double halfDeg, double row) {
        return Math.toDegrees(Math.atan(row * Math.tan(Math.toRadians(halfDeg))));
    }

    /**
     * Height of what is in the middle of a framed picture: of the flowers, close up; with more of the plant in the frame
     * the flowers rise to the upper third (common practice, no source), and with room to spare the middle of the plant
     * is in the middle.
     */
    private double aimM() {
        Double plantM = intent.shot().subject().heightM();
        if (plantM == null) {
            return Intent.nominalHeightM(intent.viewpoint());
        }
        double frameM = upMm / magnification / 1000;
        double moreM = Math.max(0, frameM - CLOSE_UP_SHARE * plantM);
        return Math.max(plantM / 2, plantM - Math.min(frameM / 6, moreM / 2));
    }

    private static double clamp(double sine) {
        return Math.max(-1, Math.min(1, sine));
    }
}
