package understorey.season.model;

import org.apache.commons.statistics.distribution.ContinuousDistribution;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Student's t (W. S. Gosset, Biometrika 1908), by Apache Commons Statistics; the normal distribution for infinite
 * degrees of freedom. Quantiles agree with printed tables to their last digit.
 */
public final class StudentT {

    private static final StudentT NORMAL = new StudentT(NormalDistribution.of(0, 1));

    private final ContinuousDistribution law;

    private StudentT(ContinuousDistribution law) {
        this.law = law;
    }

    /**
     * The distribution for a number of degrees of freedom.
     *
     * @param freedom above 0; may be infinite
     */
    public static StudentT of(double freedom) {
        return Double.isInfinite(freedom) ? NORMAL : new StudentT(TDistribution.of(freedom));
    }

    /**
     * The t that leaves {@code level} of all cases between −t and +t.
     *
     * @param level 0 to 1, ends excluded
     */
    public double twoSided(double level) {
        return law.inverseSurvivalProbability((1 - level) / 2);
    }

    /** The share of all cases below t. */
    double below(double t) {
        return law.cumulativeProbability(t);
    }
}
