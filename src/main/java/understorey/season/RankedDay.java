package understorey.season;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.advice.Advice;
import understorey.light.Outlook;
import understorey.plan.Shot;
import understorey.sky.Interval;

/**
 * What a day promises.
 *
 * @param rank    from 1; hopeless days come last, days that the author does not want before them
 * @param score   0 to 1: the pictures' chances of flower and light, by their priorities, times hours and weather; good
 *                for comparing days of one trip, and for nothing else
 * @param flower  chance that what the pictures want is in full flower, by priority, 0 to 1; null when nobody knows of any
 * @param light   the light that the pictures want, by priority, 0 to 1
 * @param hours   that the visit can use; null when none are left
 * @param wanted  by weekday and days to avoid
 * @param shots   the three most promising pictures, the best first
 * @param reasons in the order of telling
 */
public record RankedDay(LocalDate date, int rank, double score, Double flower, double light, Interval hours,
                        boolean wanted, List<Promise> shots, List<Advice> reasons) {

    /**
     * What a day promises one picture.
     *
     * @param flower  chance that its subject is in full flower, 0 to 1; null when nobody knows its season
     * @param light   at the best time of the visit, 0 to 1: the mean of three skies where nobody said what it will be
     * @param grade   of the light under the sky that suits it best
     * @param at      the time of that; null when there is none
     * @param because what decides its light then, the weakest first; empty for a picture without wishes
     */
    public record Promise(Shot shot, Double flower, double light, Outlook.Grade grade, ZonedDateTime at,
                          List<Advice> because) {

        double value() {
            return (flower == null ? 1 : flower) * light;
        }

        int priority() {
            return shot.priority() == null ? USUAL_PRIORITY : shot.priority();
        }
    }

    private static final int USUAL_PRIORITY = 2;

    /** Under this chance of full flower a day is printed as under 1 %. */
    private static final double HOPELESS = 0.01;

    /** True where the flowers are known to be all but certainly not full, whatever the light. */
    public boolean hopeless() {
        return flower != null && flower < HOPELESS;
    }

    RankedDay ranked(int place, List<Advice> told) {
        return new RankedDay(date, place, score, flower, light, hours, wanted, shots, told);
    }
}
