package understorey.pages.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.pages.Trips;

/** The keys that other programs may count on, as the format's description lists them. */
class PlanJsonContractTest {

    @Test
    void holdsEveryKeyOfTheContractWithItsType() throws IOException {
        holds(contract(), PlanJsonTest.json(Trips.full(Places.MID_LATITUDE, Trips.EXACT)), "");
    }

    @Test
    void holdsEveryKeyOnEveryKindOfDay() throws IOException {
        for (Places place : Places.ALL) {
            JsonNode json = PlanJsonTest.json(Trips.bare(place, Trips.phone()));
            assertTrue(keys(json).containsAll(keys(contract())), () -> place + ": " + keys(json));
            for (String part : List.of("trip", "sun", "moon", "kit", "season")) {
                assertTrue(keys(json.get(part)).containsAll(keys(contract().get(part))), part + " of " + place);
            }
        }
    }

    @Test
    void leavesASeasonNullThatNobodyKnows() throws IOException {
        JsonNode season = PlanJsonTest.json(Trips.bare(Places.MID_LATITUDE, Trips.phone())).get("season");
        boolean known = !season.get("first_month").isNull();
        for (String key : List.of("full_from", "full_to", "best", "method", "chance_on_day")) {
            assertEquals(known, !season.get(key).isNull(), key);
        }
    }

    private static void holds(JsonNode expected, JsonNode actual, String path) {
        assertNotNull(actual, "no " + path);
        if (actual.isNull() && mayBeNull(path)) {
            return;
        }
        if (expected.isObject()) {
            assertTrue(actual.isObject(), path + " is " + actual);
            List<String> keys = keys(expected);
            assertTrue(keys(actual).containsAll(keys), () -> path + " has only " + keys(actual));
            keys.forEach(key -> holds(expected.get(key), actual.get(key), path + "/" + key));
        } else if (expected.isArray()) {
            assertTrue(actual.isArray(), path + " is " + actual);
            if (!expected.isEmpty()) {
                eachHolds(expected.get(0), actual, path);
            }
        } else {
            assertEquals(expected.getNodeType(), actual.getNodeType(), path + " is " + actual);
        }
    }

    /** Every item holds the keys; texts and numbers may be null only where {@link #mayBeNull} says so. */
    private static void eachHolds(JsonNode expected, JsonNode items, String path) {
        boolean mayBeEmpty = path.equals("/shots/filters") || path.equals("/kit/take/for");
        assertFalse(items.isEmpty() && !mayBeEmpty, path + " is empty");
        items.forEach(item -> holds(expected, item, path));
    }

    private static boolean mayBeNull(String path) {
        return List.of("/light/shadow_per_height", "/light/open_ev100/sun", "/light/floor_ev100/fleck",
                "/shots/if_the_light_differs/sky", "/shots/if_the_light_differs/time", "/places/light/above_skyline",
                "/places/light/floor_ev100/shade",
                "/shots/sharp_to_m", "/shots/support", "/shots/light_angle_deg", "/shots/light_quality",
                "/shots/flower_cover", "/shots/from", "/shots/to",
                "/running_order/shot", "/kit/take/weight_g", "/moon/rise", "/moon/set").contains(path);
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static JsonNode contract() throws IOException {
        try (InputStream in = PlanJsonContractTest.class.getResourceAsStream("/contract/plan.json")) {
            return PlanJsonTest.MAPPER.readTree(in);
        }
    }
}
