package understorey.season.model;

import java.time.LocalDate;
import java.time.Month;

/**
 * Date from which degree days are summed: the last 1 January, or 1 July in the south, before the flowers' own time of
 * the year. It is no fixed distance from the anchor, since a leap day may lie between the two.
 *
 * @param month on whose first day the sum starts
 */
public record SumStart(SeasonScale scale, Month month) {

    public static SumStart at(double latitude, SeasonScale scale) {
        return new SumStart(scale, latitude < 0 ? Month.JULY : Month.JANUARY);
    }

    /** The start of a season's sum, in days from its anchor: 0 or less. */
    int day(int season) {
        LocalDate anchor = scale.anchor().atYear(season);
        LocalDate start = LocalDate.of(season, month, 1);
        return scale.day(season, start.isAfter(anchor) ? start.minusYears(1) : start);
    }
}
