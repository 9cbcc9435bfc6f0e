package understorey.outing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import understorey.kit.Intent;
import understorey.light.Outlook;
import understorey.sky.Interval;

/**
 * What to do if the day turns out another: only what differs from the plan.
 *
 * @param outing  in full
 * @param changes pictures taken at another time, or in only one of the two, in the order of the other day
 * @param instead pictures whose light, or whose stems, are poor on such a day though not as planned, and for which the author
 *                knows something else, in file order
 */
public record Alternative(Day day, Outing outing, List<Change> changes, List<Intent> instead) {

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
     * @param expected quality of the light as planned
     * @param quality  of the light on such a day
     */
    public static Alternative of(Day day, Outing planned, Quality expected, Outing then, Quality quality, List<Intent> intents) {
        List<Intent> instead = new ArrayList<>();
        for (Intent intent : intents) {
            String name = intent.shot().name();
            if (intent.shot().otherwise() != null && poor(intent, then.timeOf(name), quality)
                    && !poor(intent, planned.timeOf(name), expected)) {
                instead.add(intent);
            }
        }
        List<Change> changes = changes(planned, then);
        return changes.isEmpty() && instead.isEmpty() ? null : new Alternative(day, then, changes, List.copyOf(instead));
    }

    private static boolean poor(Intent intent, Interval time, Quality quality) {
        return time == null || Outlook.Grade.of(quality.at(intent, time.from().plus(time.length().dividedBy(2)))) == Outlook.Grade.POOR;
    }

    private static List<Change> changes(Outing planned, Outing then) {
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

    private static List<String> shots(Outing outing) {
        List<String> shots = new ArrayList<>();
        for (Leg leg : outing.legs()) {
            if (leg.what() == Leg.What.SHOOT) {
                shots.add(leg.shot());
            }
        }
        return shots;
    }
}
