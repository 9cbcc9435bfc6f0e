package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.kinds;
import static understorey.Samples.picture;
import static understorey.Samples.the;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.SpoilerAdvice;
import understorey.advice.TripAdvice;
import understorey.reading.subject.SubjectCatalogue;
import understorey.season.FloweringWindow;

/** The flowers of the catalogue in an English wood on a day that may be early, right or late. */
class BetterDaysTest {

    private static Brief brief(String subject, LocalDate date) {
        return Planner.brief(Samples.trip(Samples.wood(), date, "09:00", "12:00", List.of(),
                picture("carpet").of(SubjectCatalogue.builtIn().find(subject)).shot()));
    }

    /** Full flower is about 1 May for bluebell and mid June for foxglove in lowland England (subjects-more.csv). */
    @ParameterizedTest
    @CsvSource({"bluebell, 2027-05-29, 2027-05-01", "bluebell, 2027-03-30, 2027-05-01", "foxglove, 2027-08-01, 2027-06-15"})
    void areProposedForAPoorDay(String subject, LocalDate poor, LocalDate full) {
        Brief brief = brief(subject, poor);
        TripAdvice.BetterDays better = the(TripAdvice.BetterDays.class, brief.findings());
        assertTrue(better.from().minusDays(5).isBefore(full) && better.to().plusDays(5).isAfter(full), better.toString());
        FloweringWindow window = brief.season().window();
        for (LocalDate day : new LocalDate[] {better.from(), better.to()}) {
            assertTrue(window.chanceOn(day) >= 0.9 * better.most() && window.chanceOn(day) > better.chance() / 0.75, better.toString());
        }
        assertEquals(better.chance(), the(SpoilerAdvice.FlowersUnlikely.class, brief.spoilers()).chance());
    }

    /** A wood without flowers is a warning, fewer flowers than on another day a note. */
    @Test
    void areAWarningOnlyWhereFlowersAreHardlyToBeExpected() {
        TripAdvice.BetterDays late = the(TripAdvice.BetterDays.class, brief("bluebell", LocalDate.of(2027, 6, 20)).findings());
        TripAdvice.BetterDays early = the(TripAdvice.BetterDays.class, brief("bluebell", LocalDate.of(2027, 4, 15)).findings());
        assertEquals(Advice.Severity.WARNING, late.severity(), late.toString());
        assertEquals(Advice.Severity.NOTE, early.severity(), early.toString());
    }

    @Test
    void areNotProposedForADayThatIsNearlyAsGood() {
        assertFalse(kinds(brief("bluebell", LocalDate.of(2027, 5, 1)).findings()).contains(TripAdvice.BetterDays.class));
        assertFalse(kinds(brief("foxglove", LocalDate.of(2027, 6, 12)).findings()).contains(TripAdvice.BetterDays.class));
    }
}
