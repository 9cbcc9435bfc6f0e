package understorey.light.illuminance;

/**
 * A line through points in order of x, level before the first and after the last.
 *
 * @param points x and y of each
 */
public record PiecewiseLinear(double[][] points) {

    /** The y of an x. */
    public double at(double x) {
        if (x <= points[0][0]) {
            return points[0][1];
        }
        for (int i = 1; i < points.length; i++) {
            if (x <= points[i][0]) {
                double share = (x - points[i - 1][0]) / (points[i][0] - points[i - 1][0]);
                return points[i - 1][1] + share * (points[i][1] - points[i - 1][1]);
            }
        }
        return points[points.length - 1][1];
    }
}
