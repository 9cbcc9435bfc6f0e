package understorey.pages.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.pages.Trips;
import understorey.plan.Trip;

/** Checks the running order from {@code plan.json} alone: every order of every choice of pictures at every start. */
class OrderBasisTest {

    private final List<JsonNode> shots = new ArrayList<>();
    private JsonNode basis;
    private int leave;
    private final Map<List<Integer>, Double> known = new HashMap<>();
    /** The only order to try; null for all. */
    private List<Integer> only;

    @Test
    void hasTheBestOrderAndNoWaitThatDoesNotPay() throws IOException {
        for (Places place : Places.ALL) {
            check(Trips.full(place, Trips.EXACT));
            check(Trips.trip(place, Trips.EXACT, Trips.dayBag(), Trips.pictures(), LocalTime.of(7, 0), LocalTime.of(8, 30), Trips.forecast()));
        }
    }

    /** A place that is spared gives no minutes away. */
    @Test
    void isWithheldWithThePosition() throws IOException {
        assertTrue(PlanJsonTest.json(Trips.sensitive(Places.MID_LATITUDE, Trips.COARSE)).get("order_basis").isNull());
    }

    private void check(Trip trip) throws IOException {
        JsonNode plan = PlanJsonTest.json(trip);
        basis = plan.get("order_basis");
        shots.clear();
        basis.get("shots").forEach(shots::add);
        leave = minute(basis.get("leave"));
        only = null;
        known.clear();
        double most = best(0, -1, 0);
        only = new ArrayList<>();
        List<Integer> starts = new ArrayList<>();
        plan.get("running_order").forEach(leg -> {
            if ("shoot".equals(leg.get("what").textValue())) {
                only.add(index(leg.get("shot").textValue()));
                starts.add(minute(leg.get("from")));
            }
        });
        known.clear();
        double lost = most - best(0, -1, 0);
        assertTrue(lost >= -1e-6 && lost <= only.stream().mapToDouble(this::leastGain).sum() + 1e-6, plan.at("/trip/site").textValue() + lost);
        assertEquals(earliestGoodEnough(bestStarts()), starts, plan.at("/trip/site").textValue());
    }

    /** The starts that are worth most in that order, each as early as possible. */
    private List<Integer> bestStarts() {
        List<Integer> starts = new ArrayList<>();
        int taken = 0;
        int last = -1;
        int now = 0;
        for (int next : only) {
            double most = best(taken, last, now);
            int step = 0;
            while (starting(taken, last, now, next, step) < most - 1e-9) {
                step++;
            }
            starts.add(start(next, step));
            now = start(next, step) + duration(next);
            taken |= 1 << next;
            last = next;
        }
        return starts;
    }

    /** The same order without waits that do not pay. */
    private List<Integer> earliestGoodEnough(List<Integer> planned) {
        List<Integer> starts = new ArrayList<>();
        int last = -1;
        int now = 0;
        for (int shot : only) {
            int at = planned.get(starts.size());
            int step = 0;
            while (start(shot, step) < at && (start(shot, step) < ready(last, now, shot) || shots.get(shot).get("worth").get(step).isNull())) {
                step++;
            }
            int first = step;
            double price = last < 0 ? price() : basis.get("wait_between_cost_per_hour").doubleValue() / 60;
            while (start(shot, step) < at && lost(shot, step, at) > Math.max(step == first ? leastGain(shot) : 0,
                    price * Math.min(basis.get("break_from_min").intValue(), at - start(shot, step))) + 1e-9) {
                step++;
            }
            starts.add(start(shot, step));
            now = start(shot, step) + duration(shot);
            last = shot;
        }
        return starts;
    }

    /** Worth lost by an earlier start; all of it where the picture is not to start. */
    private double lost(int shot, int step, int planned) {
        JsonNode worth = shots.get(shot).get("worth");
        int later = (planned - start(shot, step)) / basis.get("step_min").intValue();
        return worth.get(step + later).doubleValue() - (worth.get(step).isNull() ? Double.NEGATIVE_INFINITY : worth.get(step).doubleValue());
    }

    private double leastGain(int shot) {
        return basis.get("least_gain").doubleValue() * shots.get(shot).get("priority").intValue();
    }

