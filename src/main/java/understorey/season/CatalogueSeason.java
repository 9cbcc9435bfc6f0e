package understorey.season;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.FieldGuide;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.season.model.Course;
import understorey.season.model.Prediction;
import understorey.season.model.SeasonScale;

/**
 * Season of a subject at a site from the catalogue alone: its peak at another place, or somewhere within its months, moved by how
 * much further from the equator and how much higher the site lies than that place.
 *
 * @param scale   around the peak of that place, or the middle of the months
 * @param peak    on that scale; wide
 * @param course  of the flowering
 * @param reasons in the order of telling
 */
record CatalogueSeason(SeasonScale scale, Prediction peak, Course course, List<Advice> reasons) {

    /**
     * Spring events come 4 days later per degree of latitude away from the equator, and every 122 m of height: bioclimatic law, A.
     * D. Hopkins, 1918 (from memory).
     */
    private static final double LATER_D = 4;
    private static final double HEIGHT_M = 122;
    /** Floras mostly describe low ground (from memory). */
    private static final double LOW_GROUND_M = 200;
    /** Largest shift, days: a home range is wider than its middle shows. */
    private static final double MOST_D = 30;
    private static final double LEAST_D = 2;
    private static final double LEAST_ERROR_D = 10;
    /** Standard error of one place for another, days, and share of the shift: derived from the places in {@code peaks-elsewhere.csv}. */
    private static final double PLACE_D = 8;
    private static final double SHIFT_SHARE = 0.25;
    /** Length of the months of a flora in standard errors of the peak: an assumption. */
    private static final double MONTHS_ERRORS = 4;
    /** Standard error as a share of the shift of a flora's months, which hold for a whole country: an assumption. */
    private static final double MONTHS_SHIFT_SHARE = 0.5;
    /** Standard error of half a year for a plant brought to the other hemisphere, days: lupine 18, fly agaric 25 off; two cases only. */
    private static final double MIRRORED_D = 15;

    /** The season; null if neither peak nor months of the subject are known. */
    static @Nullable CatalogueSeason of(Subject subject, Site site) {
        return subject.guide() != null ? byPeak(subject.guide(), site) : byMonths(subject, site);
    }

    private static CatalogueSeason byPeak(FieldGuide guide, Site site) {
        FieldGuide.Peak known = guide.peak();
        double latitude = site.position().latitude();
        boolean mirrored = known.latitudeDeg() < 0 != latitude < 0;
        LocalDate there = known.day().atYear(SeasonScale.COMMON_YEAR);
        SeasonScale scale = new SeasonScale(MonthDay.from(there.plusMonths(mirrored ? 6 : 0)));
        double degrees = Math.abs(latitude) - Math.abs(known.latitudeDeg());
        double heights = site.elevationM() == null ? 0 : (site.elevationM() - known.elevationM()) / HEIGHT_M;
        double later = inSpring(scale, latitude) ? laterD(degrees, heights) : 0;
        double error = Math.hypot(Math.hypot(known.sdDays(), PLACE_D), Math.hypot(later * SHIFT_SHARE, mirrored ? MIRRORED_D : 0));
        Prediction peak = Prediction.assumed(later, error).noSurerThan(LEAST_ERROR_D);
        double half = FloweringForecast.halfWidth(peak);
        return new CatalogueSeason(scale, peak, Course.of(guide), reasons(mirrored
                ? new SeasonAdvice.ByMirroredPeak(there, known.place(), half) : new SeasonAdvice.ByCataloguePeak(there, known.place(), half), later));
    }

    private static @Nullable CatalogueSeason byMonths(Subject subject, Site site) {
        double latitude = site.position().latitude();
        Flowering months = Flowering.of(subject, latitude, LocalDate.EPOCH);
        if (months == null) {
            return null;
        }
        LocalDate first = LocalDate.of(SeasonScale.COMMON_YEAR, months.first(), 1);
        LocalDate last = YearMonth.of(months.last().compareTo(months.first()) < 0 ? SeasonScale.COMMON_YEAR + 1
                : SeasonScale.COMMON_YEAR, months.last())
                .atEndOfMonth();
        long length = last.toEpochDay() - first.toEpochDay();
        SeasonScale scale = SeasonScale.around(List.of(first.plusDays(length / 2)));
        double degrees = subject.monthsLatitude() == null ? 0 : Math.abs(latitude) - subject.monthsLatitude();
        double heights = site.elevationM() == null ? 0 : (site.elevationM() - LOW_GROUND_M) / HEIGHT_M;
        double later = inSpring(scale, latitude) ? laterD(degrees, heights) : 0;
        double error = Math.max(LEAST_ERROR_D, length / MONTHS_ERRORS);
        return new CatalogueSeason(scale, Prediction.assumed(later, Math.hypot(error, later * MONTHS_SHIFT_SHARE)), Course.USUAL,
                reasons(new SeasonAdvice.ByCatalogue(months.first(), months.last()), later));
    }

    private static List<Advice> reasons(SeasonAdvice.Method method, double later) {
        List<Advice> reasons = new ArrayList<>(List.of(method));
        if (later >= LEAST_D) {
            reasons.add(new SeasonAdvice.CatalogueLater(later, HEIGHT_M));
        } else if (later <= -LEAST_D) {
            reasons.add(new SeasonAdvice.CatalogueEarlier(-later, HEIGHT_M));
        }
        return List.copyOf(reasons);
    }

    /** Whether a season is between midwinter and midsummer, or a little later: warmth makes it earlier and height later. */
    static boolean inSpring(SeasonScale scale, double latitude) {
        int month = scale.anchor().getMonthValue();
        return latitude < 0 ? month >= 7 : month <= 6;
    }

    private static double laterD(double degrees, double heights) {
        return Math.max(-MOST_D, Math.min(MOST_D, LATER_D * (degrees + heights)));
    }
}
