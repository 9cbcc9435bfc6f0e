package understorey.season.model;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.List;

/**
 * Scale of days around a flower's own time of the year, so that its season can cross the new year. Day 0 is the anchor; a
 * season has the year of its anchor, and reaches half a year to either side.
 *
 * @param anchor never 29 February
 */
public record SeasonScale(MonthDay anchor) {

    private static final double YEAR_D = 365.2425;
    /** Any common year before another one, to name a day of the year. */
    public static final int COMMON_YEAR = 2025;

    /** The scale around the middle of some dates: their mean on the circle of the year. */
    public static SeasonScale around(List<LocalDate> dates) {
        double sine = 0;
        double cosine = 0;
        for (LocalDate date : dates) {
            double turn = 2 * Math.PI * (date.getDayOfYear() - 1) / date.lengthOfYear();
            sine += Math.sin(turn);
            cosine += Math.cos(turn);
        }
        double turn = Math.atan2(sine, cosine) / (2 * Math.PI);
        long day = Math.floorMod(Math.round(turn * YEAR_D), 365L);
        LocalDate middle = LocalDate.ofYearDay(COMMON_YEAR, (int) day + 1);
        return new SeasonScale(MonthDay.of(middle.getMonth(), middle.getDayOfMonth()));
    }

    /** The season that a date belongs to: that of the nearest anchor. */
    public int seasonOf(LocalDate date) {
        int nearest = date.getYear();
        for (int year = date.getYear() - 1; year <= date.getYear() + 1; year++) {
            nearest = Math.abs(day(year, date)) < Math.abs(day(nearest, date)) ? year : nearest;
        }
        return nearest;
    }

    /** Days from the anchor of a date's own season. */
    public int day(LocalDate date) {
        return day(seasonOf(date), date);
    }

    /** Days from the anchor of a season. */
    public int day(int season, LocalDate date) {
        return (int) ChronoUnit.DAYS.between(anchor.atYear(season), date);
    }

    /** The date of a day of a season, to the nearest whole day. */
    public LocalDate date(int season, double day) {
        return anchor.atYear(season).plusDays((long) Math.floor(day + 0.5));
    }
}