    /** The most that can still be gained after some pictures, by the last of them and its end. */
    private double best(int taken, int last, int now) {
        List<Integer> state = List.of(taken, last, now);
        if (!known.containsKey(state)) {
            int home = last < 0 ? now : now + travel(spot(last), base(), now);
            double most = home > leave || only != null && Integer.bitCount(taken) < only.size() ? Double.NEGATIVE_INFINITY
                    : last < 0 ? 0 : -price() * (roundedUp(home) - now);
            for (int next = 0; next < shots.size(); next++) {
                most = (taken >> next & 1) != 0 || waitsForIt(taken, next) || only != null && !comesNext(taken, next)
                        ? most : Math.max(most, best(taken, last, now, next));
            }
            known.put(state, most);
        }
        return known.get(state);
    }

    private boolean comesNext(int taken, int next) {
        return Integer.bitCount(taken) < only.size() && only.get(Integer.bitCount(taken)) == next;
    }

    private double best(int taken, int last, int now, int next) {
        double most = Double.NEGATIVE_INFINITY;
        for (int step = 0; step < shots.get(next).get("worth").size(); step++) {
            most = Math.max(most, starting(taken, last, now, next, step));
        }
        return most;
    }

    /** The most that can still be gained by taking a picture next, with that start. */
    private double starting(int taken, int last, int now, int next, int step) {
        JsonNode worth = shots.get(next).get("worth").get(step);
        int start = start(next, step);
        int end = start + duration(next);
        return start < ready(last, now, next) || end > leave || worth.isNull() ? Double.NEGATIVE_INFINITY
                : worth.doubleValue() + must(next) - price() * (start - setUp() - now - free(next)) - move(last, next)
                + best(taken | 1 << next, next, end);
    }

    private double move(int last, int next) {
        return last < 0 || spot(last).equals(spot(next)) ? 0 : basis.get("move_cost").doubleValue();
    }

    private int ready(int last, int now, int next) {
        return now + travel(last < 0 ? base() : spot(last), spot(next), now) + setUp()
                + (last >= 0 && !lens(last).equals(lens(next)) ? basis.get("lens_change_min").intValue() : 0);
    }

    private int setUp() {
        return basis.get("set_up_min").intValue();
    }

    private int duration(int shot) {
        return shots.get(shot).get("duration_min").intValue();
    }

    /** Minutes before a fixed start. */
    private int free(int shot) {
        return shots.get(shot).get("start").isNull() ? 0 : start(shot, 0);
    }

    private int index(String name) {
        int index = 0;
        while (!name.equals(shots.get(index).get("name").textValue())) {
            index++;
        }
        return index;
    }

    private boolean waitsForIt(int taken, int next) {
        for (int i = 0; i < shots.size(); i++) {
            if ((taken >> i & 1) == 1 && shots.get(next).get("name").equals(shots.get(i).get("after"))) {
                return true;
            }
        }
        return false;
    }

    private double must(int shot) {
        return shots.get(shot).get("priority").intValue() == 3 ? 1000 : 0;
    }

    private int start(int shot, int step) {
        JsonNode fixed = shots.get(shot).get("start");
        return fixed.isNull() ? minute(basis.get("first_start")) + step * basis.get("step_min").intValue() : minute(fixed);
    }

    private String spot(int shot) {
        return shots.get(shot).get("spot").textValue();
    }

    private String lens(int shot) {
        return shots.get(shot).get("lens").textValue();
    }

    private String base() {
        return basis.get("base").isNull() ? null : basis.get("base").textValue();
    }

    /** By day throughout, or by head torch throughout: the visits here pass through no dusk on a walk. */
    private int travel(String from, String to, int leaving) {
        if (from == null || to == null || from.equals(to)) {
            return 0;
        }
        JsonNode minutes = basis.get("travel_min").get(from + " > " + to);
        boolean dark = !basis.get("head_torch_until").isNull() && leaving < minute(basis.get("head_torch_until"));
        return minutes.get(dark ? "head_torch" : "day").intValue();
    }

    private double price() {
        return basis.get("wait_cost_per_min").doubleValue();
    }

    /** Being back counts in steps of the clock. */
    private int roundedUp(int minute) {
        int past = minute + offset();
        return (past + 4) / 5 * 5 - offset();
    }

    private int offset() {
        return ZonedDateTime.parse(basis.get("arrive").textValue()).getMinute() % 5;
    }

    private int minute(JsonNode time) {
        return (int) Duration.between(ZonedDateTime.parse(basis.get("arrive").textValue()), ZonedDateTime.parse(time.textValue())).toMinutes();
    }
}
