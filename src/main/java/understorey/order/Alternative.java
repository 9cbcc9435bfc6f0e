package understorey.order;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import understorey.plan.Shot;
import understorey.light.Outlook;
import understorey.sky.Interval;

/**
 * What to do if the day turns out another: only what differs from the plan.
 *
 * @param order   in full
 * @param changes pictures taken at another time, or in only one of the two, in the order of the other day
 * @param instead pictures whose light, or whose stems, are poor on such a day though not as planned, and for which the author
 *                knows something else, in file order
 */
public record Alternative(Day day, RunningOrder order, List<Change> changes, List<Shot> instead) {

    /** How it may turn out. */
    public enum Day { CLEAR, OVERCAST, RAIN, WIND }

    /**
     * A picture at another time.
     *
     * @param planned null when the plan leaves it out
     * @param then    null when the other day leaves it out
     */
    public record Change(String shot, Interval planned, Interval then) {
    }

    /** Less is the same time to an author: common practice, no source. */
    private static final Duration MOVED = Duration.ofMinutes(15);

    /**
     * Against the plan; null when there is nothing to say.
     *
     * @param planned    with the light as planned
     * @param then       the order of such a day
     * @param candidates the same pictures with the light of such a day
     */
    public static Alternative of(Day day, RunningOrder order, List<Candidate> planned, RunningOrder then, List<Candidate> candidates) {
        List<Shot> instead = new ArrayList<>();
        for (int i = 0; i < candidates.size(); i++) {
            Shot shot = candidates.get(i).shot();
            if (shot.otherwise() != null && poor(candidates.get(i).quality(), then.timeOf(shot.name()))
                    && !poor(planned.get(i).quality(), order.timeOf(shot.name()))) {
                instead.add(shot);
            }
        }
        List<Change> changes = changes(order, then);
        return changes.isEmpty() && instead.isEmpty() ? null : new Alternative(day, then, changes, List.copyOf(instead));
    }

    private static boolean poor(Quality quality, Interval time) {
        return time == null || Outlook.Grade.of(quality.at(time.from().plus(time.length().dividedBy(2)))) == Outlook.Grade.POOR;
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
            boolean moved = one == null || other == null || Duration.between(one.from(), other.from()).abs().compareTo(MOVED) >= 0;
            boolean turned = !sameOrder && before.indexOf(name) != after.indexOf(name);
            if (moved || turned && !one.from().isEqual(other.from())) {
                changes.add(new Change(name, one, other));
            }
        }
        return List.copyOf(changes);
    }

    private static List<String> shots(RunningOrder order) {
        return order.shooting().stream().map(Leg::shot).toList();
    }
}
