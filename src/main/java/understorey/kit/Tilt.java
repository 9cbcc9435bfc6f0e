package understorey.kit;

import understorey.optics.AngleOfView;
import understorey.optics.ThinLens;
import understorey.plan.Sharp;

/** Angle of a lens axis below the horizontal, degrees; negative looks up. It changes evenly with every input. */
final class Tilt {

    /** A camera that looks down more steeply sees no view, but the ground at one's feet: common practice, no source. */
    private static final double STEEPEST_DEG = 45;
    /** A frame lower than that share of the plant is for its flowers alone: common practice, no source. */
    private static final double CLOSE_UP_SHARE = 0.5;

    private final Intent intent;
    private final Framing framing;
    private final double upMm;

    private Tilt(Intent intent, Framing framing, Camera camera) {
        this.intent = intent;
        this.framing = framing;
        upMm = camera.sensor().upMm(intent.orientation()) / framing.cropTimes();
    }

    /** The tilt as written; else on the plant of a framed picture, or for the far edge of a view. */
    static double deg(Intent intent, Framing framing, Camera camera, double heightM) {
        if (intent.shot().tiltDeg() != null) {
            return intent.shot().tiltDeg();
        }
        Tilt tilt = new Tilt(intent, framing, camera);
        return intent.sharp() instanceof Sharp.Range range ? tilt.overGroundDeg(heightM, range.farM())
                : Math.toDegrees(Math.asin(clamp((heightM - tilt.aimM()) / framing.distanceM())));
    }

    /**
     * Tilt that puts the far edge of the carpet, which is the far limit of what is to be sharp, on the upper third of
     * the frame. Ground square h·cos α below the lens, of a rise α, lies D from the lens at asin(h·cos α / D) below the
     * ground's own horizon. No steeper than 45° to the ground.
     */
    private double overGroundDeg(double heightM, double farM) {
        double edgeDeg = Math.toDegrees(Math.asin(clamp(heightM * Math.cos(Math.toRadians(intent.riseDeg())) / farM)));
        double half = AngleOfView.of(ThinLens.focalMmFor(framing.magnification(), framing.distanceM() * 1000), upMm, upMm,
                framing.magnification()).verticalDeg() / 2;
        double thirdDeg = Math.toDegrees(Math.atan(Math.tan(Math.toRadians(half)) / 3));
        return Math.max(-90, Math.min(90, Math.min(STEEPEST_DEG, edgeDeg + thirdDeg) - intent.riseDeg()));
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
        double frameM = upMm / framing.magnification() / 1000;
        double moreM = Math.max(0, frameM - CLOSE_UP_SHARE * plantM);
        return Math.max(plantM / 2, plantM - Math.min(frameM / 6, moreM / 2));
    }

    private static double clamp(double sine) {
        return Math.max(-1, Math.min(1, sine));
    }
}
