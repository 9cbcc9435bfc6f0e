package understorey.season;

/**
 * Errors of a model for years left out of its fit (leave-one-out cross-validation), over all n years.
 *
 * @param rmseD root mean square error, days
 * @param maeD  mean absolute error, days
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
