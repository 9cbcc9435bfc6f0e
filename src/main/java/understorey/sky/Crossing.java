package understorey.sky;

import java.util.function.DoubleUnaryOperator;

/** Zeros and turning points of a curve over time. Times are epoch seconds. */
final class Crossing {

    /** Well under the error of the positions, which is a few seconds. */
    private static final double TOLERANCE_S = 0.2;

    private Crossing() {
    }

    /**
     * Time at which {@code curve} passes zero between two times at which its signs differ, to 0.2 s. Regula
     * falsi with the Illinois step: Dahlquist and Björck, <em>Numerical Methods</em>, 1974, section 6.4.
     */
    static double between(double from, double to, double atFrom, double atTo, DoubleUnaryOperator curve) {
        double a = from;
        double b = to;
        double fa = atFrom;
        double fb = atTo;
        while (Math.abs(b - a) > TOLERANCE_S) {
            double c = b - fb * (b - a) / (fb - fa);
            double fc = curve.applyAsDouble(c);
            if (fc == 0) {
                return c;
            }
            if ((fc > 0) != (fb > 0)) {
                a = b;
                fa = fb;
            } else {
                fa /= 2;
            }
            if (Math.abs(c - b) < TOLERANCE_S / 2) {
                return c;
            }
            b = c;
            fb = fc;
        }
        return b;
    }

    /**
     * Time near {@code middle} at which {@code curve} turns, by the parabola through three evenly spaced times;
     * never further away than one step.
     */
    static double turn(double middle, double step, double before, double at, double after) {
        double curvature = before - 2 * at + after;
        if (curvature == 0) {
            return middle;
        }
        double shift = (before - after) / (2 * curvature);
        return middle + step * Math.max(-1, Math.min(1, shift));
    }
}
