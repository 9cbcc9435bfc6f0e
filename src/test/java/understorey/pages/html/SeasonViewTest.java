package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.advice.Advice;
import understorey.advice.DayAdvice;
import understorey.brief.Brief;
import understorey.pages.Briefs;
import understorey.pages.Trips;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.plan.Trip;
import understorey.season.RankedDay;

class SeasonViewTest {

    private static final Brief WEEKEND = Trips.brief(trip());

    private static Trip trip() {
        return Briefs.demo().trips().stream().filter(trip -> trip.slug().equals("a-weekend-for-the-anemones")).findFirst()
                .orElseThrow();
    }

    /** "19 days after the likeliest day": both dates are on the page, and the days between them are counted by hand. */
    @Test
    void countsDaysFromTheDateThatItCallsTheLikeliest() {
        SeasonView view = SeasonView.of(WEEKEND, Sentences.builtIn());
        String full = view.windows().get(0).rows().get(1).text();
        int counted = 0;
        for (RankedDay day : WEEKEND.season().ranking().days()) {
            for (Advice reason : day.reasons()) {
                double days = reason instanceof DayAdvice.DayTooEarly early ? early.days()
                        : reason instanceof DayAdvice.DayTooLate late ? -late.days() : 0;
                if (days != 0) {
                    LocalDate likeliest = day.date().plusDays((long) days);
                    assertTrue(full.endsWith("; highest chance on " + Dates.dayMonth(likeliest)), full + " and " + likeliest);
                    counted++;
                }
            }
        }
        assertTrue(counted > 5);
    }

    /** Chances are written alike in the calendar and in sentences, and no day without flowers is among the best. */
    @Test
    void namesNoDayWithoutFlowersAmongTheBest() {
        SeasonView view = SeasonView.of(WEEKEND, Sentences.builtIn());
        List<List<String>> cells = view.calendar().lines().stream().flatMap(week -> week.cells().stream().skip(1))
                .map(cell -> List.of(cell.text().split("\n"))).toList();
        assertTrue(cells.stream().anyMatch(cell -> cell.contains("<1\u00a0%")));
        assertFalse(cells.stream().anyMatch(cell -> cell.contains("0\u00a0%")));
        for (List<String> cell : cells) {
            assertFalse(cell.size() > 2 && cell.get(1).startsWith("<"), cell.toString());
        }
        assertEquals(Dates.day(WEEKEND.date()), view.best().get(0).date());
    }
}
