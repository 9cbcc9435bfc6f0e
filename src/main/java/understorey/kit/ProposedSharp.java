package understorey.kit;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.optics.AngleOfView;
import understorey.optics.CircleOfConfusion;
import understorey.optics.DepthOfField;
import understorey.optics.Sharpness;
import understorey.plan.Frame;
import understorey.plan.Orientation;
import understorey.plan.Role;
import understorey.plan.Sensor;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Viewpoint;

/** What is to be sharp in a picture whose author leaves it open, counted on full frame. Common practice, no source. */
record ProposedSharp(Shot shot, Viewpoint viewpoint, Orientation orientation, double riseDeg) {

    private static final double SMALL_STOP = 16;
    private static final double SMALL_STOP_TO_MM = 50;
    private static final double OPEN_STOP = 11;
    private static final double OPEN_STOP_FROM_MM = 135;
    private static final double COC_MM = CircleOfConfusion.mm(36, 24);
    private static final double NEAREST_M = 0.5;
    /** From this width on a frame shows plants in their place, and more of the ground behind them. */
    static final double SCENE_M = 1;
    /** The axis is so far below the horizon when the edge of the carpet lies on the upper third, in half frame heights. */
    private static final double AXIS_BELOW = 1 / 3.0;

    Sharp of(Role role, @Nullable Frame frame, @Nullable Double focalMm) {
        return frame != null ? closeUp(frame) : view(role, Objects.requireNonNull(focalMm, "a frame or a focal length"));
    }

    /** A quarter of the width of a framed picture, of a scene as much more as it is wider, but no more than f/11 holds. */
    private Sharp closeUp(Frame frame) {
        double widthM = widthM(frame);
        double magnification = Sensor.FULL_FRAME.acrossMm(orientation) / (widthM * 1000);
        return new Sharp.Depth(Math.min(widthM / 4 * Math.max(1, widthM / SCENE_M), Sharpness.closeUpDepthMm(OPEN_STOP, COC_MM, magnification) / 1000));
    }

    /**
     * From the first heads above the bottom edge (at least half a metre) to 40 m, on the way in to 15 m, but from no nearer than
     * holds at that focal length at f/16, with a long lens at f/11 (1/near = 2/H + 1/far).
     */
    private Sharp view(Role role, double focalMm) {
        double farM = role == Role.APPROACH ? 15 : 40;
        Overhead overhead = Overhead.of(shot, viewpoint, riseDeg);
        if (overhead != null) {
            return fromAbove(overhead, focalMm, farM);
        }
        double held = 2000 / DepthOfField.hyperfocalMm(focalMm, stop(focalMm), COC_MM);
        double nearM = Math.max(1 / (held + 1 / farM), Math.max(NEAREST_M, firstHeadsM(focalMm)));
        return new Sharp.Range(nearM, Math.max(farM, 1 / Math.max(0.5 / nearM, 1 / nearM - held)));
    }

    /** Distance of the heads that the bottom edge meets; 0 for a camera no higher than they are. */
    private double firstHeadsM(double focalMm) {
        double aboveM = Intent.nominalHeightM(viewpoint) - Overhead.headsM(shot);
        double edge = (1 + AXIS_BELOW) * Math.tan(Math.toRadians(halfDeg(focalMm)));
        return Math.max(0, aboveM) / edge;
    }

    private double halfDeg(double focalMm) {
        return AngleOfView.of(focalMm, Sensor.FULL_FRAME.acrossMm(orientation), Sensor.FULL_FRAME.upMm(orientation)).verticalDeg() / 2;
    }

    /** f/16 up to 50 mm, f/11 from 135 mm, and evenly between. */
    private static double stop(double focalMm) {
        double long0to1 = Math.log(focalMm / SMALL_STOP_TO_MM) / Math.log(OPEN_STOP_FROM_MM / SMALL_STOP_TO_MM);
        return SMALL_STOP * Math.pow(OPEN_STOP / SMALL_STOP, Math.max(0, Math.min(1, long0to1)));
    }

    /** From the heads on the bottom edge to the ground on the top edge. */
    private Sharp fromAbove(Overhead overhead, double focalMm, double farM) {
        double heightM = Intent.nominalHeightM(viewpoint);
        double halfDeg = halfDeg(focalMm);
        double nearM = overhead.depthM(heightM, overhead.headsM(), -halfDeg);
        return new Sharp.Range(nearM, Math.min(Math.max(farM, 2 * nearM), overhead.depthM(heightM, 0, halfDeg)));
    }

    /** Width of the picture at the subject on a 3:2 frame, metres; {@code LensTrial} uses the true sensor. */
    private double widthM(Frame frame) {
        return frame.widthM() != null ? frame.widthM() : Intent.heightM(frame, shot.subject())
                * Sensor.FULL_FRAME.acrossMm(orientation) / Sensor.FULL_FRAME.upMm(orientation);
    }
}
