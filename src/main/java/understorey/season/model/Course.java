package understorey.season.model;

import understorey.plan.FieldGuide;
import understorey.plan.Season;

/**
 * Days of a stand from its first flowers to the peak, and from the peak until it is over. It counts as in full
 * flower from the last third of the rise to the first third of the fall (common practice, no source).
 *
 * @param riseD   days from first flowers to the peak
 * @param fallD   days from the peak until it is over
 * @param assumed whether a part is not from records
 */
public record Course(double riseD, double fallD, boolean assumed) {

    /**
     * Spring flowers of woods: bluebell, ramsons, anemones and their like, peak 7 to 14 days after the first, over after four to
     * five weeks (from memory).
     */
    public static final Course USUAL = new Course(10, 22, true);
    private static final StudentT NORMAL = StudentT.of(Double.POSITIVE_INFINITY);
    private static final double DISPLAY_SHARE = 1 / 3.0;
    /** Edges of a stage as people see them, standard error in days: plants of one stand differ by 2 to 7 days (Ehrlén and Valdés 2020, Tullgarn). */
    private static final double EDGE_D = 3;
    /** Buds show for about 4 weeks before the first flower (from memory). */
    private static final double BUDS_D = 28;
    /** Share of reports that are of another stand, or wrong: an assumption. */
    private static final double MISTAKEN = 0.001;

    /** As the catalogue has it. */
    public static Course of(FieldGuide guide) {
        return new Course(guide.course().firstToPeakDays(), guide.course().peakToOverDays(), true);
    }

    public double fullFromD() {
        return -riseD * DISPLAY_SHARE;
    }

    public double fullToD() {
        return fallD * DISPLAY_SHARE;
    }

    /**
     * Share of the heads that are not open yet, as a negative number, or over, as a positive one, on a day after the peak; 0 in
     * full flower. It changes evenly (an assumption).
     */
    public double ripeness(double afterPeakD) {
        return afterPeakD < fullFromD() ? Math.max(-1, (afterPeakD - fullFromD()) / (riseD + fullFromD()))
                : Math.min(1, Math.max(0, afterPeakD - fullToD()) / (fallD - fullToD()));
    }

    /** In the middle of a stage. */
    public double ripeness(Season.Stage stage) {
        return switch (stage) {
            case IN_BUD -> -1;
            case FIRST_FLOWERS -> -0.5;
            case FULL_FLOWER -> 0;
            case FADING -> 0.5;
            case OVER -> 1;
        };
    }

    /**
     * Likelihood of a stage on a day after the peak, 0 to 1: a box with soft edges, never quite 0.
     */
    double likelihood(Season.Stage stage, double afterPeakD) {
        double fits = switch (stage) {
            case IN_BUD -> between(-riseD - BUDS_D, -riseD, afterPeakD);
            case FIRST_FLOWERS -> between(-riseD, fullFromD(), afterPeakD);
            case FULL_FLOWER -> between(fullFromD(), fullToD(), afterPeakD);
            case FADING -> between(fullToD(), fallD, afterPeakD);
            case OVER -> past(fallD, afterPeakD);
        };
        return MISTAKEN + (1 - MISTAKEN) * fits;
    }

    private static double between(double from, double to, double day) {
        return past(from, day) - past(to, day);
    }

    private static double past(double edge, double day) {
        return NORMAL.below((day - edge) / EDGE_D);
    }
}
