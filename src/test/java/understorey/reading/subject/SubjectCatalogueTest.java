package understorey.reading.subject;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.plan.Subject;
import understorey.reading.PlansReader;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.tree.Csv;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.TextFile;

class SubjectCatalogueTest {

    private final SubjectCatalogue catalogue = SubjectCatalogue.builtIn();

    @Test
    void holdsSubjectsOfBothHemispheres() {
        assertTrue(catalogue.all().stream().anyMatch(Subject::southern));
        assertFalse(catalogue.all().stream().allMatch(Subject::southern));
    }

    /** The row of Allium ursinum as the table has it, with its sources. */
    @Test
    void turnsTheColumnsIntoTheUnitsOfThePlan() {
        Subject ramsons = catalogue.find("ramsons");
        assertEquals("ramsons (wild garlic)", ramsons.name());
        assertEquals("Allium ursinum", ramsons.scientificName());
        assertEquals(4, ramsons.monthFirst());
        assertEquals(6, ramsons.monthLast());
        assertEquals("France up to 1900 m. In Britain mostly May, at 50–57° N.", ramsons.monthsReference());
        assertEquals(new Subject.Stems(30, 100, 250), ramsons.stemsPerM2());
        assertEquals(0.25, ramsons.heightLowM());
        assertEquals(0.5, ramsons.heightHighM());
        assertEquals(16, ramsons.flowerWidthMm());
        assertEquals(8, ramsons.flowersOpen());
        assertEquals(new Subject.AreaIndex(0.08848, 0.2765), ramsons.flowerAreaIndex());
        assertEquals(Subject.Reflectance.WHITE, ramsons.reflectance());
        assertEquals(new Subject.Marks("C2", "M (thick D)", "C", "C", "C2"), ramsons.marks());
    }

    @Test
    void knowsWhatIsSouthern() {
        assertTrue(catalogue.find("pink-and-white-everlasting").southern());
        assertEquals(12, catalogue.find("amancay").monthFirst());
        assertEquals(2, catalogue.find("amancay").monthLast());
        assertNull(catalogue.find("no-such-flower"));
    }

    @Test
    void leavesNoMeasureOut() {
        for (Subject subject : catalogue.all()) {
            assertNotNull(subject.reflectance(), subject.key());
            assertNotNull(subject.sources(), subject.key());
            assertTrue(subject.heightLowM() > 0 && subject.heightLowM() <= subject.heightHighM(), subject.key());
            assertTrue(subject.stemsPerM2().sparse() <= subject.stemsPerM2().typical(), subject.key());
            assertTrue(subject.stemsPerM2().typical() <= subject.stemsPerM2().thick(), subject.key());
        }
    }

    /** Stems × flowers open × area of one flower, to the table's rounding; the area of ramsons is 1.106 cm². */
    @Test
    void holdsAnAreaIndexThatFollowsFromItsOtherFigures() {
        Subject ramsons = catalogue.find("ramsons");
        assertEquals(ramsons.stemsPerM2().typical() * ramsons.flowersOpen() * 1.106e-4,
                ramsons.flowerAreaIndex().typical(), 1e-6);
    }

    @Test
    void writesEveryNoteInWholeSentencesWithoutAbbreviations() {
        for (Subject subject : catalogue.all()) {
            List<String> notes = new ArrayList<>(List.of(subject.care(), subject.monthsReference(),
                    subject.guide().trampling().text(), subject.guide().etiquette()));
            subject.guide().laws().forEach(law -> notes.add(law.rule().text()));
            if (subject.guide().closing().note() != null) {
                notes.add(subject.guide().closing().note());
            }
            for (String note : notes) {
                assertTrue(note.matches("\\p{Lu}.*\\."), note);
                assertFalse(note.matches(".*(\\b(GB|ACT|incl|subsp|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\\b"
                        + "|\\b[NESWC]{1,2} (and [NESWC] )?\\p{Lu}).*"), note);
            }
        }
    }

    private static SubjectCatalogue read(String table, List<String> faults) {
        Findings findings = TextFile.decode(table.getBytes(StandardCharsets.UTF_8), "subjects.csv");
        SubjectCatalogue read = SubjectCatalogue.read(findings);
        findings.all().forEach(finding -> faults.add(finding.plain()));
        return read;
    }

    /** First lines of the findings about a table whose row of ramsons is changed. */
    private static List<String> faults(UnaryOperator<Map<String, String>> change) throws IOException {
        List<String> faults = new ArrayList<>();
        read(withRow(row -> row.get("key").equals("ramsons") ? change.apply(row) : row), faults);
        return faults.stream().map(fault -> fault.lines().findFirst().orElse("")).toList();
    }

    private static UnaryOperator<Map<String, String>> put(String column, String text) {
        return row -> {
            row.put(column, text);
            return row;
        };
    }

    /** The place of a column on the line of ramsons, as findings begin. */
    private static String at(String column) throws IOException {
        Node.Mapping row = rows().stream().filter(cells -> text(cells, "key").equals("ramsons")).findFirst().orElseThrow();
        Pos pos = row.entries().get(column).value().pos();
        return "subjects.csv:" + pos.line() + ":" + pos.column() + ": error: ";
    }

    @Test
    void saysOnWhichLineASubjectComesTwice() throws IOException {
        int line = (int) table().lines().count() + 1;
        List<String> faults = new ArrayList<>();
        read(table() + withRow(row -> row.get("key").equals("ramsons") ? row : null).lines().skip(1)
                .reduce("", (text, next) -> text + next + "\n"), faults);
        assertTrue(faults.get(0).startsWith("subjects.csv:" + line + ":1: error: the name \"ramsons\" is already used for a subject"
                + " on line "), faults.toString());
    }

