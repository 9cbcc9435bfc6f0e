package understorey.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.hour;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Samples;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;

class WeatherTest {

    private static final double NEAR = 1e-9;
    private static final List<ForecastHour> TWO = List.of(hour(null, "05:00", 1.0, 2.0, 2.0),
            hour(null, "09:00", 3.0, 8.0, 6.0));

    private static ZonedDateTime at(String time) {
        return MAY_DAY.atTime(LocalTime.parse(time)).atZone(Samples.zone());
    }

    private static Weather weather(ZonedDateTime time, List<ForecastHour> hours, SkyWord word) {
        return new Forecast(hours, time.toLocalDate(), time.getZone()).weather(time, word);
    }

    private static Weather wind(Double okta, Double windMs, Double gustMs) {
        return new Weather(okta, windMs, gustMs, null, null, null, null, null);
    }

    private static ForecastHour air(String time, Double temperatureC, Double dewPointC, Double humidity) {
        return new ForecastHour(null, LocalTime.parse(time), temperatureC, dewPointC, humidity, null, null, null, null,
                null, null, null);
    }

    private static ForecastHour rain(String time, Double rainMm, Double chance) {
        return new ForecastHour(null, LocalTime.parse(time), null, null, null, null, null, null, rainMm, chance, null,
                null);
    }

    @Test
    void runsStraightFromHourToHour() {
        assertEquals(wind(3.0, 1.5, 3.5), weather(at("06:00"), TWO, null));
        assertEquals(wind(2.0, 1.0, 2.0), weather(at("05:00"), TWO, null));
        assertEquals(wind(6.0, 3.0, 8.0), weather(at("09:00"), TWO, null));
    }

    @Test
    void holdsTheLastRowForItsHourAndSaysNothingBeyond() {
        assertEquals(wind(6.0, 3.0, 8.0), weather(at("09:59"), TWO, null));
        assertEquals(wind(null, null, null), weather(at("10:00"), TWO, null));
        assertEquals(wind(null, null, null), weather(at("04:59"), TWO, null));
        assertEquals(wind(6.0, null, null), weather(at("04:59"), TWO, SkyWord.BROKEN));
        assertEquals(wind(6.0, null, null), weather(at("10:00"), TWO, SkyWord.BROKEN));
    }

    @Test
    void takesASingleRowForOneHour() {
        List<ForecastHour> one = List.of(hour(null, "05:00", 1.0, null, 2.0));
        assertEquals(wind(8.0, null, null), weather(at("04:00"), one, SkyWord.OVERCAST));
        assertEquals(wind(2.0, 1.0, null), weather(at("05:30"), one, SkyWord.OVERCAST));
        assertEquals(wind(8.0, null, null), weather(at("16:00"), one, SkyWord.OVERCAST));
    }

    @Test
    void passesOverRowsThatDoNotSay() {
        List<ForecastHour> rows = List.of(hour(MAY_DAY.minusDays(1), "06:00", 20.0, 30.0, 8.0),
                hour(MAY_DAY, "05:00", 1.0, null, 2.0), hour(MAY_DAY, "06:00", null, 5.0, null),
                hour(MAY_DAY, "09:00", 3.0, null, 6.0), hour(MAY_DAY.plusDays(1), "06:00", 20.0, 30.0, 8.0));
        assertEquals(wind(3.0, 1.5, 5.0), weather(at("06:00"), rows, null));
    }

    @Test
    void joinsRowsOverMidnightButNotOverADateWithout() {
        List<ForecastHour> night = List.of(hour(MAY_DAY.minusDays(1), "22:00", 4.0, null, 8.0),
                hour(MAY_DAY, "02:00", 2.0, null, 4.0));
        assertEquals(wind(6.0, 3.0, null), weather(at("00:00"), night, null));
        assertEquals(wind(5.0, 2.5, null), weather(at("01:00"), night, null));
        List<ForecastHour> apart = List.of(hour(MAY_DAY.minusDays(1), "22:00", 4.0, null, 8.0),
                hour(MAY_DAY.plusDays(1), "02:00", 2.0, null, 4.0));
        assertEquals(wind(null, null, null), weather(at("12:00"), apart, null));
    }

    @Test
    void fallsBackOnTheAuthorsWord() {
        List<ForecastHour> other = List.of(hour(MAY_DAY.plusDays(1), "06:00", 20.0, 30.0, 8.0));
        assertEquals(wind(SkyWord.BROKEN.okta(), null, null), weather(at("06:00"), other, SkyWord.BROKEN));
        assertNull(weather(at("06:00"), List.of(), null).okta());
        List<ForecastHour> windOnly = List.of(hour(null, "05:00", 1.0, null, null));
        assertEquals(wind(8.0, 1.0, null), weather(at("05:10"), windOnly, SkyWord.OVERCAST));
    }

