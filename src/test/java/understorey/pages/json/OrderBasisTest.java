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

    @Test
    void noOrderIsWorthMoreThanThePlan() throws IOException {
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
        known.clear();
        assertEquals(best(0, -1, 0), planned(plan.get("running_order")), 1e-6, plan.at("/trip/site").textValue());
    }

    /** The most that can still be gained after some pictures, by the last of them and its end. */
    private double best(int taken, int last, int now) {
        List<Integer> state = List.of(taken, last, now);
        if (!known.containsKey(state)) {
            int home = last < 0 ? now : now + travel(spot(last), base(), now);
            double most = home > leave ? Double.NEGATIVE_INFINITY : last < 0 ? 0 : -price() * (roundedUp(home) - now);
            for (int next = 0; next < shots.size(); next++) {
                most = (taken >> next & 1) != 0 || waitsForIt(taken, next) ? most : Math.max(most, best(taken, last, now, next));
            }
            known.put(state, most);
        }
        return known.get(state);
    }

    private double best(int taken, int last, int now, int next) {
        int setUp = basis.get("set_up_min").intValue();
        int ready = now + travel(last < 0 ? base() : spot(last), spot(next), now) + setUp
                + (last >= 0 && !lens(last).equals(lens(next)) ? basis.get("lens_change_min").intValue() : 0);
        JsonNode worth = shots.get(next).get("worth");
        double most = Double.NEGATIVE_INFINITY;
        for (int step = 0; step < worth.size(); step++) {
            int start = start(next, step);
            int end = start + shots.get(next).get("duration_min").intValue();
            if (start >= ready && end <= leave && !worth.get(step).isNull()) {
                most = Math.max(most, worth.get(step).doubleValue() + must(next) - price() * (start - setUp - now - free(next))
                        + best(taken | 1 << next, next, end));
            }
        }
        return most;
    }

    private double planned(JsonNode legs) {
        double sum = 0;
        int now = 0;
        boolean any = false;
        for (JsonNode leg : legs) {
            if ("shoot".equals(leg.get("what").textValue())) {
                int shot = index(leg.get("shot").textValue());
                int start = minute(leg.get("from"));
                int step = shots.get(shot).get("start").isNull() ? (start - start(shot, 0)) / 5 : 0;
                sum += shots.get(shot).get("worth").get(step).doubleValue() + must(shot)
                        - price() * (start - basis.get("set_up_min").intValue() - now - free(shot));
                now = minute(leg.get("to"));
                any = true;
            }
        }
        return any ? sum - price() * (roundedUp(minute(legs.get(legs.size() - 1).get("to"))) - now) : 0;
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
