package understorey.season;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.Site;
import understorey.plan.Subject;

/**
 * What the catalogue's months tell of a site: the peak somewhere within them, moved by how much further from the equator
 * and how much higher the site lies than the place that the months refer to.
 *
 * @param scale   round the middle of the months
 * @param peak    on that scale; wide
 * @param reasons in the order of telling
 */
record CatalogueSeason(SeasonScale scale, Prediction peak, List<Advice> reasons) {

    /** Spring events come four days later a degree of latitude away from the equator, and every 122 m of height: bioclimatic law, A. D. Hopkins, 1918 (from memory). */
    private static final double LATER_D = 4;
    private static final double HEIGHT_M = 122;
    /** Floras mostly speak of low ground (from memory). */
    private static final double LOW_GROUND_M = 200;
    /** A home range reaches further than its middle tells. */
    private static final double MOST_D = 30;
    private static final double LEAST_D = 2;
    private static final double LEAST_ERROR_D = 10;

    /** Null when nobody knows the subject's months. */
    static CatalogueSeason of(Subject subject, Site site) {
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

    /** Between midwinter and midsummer, or little later: what warmth brings forward and height puts back. */
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
