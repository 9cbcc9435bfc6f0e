package understorey.season;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.light.Outlook;
import understorey.plan.Shot;
import understorey.sky.Interval;

/**
 * A day of a trip with its rank.
 *
 * @param rank    from 1; hopeless days come last, days that the author does not want before them
 * @param score   0 to 1: the pictures' chances of flower and light, by their priorities, times hours and weather; good
 *                for comparing days of one trip, and for nothing else
 * @param flower  chance of full flower of the pictures' subjects, by priority, 0 to 1; null if unknown for all
 * @param light   the light that the pictures want, by priority, 0 to 1
 * @param hours   that the visit can use; null if there are none
 * @param wanted  by weekday and days to avoid
 * @param shots   the three most promising pictures, the best first
 * @param reasons in the order of telling
 */
public record RankedDay(LocalDate date, int rank, double score, @Nullable Double flower, double light, @Nullable Interval hours,
                        boolean wanted, List<Promise> shots, List<Advice> reasons) {

    /**
     * A picture on that day.
     *
     * @param flower  chance that its subject is in full flower, 0 to 1; null if its season is unknown
     * @param light   at the best time of the visit, 0 to 1: the mean of three skies if the sky is unknown
     * @param grade   of the light under the sky that suits it best
     * @param at      time of that light; null if there is none
     * @param because what decides its light then, the weakest first; empty for a picture without wishes
     */
    public record Promise(Shot shot, @Nullable Double flower, double light, Outlook.Grade grade, @Nullable ZonedDateTime at,
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

    /** True if the flowers are almost certainly not in full flower, whatever the light. */
    public boolean hopeless() {
        return flower != null && flower < HOPELESS;
    }

    RankedDay ranked(int place, List<Advice> told) {
        return new RankedDay(date, place, score, flower, light, hours, wanted, shots, told);
    }
}
