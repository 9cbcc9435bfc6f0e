package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.MonthDay;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import understorey.plan.FieldGuide;
import understorey.plan.Foliage;
import understorey.plan.Subject;
import understorey.reading.subject.SubjectCatalogue;
import understorey.yaml.tree.Csv;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.TextFile;
import understorey.yaml.value.Words;

/** The field guide of each subject against {@code reference/subjects-more.csv}. */
class FieldGuideTest {

    /** Names of countries and of parts of them in the column {@code protection}. */
    private static final Map<String, String> COUNTRIES = Map.ofEntries(Map.entry("Great Britain", "GB"), Map.entry("Belgium", "BE"),
            Map.entry("Poland", "PL"), Map.entry("Germany", "DE"), Map.entry("Finland", "FI"), Map.entry("Sweden", "SE"),
            Map.entry("Rautal", "DE"), Map.entry("North America", "US"), Map.entry("Quebec", "CA"), Map.entry("New York", "US"),
            Map.entry("Maine", "US"), Map.entry("Michigan", "US"), Map.entry("Ontario", "CA"), Map.entry("parks forbid picking", "US"),
            Map.entry("Japan", "JP"), Map.entry("Western Australia", "AU"), Map.entry("NSW", "AU"), Map.entry("ACT", "AU"),
            Map.entry("Argentina", "AR"), Map.entry("Northern Cape", "ZA"), Map.entry("SANBI", "ZA"), Map.entry("Eswatini", "SZ"),
            Map.entry("Conservation Act 1987", "NZ"));

    private final SubjectCatalogue catalogue = SubjectCatalogue.builtIn();

    @TestFactory
    Stream<DynamicTest> saysWhatTheReferenceSays() throws IOException {
        String text = Files.readString(Path.of("src", "test", "resources", "reference", "subjects-more.csv"));
        return Csv.rows(TextFile.decode(text.substring(text.indexOf('\n') + 1).getBytes(java.nio.charset.StandardCharsets.UTF_8),
                "subjects-more.csv")).stream().map(row -> DynamicTest.dynamicTest(cell(row, "key"), () -> compare(row)));
    }

    private void compare(Node.Mapping row) {
        FieldGuide guide = catalogue.find(cell(row, "key")).guide();
        FieldGuide.Peak peak = guide.peak();
        assertEquals(List.of(MonthDay.parse("--" + cell(row, "peak")), cell(row, "peak_place"), number(row, "peak_latitude"),
                        number(row, "peak_elevation_m"), cell(row, "peak_mark"), number(row, "peak_sd_days"), cell(row, "peak_sd_mark")),
                List.of(peak.day(), peak.place(), peak.latitudeDeg(), peak.elevationM(), peak.mark(), peak.sdDays(), peak.sdMark()));
        FieldGuide.Course course = guide.course();
        assertEquals(List.of(number(row, "course_first_to_peak_days"), number(row, "course_peak_to_over_days"), cell(row, "course_mark")),
                List.of((double) course.firstToPeakDays(), (double) course.peakToOverDays(), course.mark()));
        assertEquals(cell(row, "closes").equals("none") ? Set.of() : Set.of(cell(row, "closes").split(" \\+ ")),
                guide.closing().triggers().stream().map(Words::of).collect(Collectors.toSet()));
        assertEquals(cell(row, "closes_mark"), guide.closing().mark());
        assertEquals(cell(row, "petal_srgb"), guide.petals().srgb());
        assertEquals(cell(row, "petal_srgb_alt"), guide.petals().others().stream()
                .map(tint -> tint.srgb() + (tint.where() == null ? "" : " (" + tint.where() + ")")).collect(Collectors.joining(", ")));
        assertEquals(cell(row, "leaf_srgb"), guide.leaves() == null ? "" : guide.leaves().srgb());
        assertEquals(cell(row, "flower_form"), Words.of(guide.form()));
        assertEquals(cell(row, "flower_form_second"), guide.second() == null ? "" : Words.of(guide.second()));
        assertEquals(List.of(cell(row, "habitat"), cell(row, "trees_above"), cell(row, "habitat_mark")),
                List.of(guide.setting().grounds(), guide.setting().treesAbove(), guide.setting().mark()));
        assertEquals(List.of(cell(row, "trampling_mark"), cell(row, "trampling_source")),
                List.of(guide.trampling().mark(), guide.trampling().source()));
        countries(cell(row, "protection"), guide.laws());
    }

    /** No country's law is lost or added. */
    private static void countries(String protection, List<FieldGuide.Law> laws) {
        Set<String> expected = COUNTRIES.entrySet().stream().filter(name -> protection.contains(name.getKey()))
                .map(Map.Entry::getValue).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(expected, laws.stream().map(FieldGuide.Law::country).filter(Objects::nonNull)
                .collect(Collectors.toCollection(TreeSet::new)), protection);
        assertTrue(!laws.isEmpty(), protection);
    }

    @Test
    void separatesLawByCountry() {
        List<FieldGuide.Law> laws = catalogue.find("snowdrop").guide().laws();
        assertEquals(List.of("It is an offence to uproot any wild plant without the owner’s authority."),
                laws.stream().filter(law -> "GB".equals(law.country())).map(law -> law.rule().text()).toList());
        assertTrue(laws.stream().anyMatch(law -> law.country() == null && law.rule().source().contains("CITES Appendix II")));
    }

    /** Temperatures in {@code closes_threshold}: snowdrop 10, katakuri 10, Namaqualand daisy 18; bloodroot 8 is from memory. */
    @Test
    void givesTheTemperatureFromWhichFlowersOpen() {
        assertEquals(Map.of("snowdrop", 10.0, "katakuri", 10.0, "namaqualand-daisy", 18.0, "bloodroot", 8.0),
                catalogue.all().stream().filter(subject -> subject.guide().closing().opensFromC() != null)
                        .collect(Collectors.toMap(Subject::key, subject -> subject.guide().closing().opensFromC())));
    }

    /** The typed stages follow the words beside them. */
    @Test
    void givesTheStageOfTheLeavesAtFlowering() {
        FieldGuide.Setting anemone = catalogue.find("wood-anemone").guide().setting();
        assertEquals("bare canopy to bud-break", anemone.leafStage());
        assertEquals(List.of(Foliage.Stage.LEAFLESS, Foliage.Stage.BUD_BURST), List.of(anemone.leavesFrom(), anemone.leavesTo()));
        assertNull(catalogue.find("heather").guide().setting().trees());
        for (Subject subject : catalogue.all()) {
            FieldGuide.Setting setting = subject.guide().setting();
            assertTrue(!setting.leafStage().equals("bare canopy") || setting.leavesTo() == Foliage.Stage.LEAFLESS, subject.key());
            assertTrue(!setting.leafStage().startsWith("open") || setting.ground() == FieldGuide.Ground.OPEN, subject.key());
            assertTrue(!setting.grounds().startsWith("woodland floor") || setting.ground() == FieldGuide.Ground.WOODLAND, subject.key());
        }
    }

    private static String cell(Node.Mapping row, String column) {
        Node.Entry cell = row.entries().get(column);
        return cell == null ? "" : ((Node.Scalar) cell.value()).text();
    }

    private static double number(Node.Mapping row, String column) {
        return Double.parseDouble(cell(row, column));
    }
}
