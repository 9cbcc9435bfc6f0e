package understorey.order;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.light.Outlook;
import understorey.plan.Shot;
import understorey.sky.Interval;

/**
 * Plan for a day that turns out different: only what differs from the plan.
 *
 * @param order   in full
 * @param changes pictures at another time, or in only one of the two plans, in the order of the other day
 * @param instead pictures with an {@code otherwise} whose light or wind is poor on such a day, though not as planned, in file
 *                order
 */
public record Alternative(Day day, RunningOrder order, List<Change> changes, List<Shot> instead) {

    /** The different day. */
    public enum Day { CLEAR, OVERCAST, RAIN, WIND }

    /**
     * A picture at another time.
     *
     * @param planned null if the plan leaves it out
     * @param then    null if the other day leaves it out
     */
    public record Change(String shot, @Nullable Interval planned, @Nullable Interval then) {
    }

    /** Smaller changes of time are not worth telling: common practice, no source. */
    private static final Duration MOVED = Duration.ofMinutes(20);

    /**
     * The alternative, compared with the plan; null if it does not differ.
     *
     * @param planned    with the light as planned
     * @param then       the order of such a day
     * @param candidates the same pictures with the light of such a day
     */
    public static @Nullable Alternative of(Day day, RunningOrder order, List<Candidate> planned, RunningOrder then,
                                           List<Candidate> candidates) {
        List<Shot> instead = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            Shot shot = candidates.get(i).shot();
            if (shot.otherwise() != null && poor(candidates.get(i), then.timeOf(shot.name()))
                    && !poor(planned.get(i), order.timeOf(shot.name()))) {
                instead.add(shot);
            }
        }
        List<Change> changes = changes(order, then);
        return changes.isEmpty() && instead.isEmpty() ? null : new Alternative(day, then, changes, List.copyOf(instead));
    }

    private static boolean poor(Candidate picture, @Nullable Interval time) {
        return time == null || Outlook.Grade.of(picture.best(time.middle())) == Outlook.Grade.POOR;
    }

    private static List<Change> changes(RunningOrder planned, RunningOrder then) {
        List<String> before = shots(planned);
        List<String> after = shots(then);
        List<String> names = new ArrayList<>(after);
        for (String name : before) {
            if (!after.contains(name)) {
                names.add(name);
            }
        }
        boolean sameOrder = before.equals(after);
        List<Change> changes = new ArrayList<>();
        for (String name : names) {
            Interval one = planned.timeOf(name);
            Interval other = then.timeOf(name);
            boolean turned = !sameOrder && before.indexOf(name) != after.indexOf(name);
            if (one == null || other == null || Duration.between(one.from(), other.from()).abs().compareTo(MOVED) >= 0
                    || turned && !one.from().isEqual(other.from())) {
                changes.add(new Change(name, one, other));
            }
        }
        return List.copyOf(changes);
    }

    private static List<String> shots(RunningOrder order) {
        return order.shooting().stream().map(Leg::shot).toList();
    }
}
