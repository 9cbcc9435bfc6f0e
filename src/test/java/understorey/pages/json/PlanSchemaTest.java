package understorey.pages.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.Briefs;
import understorey.pages.words.Sentences;
import understorey.reading.PlansReader;

class PlanSchemaTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final int LARGEST = 90_000;

    @Test
    void holdsForEveryPlanOfTheDemoAndForEveryKindOfTrip() throws IOException {
        for (Path plan : demo()) {
            assertEquals(List.of(), PlanSchema.faults(Files.readString(plan)), plan.toString());
        }
        for (Brief brief : Briefs.all()) {
            assertEquals(List.of(), PlanSchema.faults(PlanJson.of(brief, Sentences.builtIn()::of)), brief.trip().site().name());
        }
    }

    /** The chance is not known where the season is not. */
    @Test
    void holdsForDaysComparedWithoutAKnownSeason(@TempDir Path home) throws IOException {
        Path file = Files.writeString(home.resolve("trip.yaml"), """
                trip: A test
                site: {site: Testing Wood, latitude: 51.5, longitude: -2.5, time_zone: Europe/London}
                dates: [2027-05-08, 2027-05-09]
                gear: phone
                shots:
                  - {name: One, subject: {name: A testing flower}}
                """);
        Brief brief = Planner.brief(PlansReader.read(file).trips().get(0));
        String plan = PlanJson.of(brief, Sentences.builtIn()::of);
        assertTrue(MAPPER.readTree(plan).at("/days/flower_chance/1").isNull(), plan);
        assertEquals(List.of(), PlanSchema.faults(plan));
    }

    @Test
    void refusesAKeyThatItDoesNotKnowAndOneThatIsMissing() throws IOException {
        for (String part : List.of("", "/trip", "/light", "/shots/0", "/shots/0/if_the_light_differs", "/places", "/kit", "/days", "/order_basis")) {
            assertEquals(1, faults(part, (node, key) -> node.put("another_key", 1)).size(), part);
            assertFalse(faults(part, (node, key) -> node.remove(key)).isEmpty(), part);
            assertFalse(faults(part, (node, key) -> node.put(key, -7.5)).isEmpty(), part);
        }
    }

    @Test
    void isASchemaOf2020() {
        assertEquals(List.of(), JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(SchemaLocation.of(SchemaId.V202012))
                .validate(PlanJson.schema(), InputFormat.JSON).stream().toList());
    }

    @Test
    void letsNoObjectHaveOtherKeys() throws IOException {
        List<JsonNode> objects = new ArrayList<>();
        objects(MAPPER.readTree(PlanJson.schema()), objects);
        assertTrue(objects.size() > 20, objects.size() + " objects");
        objects.forEach(object -> assertEquals(MAPPER.getNodeFactory().booleanNode(false), object.get("additionalProperties"), object.toString()));
    }

    private static void objects(JsonNode schema, List<JsonNode> objects) {
        if (schema.has("properties") && schema.has("type")) {
            objects.add(schema);
        }
        schema.forEach(part -> objects(part, objects));
    }

    @Test
    void aPlanOfFivePicturesIsSmall() throws IOException {
        for (Path plan : demo()) {
            assertTrue(Files.size(plan) < LARGEST, plan + " has " + Files.size(plan) + " bytes");
        }
    }

    private interface Change {
        void make(ObjectNode node, String key);
    }

    private static List<String> faults(String part, Change change) throws IOException {
        JsonNode plan = MAPPER.readTree(demo().get(0).toFile());
        ObjectNode node = (ObjectNode) plan.at(part);
        change.make(node, node.fieldNames().next());
        return PlanSchema.faults(plan.toString());
    }

    private static List<Path> demo() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("site-out"))) {
            return files.filter(file -> file.endsWith("plan.json")).sorted().toList();
        }
    }
}
