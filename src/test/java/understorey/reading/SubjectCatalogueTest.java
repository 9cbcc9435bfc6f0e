package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import understorey.plan.Subject;
import understorey.yaml.Findings;
import understorey.yaml.TextFile;

class SubjectCatalogueTest {

    private final SubjectCatalogue catalogue = SubjectCatalogue.builtIn();

    @Test
    void holdsThirtyThreeSubjectsOfBothHemispheres() {
        assertEquals(33, catalogue.all().size());
        assertTrue(catalogue.all().stream().filter(Subject::southern).count() >= 5);
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
            for (String note : List.of(subject.care(), subject.monthsReference())) {
                assertTrue(note.matches("\\p{Lu}.*\\."), note);
                assertFalse(note.matches(".*(\\b(GB|ACT|incl|subsp|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sep|Oct|Nov|Dec)\\b"
                        + "|\\b[NESWC]{1,2} (and [NESWC] )?\\p{Lu}).*"), note);
            }
        }
    }

    private static List<String> faults(UnaryOperator<String> spoilt) throws IOException {
        Findings findings = TextFile.decode(spoilt.apply(table()).getBytes(StandardCharsets.UTF_8), "subjects.csv");
        SubjectCatalogue.read(findings);
        List<String> faults = new ArrayList<>();
        findings.all().forEach(finding -> faults.add(finding.plain().split("\n")[0]));
        return faults;
    }

    @Test
    void saysOnWhichLineASubjectComesTwice() throws IOException {
        String[] rows = table().split("\r?\n");
        List<String> faults = faults(table -> table + rows[2] + "\n");
        assertEquals(List.of("subjects.csv:" + (rows.length + 1) + ":1: error: the subject "
                + "\"" + rows[2].split(",")[0] + "\" is given twice, first on line 3"), faults);
    }

    @Test
    void saysOnWhichLineARowIsBlank() throws IOException {
        String[] rows = table().split("\r?\n");
        String commas = rows[0].replaceAll("[^,]", "");
        assertEquals(List.of("subjects.csv:" + (rows.length + 1) + ":1: error: this row has nothing under \"key\""),
                faults(table -> table + commas + "\n"));
    }

    @Test
    void saysOnWhichLineACellIsBlankOrNoNumber() throws IOException {
        String[] rows = table().split("\r?\n");
        String key = rows[1].split(",")[0];
        List<String> faults = faults(table -> table.replaceFirst("(?m)^(" + key + ",.*?,)\\d+(,)", "$1many$2"));
        assertEquals(1, faults.size(), faults.toString());
        assertTrue(faults.get(0).matches("subjects\\.csv:2:\\d+: error: \".*\" must be a number, not \"many\""), faults.toString());
        List<String> blank = faults(table -> table.replaceFirst("(?m)^(" + key + ",.*?,)\\d+(,)", "$1$2"));
        assertTrue(blank.get(0).startsWith("subjects.csv:2:1: error: this row has nothing under "), blank.toString());
    }

    @Test
    void findsNoFaultInItsOwnTable() throws IOException {
        assertEquals(List.of(), faults(table -> table));
    }

    private static String table() throws IOException {
        try (InputStream in = SubjectCatalogue.class.getResourceAsStream("subjects.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
