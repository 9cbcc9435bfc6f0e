package understorey.season;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.Season;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.season.model.Course;
import understorey.season.model.PeakChances;
import understorey.season.model.SeasonScale;

/**
 * Flowering of a subject at a site in one of its seasons.
 *
 * @param first     flowers
 * @param peak      of the stand
 * @param over      the last of them
 * @param fullFrom  expected first day in full flower
 * @param fullTo    expected last day in full flower
 * @param best      the day with the highest chance of full flower
 * @param method    of the estimate
 * @param seen      sightings of this season, all counted, in order of date
 * @param errorD    half of the peak's likely span, days
 * @param past      the seasons on record that were used, in order
 * @param reasons   in the order of telling
 * @param findings  what the author should check
 * @param chances   of the peak's day
 * @param scale     of the days that they count
 * @param season    the year in which its middle usually falls
 * @param course    of the flowering
 */
public record FloweringWindow(Subject subject, Expected first, Expected peak, Expected over, LocalDate fullFrom,
                              LocalDate fullTo, LocalDate best, Method method, List<Season.Sighting> seen, double errorD,
                              List<Past> past, List<Advice> reasons, List<Advice> findings, PeakChances chances,
                              SeasonScale scale, int season, Course course) {

    /** A likely span holds four years in five. */
    public static final double LIKELY = 0.8;

    /** Days with at least that share of the best chance are as good to go. */
    private static final double NEARLY = 0.9;

    /** Two days, both included. */
    public record Span(LocalDate from, LocalDate to) {
    }

    /** A day, and the span in which it likely falls. */
    public record Expected(LocalDate day, LocalDate from, LocalDate to) {
    }

    /**
     * A past year, moved to this season; a date is null if it was not recorded.
     *
     * @param record as written
     * @param first  moved to this season
     * @param full   moved to this season
     * @param over   moved to this season
     */
    public record Past(Season.Flowering record, @Nullable LocalDate first, @Nullable LocalDate full, @Nullable LocalDate over) {
    }

    /** The best method that the data allow. */
    public enum Method { CATALOGUE, FEW_RECORDS, MEAN, TEMPERATURE_WINDOW, THERMAL_TIME, SIGHTINGS }

    /** This window without the seasons on record. */
    public FloweringWindow withoutRecords() {
        return new FloweringWindow(subject, first, peak, over, fullFrom, fullTo, best, method, seen, errorD, List.of(),
                reasons, findings, chances, scale, season, course);
    }

    /**
     * The window nearest to a day; null if nothing is known about the subject's season.
     *
     * @param springWarmerC difference of this spring from a usual one; null if it is not given
     */
    public static @Nullable FloweringWindow of(Site site, Subject subject, LocalDate near, @Nullable Double springWarmerC) {
        return new FloweringForecast(site, subject, near, springWarmerC).window();
    }

    /** The days around the best that are nearly as likely to have full flower. */
    public Span likeliest() {
        double least = NEARLY * chanceOn(best);
        LocalDate from = best;
        LocalDate to = best;
        while (chanceOn(from.minusDays(1)) >= least) {
            from = from.minusDays(1);
        }
        while (chanceOn(to.plusDays(1)) >= least) {
            to = to.plusDays(1);
        }
        return new Span(from, to);
    }

    /** Whether a day belongs to this season. */
    public boolean covers(LocalDate date) {
        return scale.seasonOf(date) == season;
    }

    /** Chance that the stand is in full flower on a day, 0 to 1; 0 on a day of another season. */
    public double chanceOn(LocalDate date) {
        return covers(date) ? fullOn(chances, course, seen, scale.day(season, date), date) : 0;
    }

    /** Share of the heads not open yet (negative) or over (positive) on a day, as seen then or else as the likeliest peak has it. */
    public double ripeness(LocalDate date) {
        return seen.stream().filter(sighting -> sighting.date().equals(date)).map(sighting -> course.ripeness(sighting.stage())).findFirst()
                .orElseGet(() -> course.ripeness(scale.day(season, date) - scale.day(season, peak.day())));
    }

    /**
     * Chance of full flower on a day. After a sighting in full flower only the end is open, and before one only the beginning,
     * unless the sightings contradict each other.
     */
    static double fullOn(PeakChances chances, Course course, List<Season.Sighting> seen, int day, LocalDate date) {
        boolean agree = true;
        boolean begun = false;
        boolean lasts = false;
        Season.Stage before = Season.Stage.IN_BUD;
        for (Season.Sighting sighting : seen) {
            boolean full = sighting.stage() == Season.Stage.FULL_FLOWER;
            begun |= full && !sighting.date().isAfter(date);
            lasts |= full && !sighting.date().isBefore(date);
            agree &= sighting.stage().compareTo(before) >= 0;
            before = sighting.stage();
        }
        return chances.between(agree && lasts ? Double.NEGATIVE_INFINITY : day - course.fullToD(),
                agree && begun ? Double.POSITIVE_INFINITY : day - course.fullFromD());
    }
}
