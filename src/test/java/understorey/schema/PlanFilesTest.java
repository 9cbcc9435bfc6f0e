package understorey.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import understorey.Forgiven;
import understorey.RandomPlan;
import understorey.pages.FormatPage;
import understorey.pages.json.Json;
import understorey.plan.Canopy;
import understorey.plan.Display;
import understorey.plan.Filter;
import understorey.plan.Foliage;
import understorey.plan.LightWish;
import understorey.plan.Orientation;
import understorey.plan.Role;
import understorey.plan.Season;
import understorey.plan.Share;
import understorey.plan.SkyWord;
import understorey.plan.Subject;
import understorey.plan.Support;
import understorey.plan.Viewpoint;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.yaml.value.Dimension;
import understorey.yaml.finding.Finding;
import understorey.yaml.value.Words;

/** Schema and readers held to each other; the schema read by an independent validator. */
class PlanFilesTest {

    private static final Path BROKEN = Path.of("src", "test", "resources", "broken");
    /** Files with faults that only the reader can see, one a line, and why. */
    private static final Path READER_ONLY = Path.of("src", "test", "resources", "reader-only.txt");

    private static final ObjectMapper YAML = new ObjectMapper(
            YAMLFactory.builder().enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS).build())
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
    private static final PlanFiles SOURCE = PlanFiles.builtIn();
    private static final Map<PlanFiles.Kind, JsonSchema> SCHEMAS = new EnumMap<>(PlanFiles.Kind.class);

    static {
        for (PlanFiles.Kind kind : PlanFiles.Kind.values()) {
            SCHEMAS.put(kind, JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(Json.document(SOURCE.schema(kind))));
        }
    }

    /** What the schema refuses in a file; a file that is no YAML is refused as it is. */
    private static List<String> faults(Path file) throws IOException {
        String folder = file.getParent().getFileName().toString();
        PlanFiles.Kind kind = folder.equals("sites") ? PlanFiles.Kind.SITE : folder.equals("gear") ? PlanFiles.Kind.BAG : PlanFiles.Kind.TRIP;
        try {
            String json = YAML.readTree(Files.readAllBytes(file)).toString();
            return SCHEMAS.get(kind).validate(json, InputFormat.JSON).stream().map(ValidationMessage::toString).toList();
        } catch (JsonProcessingException fault) {
            return List.of(String.valueOf(fault.getMessage()));
        }
    }

    private static List<Path> yaml(Path plans) throws IOException {
        try (Stream<Path> files = Files.walk(plans)) {
            return files.filter(file -> file.toString().endsWith(".yaml") && Files.isRegularFile(file)).sorted().toList();
        }
    }

    @TestFactory
    List<DynamicTest> acceptsWhatTheReadersAccept() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (String plans : List.of("plans", "src/test/resources/every-key/plans")) {
            for (Path file : yaml(Path.of(plans))) {
                tests.add(DynamicTest.dynamicTest(file.toString(), () -> assertEquals(List.of(), faults(file))));
            }
        }
        assertTrue(tests.size() > 10);
        return tests;
    }

    @Test
    void refusesTheFilesThatTheReadersRefuse() throws IOException {
        TreeSet<String> missed = new TreeSet<>();
        TreeSet<String> tooStrict = new TreeSet<>();
        int agreed = 0;
        for (Path file : yaml(BROKEN)) {
            Path plans = file.getParent().endsWith("plans") ? file.getParent() : file.getParent().getParent();
            String shown = "plans/" + plans.relativize(file).toString().replace('\\', '/');
            Plans read = PlansReader.read(plans);
            boolean refused = read.findings().stream().anyMatch(finding -> finding.level() == Finding.Level.ERROR && finding.file().equals(shown));
            boolean faulty = !faults(file).isEmpty();
            String name = BROKEN.relativize(file).toString().replace('\\', '/');
            if (refused && !faulty) {
                missed.add(name);
            } else if (faulty && !refused) {
                tooStrict.add(name);
            } else {
                agreed++;
            }
        }
        assertEquals(List.of(), List.copyOf(tooStrict), "refused by the schema alone");
        List<String> known = Files.readAllLines(READER_ONLY, StandardCharsets.UTF_8).stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#")).map(line -> line.split(": ", 2)[0]).toList();
        assertEquals(known, List.copyOf(missed), "refused by the readers alone");
        assertTrue(agreed > 60, agreed + " files agree");
    }

    /** Odd trips with a site and a bag in them: no reader refuses their keys and words, and no block takes a key that it does not know. */
    @Test
    void takesWhatRandomPlansHoldAndNothingBeside() throws IOException {
        int blocks = 0;
        for (long seed = 1; seed <= 150; seed++) {
            JsonNode plan = YAML.readTree(RandomPlan.yaml(seed));
            List<String> faults = faults(plan);
            assertEquals(List.of(), faults, RandomPlan.yaml(seed));
            for (ObjectNode block : blocks(plan)) {
                block.put("no_such_key", "x");
                assertFalse(faults(plan).isEmpty(), () -> "takes a key that it does not know: " + block);
                block.remove("no_such_key");
                blocks++;
            }
        }
        assertTrue(blocks > 1000, blocks + " blocks");
    }

    /** An editor and the readers forgive the same. */
    @TestFactory
    List<DynamicTest> forgivesWhatTheReadersForgive(@TempDir Path folder) {
        List<DynamicTest> tests = new ArrayList<>();
        Forgiven.SAME.forEach(form -> tests.add(DynamicTest.dynamicTest(form.written(), () ->
                assertEquals(List.of(), faults(Forgiven.write(folder.resolve("plans"), form.slot(), form.written()).resolve(form.file()))))));
        Forgiven.NEAR.forEach(form -> tests.add(DynamicTest.dynamicTest("not " + form.written(), () ->
                assertNotEquals(List.of(), faults(Forgiven.write(folder.resolve("plans"), form.slot(), form.written()).resolve(form.file()))))));
        return tests;
    }

    private static List<String> faults(JsonNode trip) {
        return SCHEMAS.get(PlanFiles.Kind.TRIP).validate(trip).stream().map(ValidationMessage::toString).toList();
    }

    private static List<ObjectNode> blocks(JsonNode tree) {
        List<ObjectNode> blocks = new ArrayList<>();
        if (tree instanceof ObjectNode block) {
            blocks.add(block);
        }
        tree.forEach(child -> blocks.addAll(blocks(child)));
        return blocks;
    }

    @TestFactory
    List<DynamicTest> hasTheWordsOfTheReaders() {
        Map<String, List<? extends Enum<?>>> words = Map.ofEntries(
                Map.entry("role", List.of(Role.values())), Map.entry("unit_system", List.of(Display.UnitSystem.values())), Map.entry("light", List.of(LightWish.values())),
                Map.entry("sky", List.of(SkyWord.values())), Map.entry("stance", List.of(Viewpoint.Stance.values())),
                Map.entry("orientation", List.of(Orientation.values())), Map.entry("audience", List.of(Share.Audience.values())),
                Map.entry("precision", List.of(Share.Precision.values())), Map.entry("trees", List.of(Canopy.Trees.values())),
                Map.entry("leaf_stage", List.of(Foliage.Stage.values())), Map.entry("flower_stage", List.of(Season.Stage.values())),
                Map.entry("reflectance", List.of(Subject.Reflectance.values())), Map.entry("support_kind", List.of(Support.Kind.values())),
                Map.entry("filter_kind", List.of(Filter.Kind.values())));
        return words.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () ->
                assertEquals(entry.getValue().stream().map(word -> Words.of(word)).toList(), SOURCE.words(entry.getKey())))).toList();
    }

    @TestFactory
    List<DynamicTest> hasTheUnitsOfTheReaders() {
        Map<String, Dimension> units = Map.ofEntries(Map.entry("length", Dimension.LENGTH), Map.entry("small_length", Dimension.SMALL_LENGTH),
                Map.entry("rain", Dimension.RAIN), Map.entry("mass", Dimension.MASS), Map.entry("temperature", Dimension.TEMPERATURE),
                Map.entry("speed", Dimension.SPEED), Map.entry("share_of", Dimension.SHARE), Map.entry("stops", Dimension.STOPS),
                Map.entry("pixels", Dimension.PIXELS), Map.entry("file_size", Dimension.FILE_SIZE), Map.entry("card_size", Dimension.CARD_SIZE),
                Map.entry("duration", Dimension.DURATION), Map.entry("shutter", Dimension.SHUTTER), Map.entry("frames", Dimension.FRAMES),
                Map.entry("dioptres", Dimension.DIOPTRES), Map.entry("density", Dimension.DENSITY), Map.entry("trees_per_area", Dimension.TREES));
        assertEquals(Dimension.values().length, units.size());
        return units.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
            List<String> named = SOURCE.units(entry.getKey());
            named.forEach(unit -> assertNotNull(entry.getValue().unit(unit), unit));
            assertTrue(named.containsAll(entry.getValue().unitNames()), named + " against " + entry.getValue().unitNames());
        })).toList();
    }

    /** Each example stands where its key is, and both accept it. */
    @Test
    void showsExamplesThatHold() {
        List<String> without = new ArrayList<>();
        for (Reference.Block block : SOURCE.reference().blocks()) {
            for (Reference.Key key : block.keys()) {
                if (key.example() == null || key.takes().isEmpty()) {
                    without.add(block.title() + ": " + key.name());
                }
            }
        }
        assertEquals(List.of(), without);
        assertEquals("24-70 mm", SOURCE.example("lens", "focal"));
        assertEquals("6.9 mm", SOURCE.example("built-in lens", "focal"));
        assertEquals("Day bag", SOURCE.example("bag", "gear"));
    }

    @Test
    void isWhatTheReferenceInTheDocsSays() throws IOException {
        Path docs = Path.of("src", "docs", "format.md");
        String made = FormatPage.markdown(SOURCE.reference());
        if ("write".equals(System.getProperty("expectations"))) {
            Files.writeString(docs, made);
        }
        assertEquals(Files.readString(docs, StandardCharsets.UTF_8), made);
        assertFalse(made.isBlank());
    }
}
