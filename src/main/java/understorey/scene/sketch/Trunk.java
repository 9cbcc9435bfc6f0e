package understorey.scene.sketch;

import java.util.List;
import understorey.scene.Drawing.Point;

/**
 * One trunk in the frame, px.
 *
 * @param half    half its width above the flare of its foot
 * @param halfTop half its width at its upper end
 * @param depthM  along the lens axis
 * @param blur    diameter of the blur of a point there
 * @param bow     how far its middle bows aside, −0.5 to 0.5
 */
record Trunk(double footX, double footY, double half, double topX, double topY, double halfTop, double depthM, double blur, double bow) {

    private static final double FLARE = 0.55;

    /** This trunk as far as a row of the frame. */
    Trunk cut(double row) {
        if (topY >= row) {
            return this;
        }
        double share = (footY - row) / (footY - topY);
        return new Trunk(footX, footY, half, footX + share * (topX - footX), row, half + share * (halfTop - half), depthM, blur, bow);
    }

    private double flareY() {
        return footY - Math.min((footY - topY) * 0.3, half * 3.4);
    }

    /** Its axis at a row, and half its width there. */
    private double middleX(double y) {
        double share = (footY - y) / (footY - topY);
        return footX + share * (topX - footX) + 2.4 * share * (1 - share) * bow * half;
    }

    private double halfAt(double y) {
        return half + (footY - y) / (footY - topY) * (halfTop - half);
    }

    /** A point at a share of the width to the side of the axis, −1 to 1. */
    private Point on(double y, double side) {
        return new Point(round(middleX(y) + side * halfAt(y)), round(y));
    }

    private double round(double px) {
        return half < 6 ? Math.round(px * 2) / 2.0 : Math.round(px);
    }

    /** The strip from one side to the other, flared at its foot; −1 and 1 are its edges. */
    List<Point> strip(double from, double to, double wider) {
        double foot = footY + 0.15 * half;
        double kink = flareY();
        double middle = (kink + topY) / 2;
        Point left = new Point(round(footX + from * (half * (1 + FLARE) + wider)), round(foot));
        Point right = new Point(round(footX + to * (half * (1 + FLARE) + wider)), round(foot));
        return List.of(left, on(footY - 0.5 * half, from), on(kink, from), on(middle, from), on(topY, from),
                new Point((on(topY, from).x() + on(topY, to).x()) / 2, round(topY)), on(topY, to), on(middle, to), on(kink, to),
                on(footY - 0.5 * half, to), right, new Point(round(footX + (from + to) / 2 * half), round(foot + 0.3 * half)), left);
    }

    List<Point> outline(double wider) {
        return strip(-1, 1, wider);
    }

    /** A line up its middle. */
    List<Point> middle() {
        return List.of(new Point(Math.round(footX), Math.round(footY)), on((footY + topY) / 2, 0.3 * bow), on(topY, 0));
    }

    /** A line up one side. */
    List<Point> edge(double side) {
        double kink = flareY();
        return List.of(on(footY - half, side), on((kink + topY) / 2, side), on(topY, side));
    }

    /** A short bar across the bark, from one side to another. */
    List<Point> bar(double share, double from, double to) {
        double y = footY - share * (footY - topY);
        return List.of(on(y, from), on(y + 0.12 * half, (from + to) / 2), on(y, to));
    }

    /** A short line along the bark. */
    List<Point> crack(double side, double from, double length) {
        double low = footY - from * (footY - topY);
        double high = low - length * (footY - topY);
        return List.of(on(low, side), on((low + high) / 2, side * 0.94), on(high, side));
    }
}
