package understorey.season.model;

import org.jspecify.annotations.Nullable;

/**
 * Sum of warmth from a day on, °C·d: thermal time (Cannell and Smith 1983; Chuine 2000; from memory). Usual choices
 * are 1 January and 0 or 5 °C (common practice, no source).
 *
 * @param rule     what a day adds
 * @param startDay first day that counts; a day counts from its number on, so 27.3 begins with 28
 * @param baseC    below which a day adds nothing, °C
 */
public record DegreeDays(Rule rule, double startDay, double baseC) {

    /**
     * Contribution of a day of mean temperature T. The two are not the same model: a sum fitted by one is out by weeks under
     * the other.
     */
    public enum Rule {
        /** max(T − base, 0): growing degree days. */
        ABOVE_BASE {
            @Override
            double adds(double celsius, double baseC) {
                return Math.max(celsius - baseC, 0);
            }
        },
        /** T itself once T reaches the base, which is then a threshold: as in the phenology package pyPhenology. */
        WHOLE_FROM_THRESHOLD {
            @Override
            double adds(double celsius, double baseC) {
                return celsius >= baseC ? celsius : 0;
            }
        };

        abstract double adds(double celsius, double baseC);
    }

    /** The sum up to a day, itself included; not a number if a day is missing. */
    double sumTo(int day, DailyMeans means) {
        double sum = 0;
        for (int d = first(); d <= day; d++) {
            sum += adds(d, means);
        }
        return sum;
    }

    /** The first day on which the sum is reached; null if the row ends, or has a gap, before that. */
    @Nullable Integer dayReaching(double required, DailyMeans means) {
        double sum = 0;
        for (int d = first(); d <= means.lastDay(); d++) {
            sum += adds(d, means);
            if (Double.isNaN(sum)) {
                return null;
            }
            if (sum >= required) {
                return d;
            }
        }
        return null;
    }

    private int first() {
        return (int) Math.ceil(startDay);
    }

    private double adds(int day, DailyMeans means) {
        double celsius = means.at(day);
        return Double.isNaN(celsius) ? celsius : rule.adds(celsius, baseC);
    }
}
