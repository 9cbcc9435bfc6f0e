package understorey.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.plan.Role;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Source;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;

class ScalarsTest {

    private final Findings findings = new Findings(new Source("a.yaml", ""));
    private final Scalars scalars = new Scalars(findings);

    private static Node text(String text) {
        return new Node.Scalar(text, false, new Pos(1, 1, 1));
    }

    private String said() {
        return findings.all().iterator().next().text();
    }

    @ParameterizedTest
    @CsvSource({"05:00, 5, 0", "00:00, 0, 0", "23:59, 23, 59"})
    void readsClockTimes(String written, int hour, int minute) {
        assertEquals(LocalTime.of(hour, minute), scalars.clock(text(written), "'arrive'"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"24:00", "05:60", "5:00", "0500", "05:00:00", "5 am", "-1:00", "0x:00"})
    void refusesOtherClockTimes(String written) {
        assertNull(scalars.clock(text(written), "'arrive'"));
        assertEquals(1, findings.errors());
    }

    @Test
    void readsTheLeapDayOfLeapYearsOnly() {
        assertEquals(LocalDate.of(2028, 2, 29), scalars.date(text("2028-02-29"), "'date'"));
        assertNull(scalars.date(text("2027-02-29"), "'date'"));
        assertEquals("there is no day 2027-02-29", said());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-5-8", "08.05.2027", "20270508", "2027-05", "2027-13-01", "1899-12-31", "2101-01-01",
        "2027-00-10", "2027/05/08"})
    void refusesOtherDates(String written) {
        assertNull(scalars.date(text(written), "'date'"));
        assertEquals(1, findings.errors());
    }

    @ParameterizedTest
    @CsvSource({"yes, true", "no, false", "true, true", "false, false", "Yes, true"})
    void readsYesAndNo(String written, boolean meant) {
        assertEquals(meant, scalars.yesNo(text(written), "'polariser'"));
    }

    @Test
    void refusesOtherAnswers() {
        assertNull(scalars.yesNo(text("on"), "'polariser'"));
        assertEquals("'polariser' must be yes or no, not the text \"on\"", said());
    }

    @Test
    void holdsNumbersToTheirLimits() {
        assertEquals(-90.0, scalars.number(text("-90"), "'latitude'", -90, 90));
        assertNull(scalars.number(text("90.001"), "'latitude'", -90, 90));
        assertEquals("'latitude' must be from -90 to 90, not 90.001", said());
    }

    @Test
    void refusesPartsOfWholeNumbers() {
        assertEquals(3, scalars.whole(text("3"), "'priority'", 1, 3));
        assertNull(scalars.whole(text("2.5"), "'priority'", 1, 3));
    }

    @Test
    void listsTheWordsWhenNoneIsNear() {
        assertEquals(Role.DETAIL, scalars.word(text("detail"), "'role'", Role.values()));
        assertNull(scalars.word(text("hero"), "'role'", Role.values()));
        assertEquals("use one of: approach, closing, detail, extra, opening", findings.all().iterator().next().help());
    }

    @Test
    void passesOverWhatIsAbsent() {
        assertNull(scalars.text(null, "'notes'"));
        assertNull(scalars.quantity(null, "'closest'", Dimension.LENGTH, 0, 1));
        assertNull(scalars.bearing(null, "'facing'"));
        assertTrue(findings.all().isEmpty());
    }

    @Test
    void namesWhatStandsWhereAValueIsDue() {
        assertNull(scalars.text(new Node.Seq(java.util.List.of(), new Pos(1, 1, 2)), "'name'"));
        assertEquals("'name' must be text, not a list", said());
    }
}