    /** Alduchov and Eskridge 1996, as in reference/dew-point.csv and reference/relative-humidity.csv. */
    @Test
    void takesDewPointAndHumidityFromOneAnother() {
        List<ForecastHour> rows = List.of(air("05:00", 10.0, null, 0.9), air("06:00", 10.0, 8.0, null));
        Weather five = weather(at("05:00"), rows, null);
        assertEquals(8.435, five.dewPointC(), 0.002);
        assertEquals(1.565, five.damp().spreadC(), 0.002);
        Weather six = weather(at("06:00"), rows, null);
        assertEquals(0.8738, six.humidity(), 0.0002);
        assertEquals(2, six.damp().spreadC(), NEAR);
        Weather between = weather(at("05:30"), rows, null);
        assertEquals((five.dewPointC() + 8) / 2, between.dewPointC(), NEAR);
        assertEquals((0.9 + six.humidity()) / 2, between.humidity(), NEAR);
    }

    @Test
    void knowsNoSpreadWhereTemperatureOrDampIsMissing() {
        assertNull(weather(at("05:00"), List.of(air("05:00", null, null, 0.9)), null).damp());
        assertNull(weather(at("05:00"), List.of(air("05:00", 10.0, null, null)), null).damp());
        assertNull(weather(at("05:00"), List.of(air("05:00", 10.0, null, 0.0)), null).damp());
        assertEquals(0, weather(at("05:00"), List.of(air("05:00", 10.0, null, 1.0)), null).damp().spreadC(), NEAR);
    }

    /** Common practice, no source: forecasts of up to six hours a row leave no dry hour between wet ones. */
    @Test
    void letsRainGoOnBetweenWetRowsCloseTogether() {
        List<ForecastHour> rows = List.of(rain("05:00", 1.5, 0.9), rain("08:00", 2.0, 0.7), rain("15:00", 1.0, 0.7));
        assertEquals(1.5, weather(at("06:30"), rows, null).rainMm());
        assertEquals(0.7, weather(at("06:30"), rows, null).rainChance());
        assertEquals(0.0, weather(at("10:00"), rows, null).rainMm());
        assertNull(weather(at("10:00"), rows, null).rainChance());
    }

    @Test
    void keepsRainToTheHourOfItsRow() {
        List<ForecastHour> rows = List.of(rain("05:00", 0.0, null), rain("08:00", 0.4, 0.6), rain("10:00", 0.0, 0.1));
        assertNull(weather(at("04:59"), rows, null).rainMm());
        assertEquals(0.0, weather(at("07:59"), rows, null).rainMm());
        assertEquals(0.4, weather(at("08:00"), rows, null).rainMm());
        assertEquals(0.6, weather(at("08:59"), rows, null).rainChance());
        assertEquals(0.0, weather(at("09:00"), rows, null).rainMm());
        assertNull(weather(at("09:00"), rows, null).rainChance());
        assertEquals(0.1, weather(at("10:30"), rows, null).rainChance());
        assertNull(weather(at("11:00"), rows, null).rainMm());
        assertNull(weather(at("05:30"), TWO, null).rainMm());
    }

    @Test
    void countsTheHourThatIsLostAndTheHourThatComesTwice() {
        LocalDate shortDay = Places.SHORT_DAY.date();
        LocalDate longDay = Places.LONG_DAY.date();
        ZoneId zone = Places.SHORT_DAY.zone();
        List<ForecastHour> rows = List.of(hour(null, "01:00", 0.0, null, null), hour(null, "05:00", 6.0, null, null));
        assertEquals(2, weather(shortDay.atTime(3, 0).atZone(zone), rows, null).windMs(), NEAR);
        ZonedDateTime again = longDay.atTime(2, 0).atZone(zone).plusHours(1);
        assertEquals(2, again.getHour());
        assertEquals(2.4, weather(again, rows, null).windMs(), NEAR);
        List<ForecastHour> lost = List.of(hour(null, "02:00", 1.0, null, null), hour(null, "02:30", 2.0, null, null),
                hour(null, "03:00", 3.0, null, null));
        for (int minute = 0; minute < 300; minute++) {
            ZonedDateTime time = shortDay.atStartOfDay(zone).plusMinutes(minute);
            assertEquals(minute >= 120 && minute < 180, weather(time, lost, null).windMs() != null, time.toString());
        }
    }

    @Test
    void saysNothingInAnEmptyForecast() {
        assertEquals(new Weather(null, null, null, null, null, null, null, null),
                weather(at("06:00"), List.of(), null));
        assertNotNull(weather(at("06:00"), List.of(), SkyWord.CLEAR).okta());
    }
}
