package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.advice.Advice;
import understorey.advice.WeatherAdvice;
import understorey.plan.ForecastHour;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.weather.Drops;
import understorey.weather.Mist;

/** What a reader is told of mist and drops. */
class WeatherSentencesTest {

    private static final Places PLACE = Places.MID_LATITUDE;

    private static ForecastHour row(String time, Double airC, Double dewPointC, Double windMs, Double okta, Double rainMm) {
        return new ForecastHour(null, LocalTime.parse(time), airC, dewPointC, null, windMs, null, okta, rainMm,
                rainMm == null ? null : 0.4, null, null);
    }

    private static List<List<ForecastHour>> forecasts() {
        ForecastHour aloft = new ForecastHour(null, LocalTime.of(5, 0), 10.0, 9.0, null, null, null, null, null, null, 8.0,
                5.0);
        return List.of(List.of(), List.of(aloft),
                List.of(row("05:00", 6.0, 5.5, 0.5, 1.0, 0.0), row("08:00", 12.0, 8.0, 2.0, 1.0, 0.0),
                        row("15:00", 15.0, 6.0, 2.0, 1.0, 0.0)),
                List.of(row("06:00", 9.0, 3.0, 4.0, 7.5, 0.6), row("15:00", 9.0, 3.0, 4.0, 7.0, 0.0)),
                List.of(row("05:00", 9.0, 3.0, null, null, 0.6), row("15:00", 9.0, 3.0, null, null, 0.0)),
                List.of(row("03:00", null, null, null, null, 0.6), row("10:00", null, null, null, null, 0.6)),
                List.of(row("05:00", null, null, null, null, 0.0)));
    }

    private static List<Advice> reasons() {
        SunDay sun = SunDay.of(PLACE.position(), Interval.day(PLACE.date(), PLACE.zone()));
        Places night = Places.POLAR_NIGHT;
        List<Advice> reasons = new ArrayList<>(
                Mist.atDawn(SunDay.of(night.position(), Interval.day(night.date(), night.zone())), null, List.of(), null).reasons());
        for (List<ForecastHour> forecast : forecasts()) {
            reasons.addAll(Mist.atDawn(sun, null, forecast, null).reasons());
            reasons.addAll(Mist.atDawn(sun, sun.sunrise().plusHours(1), forecast, null).reasons());
            reasons.addAll(Drops.of(Interval.day(PLACE.date(), PLACE.zone()), forecast, null).reasons());
        }
        reasons.add(new WeatherAdvice.InMist(0.5, 1, PLACE.date().atTime(7, 0).atZone(PLACE.zone())));
        reasons.add(new WeatherAdvice.WithoutMist());
        return reasons;
    }

    @Test
    void tellsEveryReasonInAWholeSentence() throws IOException {
        Sentences sentences = Sentences.builtIn();
        Set<Class<?>> told = new HashSet<>();
        for (Advice reason : reasons()) {
            told.add(reason.getClass());
            String sentence = sentences.of(reason);
            assertFalse(sentence.contains("{") || sentence.contains("null") || sentence.contains("NaN"), sentence);
        }
        assertEquals(new HashSet<>(AdviceSentencesTest.records(WeatherAdvice.class)), told);
    }

    @Test
    void showsFiguresWithTheirUnitsAndTheWindByItsForce() throws IOException {
        Sentences sentences = Sentences.builtIn();
        SunDay sun = SunDay.of(PLACE.position(), Interval.day(PLACE.date(), PLACE.zone()));
        List<ForecastHour> still = List.of(row("01:00", 7.0, 5.0, 0.5, 1.0, null), row("05:00", 6.0, 5.5, 0.5, 1.0, null));
        List<String> told = Mist.atDawn(sun, null, still, null).reasons().stream()
                .map(reason -> sentences.of(reason).replace('\u00a0', ' ')).toList();
        assertEquals("Before sunrise the air cools to within 0.5 °C of its dew point; mist needs 2.8 °C or less.", told.get(0));
        assertEquals("The wind before sunrise (0.5 m/s, light air) is light enough for mist to stay.", told.get(1));
        assertEquals("The sky before sunrise (1 okta) lets the ground cool.", told.get(2));
    }
}
