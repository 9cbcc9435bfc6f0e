package understorey.order;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.light.Outlook.Grade;
import understorey.visit.Day;
import understorey.visit.Hours;

/**
 * Everything that the running order is computed from, so that anyone can check it. Of all orders and starts the plan has the most
 * pictures of priority 3, then the largest sum: the worth of each start, which falls with the time for drops, less the price of each idle minute and of each move to another
 * spot between two pictures. A minute is idle if it is spent neither setting up nor photographing. The time of being back is
 * rounded up to a step; the minutes before a fixed start are free. A later picture then moves into an earlier wait if the sum loses
 * no more than the least gain times its priority. Last, each picture in turn starts as early as it can without losing more worth
 * than the price of waiting for its best start: the first picture at the price of an idle minute, later ones at that of a wait. Its
 * first possible start may lose the least gain times its priority.
 *
 * @param from       first minute at the base, ready to walk
 * @param to         minute by which the walk is over
 * @param base       spot where the walk begins and ends; null where it begins at the first picture
 * @param grades     worth of a picture of priority 1 where each grade begins
 * @param idlePrice  of a minute, in worth
 * @param waitPrice  of an hour between two pictures, in worth
 * @param breakMin   of a wait; more cost no more
 * @param movePrice  of another spot for the next picture, in worth
 * @param leastGain  of a picture of priority 1 that can be seen, in worth
 * @param stepMin    between two starts
 * @param setUpMin   before each picture
 * @param changeMin  before a picture with another lens or body than the one before
 * @param firstStart of the grid
 * @param shots      in the author's order
 * @param travel     between all places with pictures, both ways
 */
public record OrderBasis(ZonedDateTime from, ZonedDateTime to, @Nullable String base, Map<Grade, Double> grades, double idlePrice, double waitPrice,
                         int breakMin, double movePrice, double leastGain, int stepMin, int setUpMin, int changeMin,
                         ZonedDateTime firstStart, List<Shot> shots, List<Travel> travel) {

    private static final Map<Grade, Double> GRADES = Collections.unmodifiableMap(Arrays.stream(Grade.values()).collect(Collectors.toMap(
            grade -> grade, grade -> Task.graded(Math.max(grade.least(), Task.SUN_IS_UP)), (one, other) -> one, () -> new EnumMap<>(Grade.class))));

    /**
     * One picture.
     *
     * @param spot  where it is taken
     * @param lens  and body; pictures with the same text need no change between them
     * @param start fixed by the author; null for any
     * @param after name of the picture that must come first; null for none
     * @param worth by step from the first start on, null where it is not to start; of a fixed start the only one
     */
    public record Shot(String name, String spot, String lens, int minutes, int priority, @Nullable ZonedDateTime start,
                       @Nullable String after, List<@Nullable Double> worth) {
    }

    /** Minutes of a walk by day and by head torch. */
    public record Travel(String from, String to, int byDay, int byHeadTorch) {
    }

    static OrderBasis of(Day day, Visit visit, List<Candidate> candidates) {
        Hours hours = day.hours();
        List<Shot> shots = IntStream.range(0, candidates.size()).mapToObj(i -> shot(day, visit, i, candidates.get(i))).toList();
        return new OrderBasis(hours.at(visit.from()), hours.at(visit.to()),
                day.trip().site().parking() == null ? null : day.walks().name(visit.base()), GRADES, Task.IDLE_PRICE, Task.WAIT_PRICE,
                Task.A_BREAK, Task.MOVE_PRICE, Task.LEAST_GAIN, Task.STEP, RunningOrder.SET_UP_MIN, Tasks.LENS_CHANGE,
                hours.at(Task.steps(visit.from()) * Task.STEP), shots, travel(day));
    }

    private static Shot shot(Day day, Visit visit, int index, Candidate candidate) {
        Task task = visit.tasks().get(index);
        return new Shot(candidate.name(), day.walks().name(task.spot()), candidate.mounted().strip().replace("\n", ", "), task.minutes(),
                task.priority(), task.pinned() ? day.hours().at(task.pin()) : null, candidate.shot().after(), worth(visit, task));
    }

    private static List<@Nullable Double> worth(Visit visit, Task task) {
        List<@Nullable Double> worth = new ArrayList<>();
        if (task.pinned()) {
            worth.add(task.gradedWorth(task.pin()));
            return worth;
        }
        for (int start = Task.steps(visit.from()) * Task.STEP; start <= visit.to(); start += Task.STEP) {
            boolean possible = start + task.minutes() <= visit.to() && task.firstStart(start) == start;
            worth.add(possible ? task.gradedWorth(start) : null);
        }
        return worth;
    }

    private static List<Travel> travel(Day day) {
        List<Travel> travel = new ArrayList<>();
        int first = day.trip().site().parking() == null ? 1 : 0;
        for (int from = first; from < day.walks().spots().size(); from++) {
            for (int to = first; to < day.walks().spots().size(); to++) {
                if (from != to) {
                    travel.add(new Travel(day.walks().name(from), day.walks().name(to), day.walks().times().byDay(from, to),
                            day.walks().times().byHeadTorch(from, to)));
                }
            }
        }
        return travel;
    }
}
