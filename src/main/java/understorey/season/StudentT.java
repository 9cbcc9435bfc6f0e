package understorey.season;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Student's t (W. S. Gosset, Biometrika 1908), by Apache Commons Statistics; the normal law for endless degrees of
 * freedom. Quantiles agree with printed tables to their last digit.
 */
final class StudentT {

    private static final ContinuousDistribution NORMAL = NormalDistribution.of(0, 1);

    private StudentT() {
    }

    /**
     * The t that leaves {@code level} of all cases between −t and +t.
     *
     * @param level   0 to 1, ends excluded
     * @param freedom degrees of freedom, above 0; may be infinite
     */
    static double twoSided(double level, double freedom) {
        return law(freedom).inverseSurvivalProbability((1 - level) / 2);
    }

    /** The share of all cases below t. */
    static double below(double t, double freedom) {
        return law(freedom).cumulativeProbability(t);
    }

    private static ContinuousDistribution law(double freedom) {
        return Double.isInfinite(freedom) ? NORMAL : TDistribution.of(freedom);
    }
}
