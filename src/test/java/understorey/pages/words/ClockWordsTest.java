package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.plan.Display;

/** Times on both clocks; from memory, NIST advises noon and midnight, since 12 am and 12 pm are read both ways. */
class ClockWordsTest {

    private static final ClockWords TWELVE = new ClockWords(Display.Clock.HOURS_12);
    private static final ClockWords TWENTY_FOUR = new ClockWords(Display.Clock.HOURS_24);

    @ParameterizedTest
    @CsvSource({"00:00, midnight", "00:01, 12:01 am", "05:20, 5:20 am", "09:05, 9:05 am", "11:59, 11:59 am", "12:00, noon", "12:01, 12:01 pm",
        "13:00, 1:00 pm", "23:59, 11:59 pm"})
    void saysEachTimeOnTheClock(String time, String words) {
        assertEquals(words, spaced(TWELVE.of(LocalTime.parse(time))));
        assertEquals(words, spaced(TWELVE.of(at(time))));
        assertEquals(time, TWENTY_FOUR.of(at(time)));
    }

    @ParameterizedTest
    @CsvSource({"05:20, 06:10, 5:20–6:10 am", "17:20, 18:10, 5:20–6:10 pm", "11:30, 13:10, 11:30 am–1:10 pm", "11:30, 12:00, 11:30 am–noon",
        "12:00, 13:10, noon–1:10 pm", "12:05, 12:50, 12:05–12:50 pm", "23:30, 00:20, 11:30 pm–12:20 am", "06:00, 05:00, 6:00 am–5:00 am",
        "00:10, 01:00, 12:10–1:00 am"})
    void saysTheHalfOfTheDayOnceWhereItIsTheSame(String from, String to, String words) {
        assertEquals(words, spaced(TWELVE.span(at(from), at(to))));
        assertEquals(from + "–" + to, TWENTY_FOUR.span(at(from), at(to)));
    }

    @ParameterizedTest
    @CsvSource({"00:00, midnight, 12", "05:00, 5 am, 5", "12:00, noon, 12", "13:00, 1 pm, 1"})
    void keepsTheHoursOfAnAxisShort(String time, String words, String figure) {
        assertEquals(words, spaced(TWELVE.hour(at(time))));
        assertEquals(figure, TWELVE.hourFigure(at(time)));
        assertEquals(time, TWENTY_FOUR.hour(at(time)));
    }

    private static ZonedDateTime at(String time) {
        return ZonedDateTime.parse("2027-05-08T" + time + ":00+01:00");
    }

    private static String spaced(String words) {
        return words.replace('\u00a0', ' ');
    }
}