    /** Each fault is one finding at its cell, in the words of a user's own file. */
    @Test
    void saysWhatIsWrongWithACell() throws IOException {
        assertEquals(List.of(at("stems_thick_per_m2") + "'stems_thick_per_m2' must be a number, not the text \"many\""),
                faults(put("stems_thick_per_m2", "many")));
        assertEquals(List.of(at("stems_thick_per_m2") + "'stems_thick_per_m2' is below 'stems_typical_per_m2'"),
                faults(put("stems_thick_per_m2", "40")));
        assertEquals(List.of(at("month_first") + "'month_first' must be from 1 to 12, not 13"), faults(put("month_first", "13")));
        assertEquals(List.of(at("reflectance_class") + "\"whte\" is not a value of 'reflectance_class'"),
                faults(put("reflectance_class", "whte")));
        assertEquals(List.of(at("peak") + "'peak' must be a month and a day, not the text \"05-32\""), faults(put("peak", "05-32")));
        assertEquals(List.of(at("peak_mark") + "'peak_mark' must be a mark, not the text \"sure\""), faults(put("peak_mark", "sure")));
        assertEquals(List.of(at("petal_srgb") + "'petal_srgb' must be a colour, not the text \"#FFF\""), faults(put("petal_srgb", "#FFF")));
        assertEquals(List.of(at("form_second") + "\"clip\" is not a value of 'form_second'"), faults(put("form_second", "clip")));
        assertEquals(List.of(at("trees") + "in the open there are no trees"), faults(put("ground", "open    ")));
    }

    @Test
    void saysWhichCellIsBlankAndWhichColumnIsUnknown() throws IOException {
        String row = at("key");
        assertEquals(List.of(row + "'peak_place' is missing in this subject"), faults(put("peak_place", "")));
        assertEquals(List.of(row + "'leaves_to' is missing in this subject"), faults(put("leaves_to", "")));
        List<String> unknown = new ArrayList<>();
        read(table().replaceFirst(",peak_place,", ",peak_plce,"), unknown);
        assertTrue(unknown.stream().anyMatch(fault -> fault.contains("subjects.csv:1:") && fault.contains("unknown key 'peak_plce'")
                && fault.contains("did you mean 'peak_place'?")), unknown.toString());
    }

    /** A cell with laws has a line for each; the finding is on the line of the faulty one. */
    @Test
    void saysWhichLineOfTheLawsIsFaulty() throws IOException {
        String good = "GB | C | Do not dig. | an act";
        String place = at("law").replace(": error: ", "");
        int line = Integer.parseInt(place.split(":")[1]);
        assertEquals(List.of("subjects.csv:" + (line + 1) + ":1: error: there is no country code \"UK\""),
                faults(put("law", good + "\nUK | C | Do not dig. | an act")));
        assertEquals(List.of("subjects.csv:" + (line + 1) + ":1: error: this rule must be country, mark, text and source"),
                faults(put("law", good + "\nGB | Do not dig.")));
    }

    /** One more row in the table is all that a new subject needs, up to the finished plan. */
    @Test
    void plansWithASubjectThatIsOneMoreRow(@TempDir Path folder) throws IOException {
        List<String> faults = new ArrayList<>();
        String row = withRow(cells -> cells.get("key").equals("ramsons") ? put("key", "night-ramsons").andThen(put("height_low_cm", "45"))
                .apply(cells) : null).lines().skip(1).reduce("", (text, next) -> text + next + "\n");
        SubjectCatalogue more = read(table() + row, faults);
        assertEquals(List.of(), faults);
        Files.writeString(folder.resolve("trip.yaml"), """
                trip: A night
                site: {site: A wood, latitude: 52.3, longitude: -3.5, time_zone: Europe/London}
                date: 2027-05-08
                gear: phone
                shots: [{name: One, subject: night-ramsons}]
                """);
        assertEquals(List.of(), PlansReader.read(folder, more).findings());
        Brief brief = Planner.brief(PlansReader.read(folder, more).trips().get(0));
        Subject subject = brief.trip().shots().get(0).subject();
        assertEquals(0.45, subject.heightLowM());
        assertFalse(brief.shots().isEmpty());
        assertEquals(1, PlansReader.read(folder).errors());
    }

    @Test
    void findsNoFaultInItsOwnTable() throws IOException {
        assertEquals(List.of(), faults(row -> row));
    }

    private static String table() throws IOException {
        try (InputStream in = SubjectCatalogue.class.getResourceAsStream("/understorey/reading/subjects.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<Node.Mapping> rows() throws IOException {
        return Csv.rows(TextFile.decode(table().getBytes(StandardCharsets.UTF_8), "subjects.csv"));
    }

    private static String text(Node.Mapping row, String column) {
        Node.Entry cell = row.entries().get(column);
        return cell == null ? "" : ((Node.Scalar) cell.value()).text();
    }

    /** The table with each row changed; a row is left out where the change gives null. */
    private static String withRow(UnaryOperator<Map<String, String>> change) throws IOException {
        List<String> columns = List.of(table().lines().findFirst().orElseThrow().split(","));
        StringBuilder out = new StringBuilder(String.join(",", columns)).append('\n');
        for (Node.Mapping row : rows()) {
            Map<String, String> cells = new LinkedHashMap<>();
            columns.forEach(column -> cells.put(column, text(row, column)));
            Map<String, String> changed = change.apply(cells);
            if (changed != null) {
                out.append(changed.values().stream().map(cell -> cell.matches("(?s).*[,\"\n].*")
                        ? '"' + cell.replace("\"", "\"\"") + '"' : cell).collect(Collectors.joining(","))).append('\n');
            }
        }
        return out.toString();
    }
}
