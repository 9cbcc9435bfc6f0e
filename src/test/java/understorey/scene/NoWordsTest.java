package understorey.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.DataInputStream;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Sources;
import understorey.brief.Brief;
import understorey.brief.PlannedShot;
import understorey.brief.SpotLight;
import understorey.scene.chart.Charts;
import understorey.scene.chart.SkylineChart;
import understorey.scene.chart.SpotPlan;
import understorey.sky.Skyline;
import understorey.visit.GroundPlan;

/** No word that readers see comes from this room. */
class NoWordsTest {

    private static final Path CLASSES = Path.of("target/classes/understorey/scene");
    private static final Pattern LETTER = Pattern.compile("\\p{L}");
    private static final int UTF8 = 1;
    private static final int STRING = 8;

    /** A constant names looks of marks in the style, or what the compiler names in a record or an enum. */
    @Test
    void holdsNoTextButTheNamesOfLooks() throws IOException, ClassNotFoundException {
        Set<String> looks = Pattern.compile("svg \\.([a-z-]+)").matcher(Sources.read(Path.of("templates/marks.css"))).results()
                .map(match -> match.group(1)).collect(Collectors.toCollection(TreeSet::new));
        looks.add("words");
        looks.add("plants.txt");
        List<String> words = new ArrayList<>();
        int seen = 0;
        for (Path file : classes()) {
            List<String> names = names(file);
            for (String text : strings(Files.readAllBytes(file))) {
                boolean named = Arrays.stream(text.split(";")).allMatch(names::contains);
                if (LETTER.matcher(text).find() && !named && !isLook(text, looks)) {
                    words.add(file.getFileName() + ": " + text);
                }
                seen++;
            }
        }
        assertTrue(seen > 100, "only " + seen);
        assertEquals(List.of(), words);
    }

    /** Looks, apart by a space or by what the compiler puts for a variable; the end of one begins with a hyphen. */
    private static boolean isLook(String text, Set<String> looks) {
        return Arrays.stream(text.strip().split("[ \u0001]+")).allMatch(part -> looks.contains(part)
                || part.startsWith("-") && looks.stream().anyMatch(look -> look.endsWith(part)));
    }

    /** Every letter on a sheet comes from the wording, or from a name that the author wrote. */
    @Test
    void drawsNoLetterThatTheWordingDoesNotGive() {
        List<Scene> scenes = new ArrayList<>();
        for (Places place : Places.ALL) {
            Brief brief = Charts.brief(place, Charts.ragged(), 2, null, null);
            brief.places().stream().flatMap(NoWordsTest::scenes).forEach(scenes::add);
            brief.shots().stream().flatMap(NoWordsTest::scenes).forEach(scenes::add);
            scenes.addAll(brief.season().charts());
            scenes.add(SkylineChart.of(brief.day().light(), Skyline.of(List.of(), null), 35.0, place.position().latitude(), List.of(), "1"));
        }
        GroundPlan.Place one = new GroundPlan.Place("1", 0, 0);
        GroundPlan.Place two = new GroundPlan.Place("2", 300, 400);
        scenes.add(SpotPlan.of(new GroundPlan(List.of(one, two), List.of(new GroundPlan.Way(one, two, 500, 9)))));
        assertTrue(scenes.size() > 30, "only " + scenes.size());
        for (Scene scene : scenes) {
            Drawing drawing = scene.drawing(fact -> "0");
            assertEquals("00", drawing.title() + drawing.says());
            drawing.marks().stream().filter(Drawing.Text.class::isInstance).map(mark -> ((Drawing.Text) mark).text())
                    .forEach(text -> assertFalse(LETTER.matcher(text).find(), text));
        }
    }

    private static Stream<Scene> scenes(SpotLight spot) {
        return Stream.of(spot.skyline());
    }

    private static Stream<Scene> scenes(PlannedShot shot) {
        return Stream.of(shot.sketch(), shot.sideView());
    }

    private static List<Path> classes() {
        try (Stream<Path> files = Files.walk(CLASSES)) {
            return files.filter(file -> file.toString().endsWith(".class")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Of the constants of an enum and the components of a record. */
    private static List<String> names(Path file) throws ClassNotFoundException {
        String name = Path.of("target/classes").relativize(file).toString().replace(".class", "").replace(File.separatorChar, '.');
        return name.endsWith("package-info") ? List.of()
                : Arrays.stream(Class.forName(name).getDeclaredFields()).map(Field::getName).toList();
    }

    /** The string constants of a class file (Java Virtual Machine Specification, edition 17, section 4.4). */
    private static List<String> strings(byte[] file) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(file));
        in.skipNBytes(8);
        int count = in.readUnsignedShort();
        Map<Integer, String> texts = new HashMap<>();
        List<Integer> strings = new ArrayList<>();
        for (int i = 1; i < count; i++) {
            switch (in.readUnsignedByte()) {
                case UTF8 -> texts.put(i, in.readUTF());
                case STRING -> strings.add(in.readUnsignedShort());
                case 7, 16, 19, 20 -> in.skipNBytes(2);
                case 15 -> in.skipNBytes(3);
                case 5, 6 -> {
                    in.skipNBytes(8);
                    i++;
                }
                default -> in.skipNBytes(4);
            }
        }
        return strings.stream().map(texts::get).toList();
    }
}
