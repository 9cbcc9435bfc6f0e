package understorey.season;

/**
 * How far a model misses a year that it was not shown, over all its years (divided by n).
 *
 * @param rmseD root of the mean square, days
 * @param maeD  mean of what it misses by, days
 */
public record LeaveOneOut(double rmseD, double maeD) {

    /** From the errors of the years left out. */
    static LeaveOneOut of(double[] errors) {
        double squares = 0;
        double sizes = 0;
        for (double error : errors) {
            squares += error * error;
            sizes += Math.abs(error);
        }
        return new LeaveOneOut(Math.sqrt(squares / errors.length), sizes / errors.length);
    }
}
