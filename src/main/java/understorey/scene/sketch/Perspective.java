package understorey.scene.sketch;

import understorey.optics.AngleOfView;
import understorey.optics.FlowerLayer;
import understorey.optics.Projection;
import understorey.scene.Drawing.Point;

/**
 * Where the ground and what stands on it falls in a frame, px from its top left corner: the pinhole of
 * {@link understorey.optics.Projection}, in metres to the right, ahead along the level, and above the ground there.
 * The ground rises or falls evenly along the view.
 */
final class Perspective {

    static final double LONG_SIDE = 480;
    /** What lies nearer to the plane of the lens is not drawn, metres. */
    static final double LEAST_DEPTH_M = 0.01;

    final double width;
    final double height;
    private final double sine;
    private final double cosine;
    private final double halfWidth;
    private final double halfHeight;
    private final double heightM;
    private final double rise;

    Perspective(AngleOfView view, double heightM, double tiltDeg, double riseDeg) {
        halfWidth = Math.tan(Math.toRadians(view.horizontalDeg() / 2));
        halfHeight = Math.tan(Math.toRadians(view.verticalDeg() / 2));
        width = Math.max(1, Math.round(LONG_SIDE * Math.min(1, halfWidth / halfHeight)));
        height = Math.max(1, Math.round(LONG_SIDE * Math.min(1, halfHeight / halfWidth)));
        sine = Math.sin(Math.toRadians(tiltDeg));
        cosine = Math.cos(Math.toRadians(tiltDeg));
        rise = Math.tan(Math.toRadians(riseDeg));
        this.heightM = heightM;
    }

    /** The height of a camera close up is that above the foot of its plant. */
    static Perspective of(Setup setup) {
        double tiltDeg = Math.max(-90, Math.min(90, setup.fit().tiltDeg()));
        double aheadM = setup.close() ? setup.fit().distanceM() * Math.cos(Math.toRadians(tiltDeg)) : 0;
        return new Perspective(setup.fit().view(),
                setup.fit().heightM() + aheadM * Math.tan(Math.toRadians(setup.riseDeg())), tiltDeg, setup.riseDeg());
    }

    /** How far below the lens something on the ground ends, metres. */
    double belowLensM(double aheadM, double aboveM) {
        return heightM - aheadM * rise - aboveM;
    }

    /** Along the lens axis, metres. */
    double depthM(double aheadM, double aboveM) {
        return aheadM * cosine + belowLensM(aheadM, aboveM) * sine;
    }

    double x(double rightM, double depthM) {
        return width / 2 * (1 + rightM / (depthM * halfWidth));
    }

    double y(double aheadM, double aboveM, double depthM) {
        return height / 2 * (1 - (aheadM * sine - belowLensM(aheadM, aboveM) * cosine) / (depthM * halfHeight));
    }

    /** Size in the frame of a metre square to the axis. */
    double pxPerM(double depthM) {
        return width / 2 / (depthM * halfWidth);
    }

    /** Half of what the frame takes in from side to side, metres. */
    double halfWidthM(double depthM) {
        return depthM * halfWidth;
    }

    /** From the lens, metres; what is ahead on the ground, with its height. */
    double distanceM(double aheadM, double aboveM) {
        return Math.hypot(aheadM, belowLensM(aheadM, aboveM));
    }

    /** Ahead along the level where the axis has run so far, metres. */
    double aheadOnAxisM(double distanceM) {
        return distanceM * cosine;
    }

    /** The least way ahead whose ground can be in the frame: behind the foot for a lens that looks down steeply. */
    double nearestAheadM() {
        double downDeg = Math.toDegrees(Math.atan2(sine, cosine) + Math.atan(halfHeight));
        return downDeg <= 85 ? 0.02 : -heightM * Math.tan(Math.toRadians(Math.min(75, Math.max(5, downDeg - 85))));
    }

    /** Where ground without end would vanish, px from the top; infinite for a lens that looks along its upright. */
    double vanishingY() {
        double depth = cosine - rise * sine;
        if (depth < 1e-6) {
            return Double.NEGATIVE_INFINITY;
        }
        return height / 2 * (1 - (sine + rise * cosine) / depth / halfHeight);
    }

    /** Height of the lens above the ground below it, metres. */
    double aboveM() {
        return heightM;
    }

    /** Sine of the angle at which the look in the middle of a row meets the ground or a plane along it; tiny where it does not. */
    double sineAt(double y) {
        double row = (1 - 2 * y / height) * halfHeight;
        return Math.max(1e-3, falls(row) / Math.hypot(1, row) / Math.hypot(1, rise));
    }

    /** How much nearer to the ground a look gets per metre of depth. */
    private double falls(double row) {
        return sine - row * cosine + rise * (cosine + row * sine);
    }

    /** Mean way of the looks of a row between two heights above the ground and two depths, metres. */
    double wayBetweenM(double y, double lowM, double highM, double nearM, double farM) {
        double row = (1 - 2 * y / height) * halfHeight;
        double falls = falls(row);
        double slant = Math.sqrt(1 + row * row + halfWidth * halfWidth / 3);
        double from = nearM;
        double to = farM;
        if (Math.abs(falls) < 1e-9) {
            return heightM > lowM && heightM < highM ? (to - from) * slant : 0;
        }
        from = Math.max(from, Math.min((heightM - highM) / falls, (heightM - lowM) / falls));
        to = Math.min(to, Math.max((heightM - highM) / falls, (heightM - lowM) / falls));
        return Math.max(0, to - from) * slant;
    }

    /** Distance from the lens to the ground in the middle of a row, metres; where there is none, that of the far end. */
    double groundM(double y) {
        double row = (1 - 2 * y / height) * halfHeight;
        double falls = falls(row);
        return falls <= 1e-6 ? FlowerLayer.FAR_M : Math.min(FlowerLayer.FAR_M, heightM * Math.hypot(1, row) / falls);
    }

    /** Row of the ground that lies so deep along the lens axis; not in the frame where there is none. */
    double groundY(double depthM) {
        double forward = cosine - rise * sine;
        if (Double.isInfinite(depthM) || forward < 1e-6) {
            return vanishingY();
        }
        double ahead = (depthM - heightM * sine) / forward;
        return y(ahead, 0, depthM);
    }

    /** Where a direction is in the frame. */
    Point point(Projection.Place place) {
        return new Point(width / 2 * (1 + place.x()), height / 2 * (1 - place.y()));
    }

    boolean inFrame(double x, double y, double beyond) {
        return x > -beyond && x < width + beyond && y > -beyond && y < height + beyond;
    }
}
