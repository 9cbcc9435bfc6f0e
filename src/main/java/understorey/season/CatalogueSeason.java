package understorey.season;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.Site;
import understorey.plan.Subject;

/**
 * Season of a subject at a site from the months of the catalogue: the peak somewhere within them, moved by how much further from the equator
 * and how much higher the site lies than the place that the months refer to.
 *
 * @param scale   around the middle of the months
 * @param peak    on that scale; wide
 * @param reasons in the order of telling
 */
record CatalogueSeason(SeasonScale scale, Prediction peak, List<Advice> reasons) {

    /** Spring events come 4 days later per degree of latitude away from the equator, and every 122 m of height: bioclimatic law, A. D. Hopkins, 1918 (from memory). */
    private static final double LATER_D = 4;
    private static final double HEIGHT_M = 122;
    /** Floras mostly describe low ground (from memory). */
    private static final double LOW_GROUND_M = 200;
    /** Largest shift, days: a home range is wider than its middle shows. */
    private static final double MOST_D = 30;
    private static final double LEAST_D = 2;
    private static final double LEAST_ERROR_D = 10;

    /** The season; null if the subject's months are unknown. */
    static @Nullable CatalogueSeason of(Subject subject, Site site) {
        double latitude = site.position().latitude();
        Flowering months = Flowering.of(subject, latitude, LocalDate.EPOCH);
        if (months == null) {
            return null;
        }
        // From a common year into the next, so that no leap day counts.
        LocalDate first = LocalDate.of(2025, months.first(), 1);
        LocalDate last = YearMonth.of(months.last().compareTo(months.first()) < 0 ? 2026 : 2025, months.last())
                .atEndOfMonth();
        long length = last.toEpochDay() - first.toEpochDay();
        SeasonScale scale = SeasonScale.around(List.of(first.plusDays(length / 2)));
        List<Advice> reasons = new ArrayList<>();
        reasons.add(new SeasonAdvice.ByCatalogue(months.first(), months.last()));
        double later = inSpring(scale, latitude) ? laterD(subject, site) : 0;
        if (later >= LEAST_D) {
            reasons.add(new SeasonAdvice.CatalogueLater(later));
        } else if (later <= -LEAST_D) {
            reasons.add(new SeasonAdvice.CatalogueEarlier(-later));
        }
        double error = Math.max(LEAST_ERROR_D, length / 4.0);
        return new CatalogueSeason(scale, Prediction.assumed(later, Math.hypot(error, later / 2)), List.copyOf(reasons));
    }

    /** Whether a season is between midwinter and midsummer, or a little later: warmth makes it earlier and height later. */
    static boolean inSpring(SeasonScale scale, double latitude) {
        int month = scale.anchor().getMonthValue();
        return latitude < 0 ? month >= 7 : month <= 6;
    }

    private static double laterD(Subject subject, Site site) {
        double degrees = subject.monthsLatitude() == null ? 0
                : Math.abs(site.position().latitude()) - subject.monthsLatitude();
        double heights = site.elevationM() == null ? 0 : (site.elevationM() - LOW_GROUND_M) / HEIGHT_M;
        return Math.max(-MOST_D, Math.min(MOST_D, LATER_D * (degrees + heights)));
    }
}
