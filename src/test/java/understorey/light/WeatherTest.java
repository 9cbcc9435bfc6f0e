package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.hour;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;

class WeatherTest {

    private static final List<ForecastHour> TWO = List.of(hour(null, "05:00", 1.0, 2.0, 2.0),
            hour(null, "09:00", 3.0, 8.0, 6.0));

    private static ZonedDateTime at(String time) {
        return MAY_DAY.atTime(LocalTime.parse(time)).atZone(Samples.zone());
    }

    @Test
    void runsStraightFromHourToHour() {
        assertEquals(new Weather(3.0, 1.5, 3.5), Weather.at(at("06:00"), TWO, null));
        assertEquals(new Weather(2.0, 1.0, 2.0), Weather.at(at("05:00"), TWO, null));
        assertEquals(new Weather(6.0, 3.0, 8.0), Weather.at(at("09:00"), TWO, null));
    }

    @Test
    void keepsTheFirstAndTheLastHourBeyondThem() {
        assertEquals(new Weather(2.0, 1.0, 2.0), Weather.at(at("03:00"), TWO, null));
        assertEquals(new Weather(6.0, 3.0, 8.0), Weather.at(at("20:00"), TWO, null));
    }

    @Test
    void takesOneHourForTheWholeDay() {
        List<ForecastHour> one = List.of(hour(null, "05:00", 1.0, null, 2.0));
        assertEquals(new Weather(2.0, 1.0, null), Weather.at(at("04:00"), one, SkyWord.OVERCAST));
        assertEquals(new Weather(2.0, 1.0, null), Weather.at(at("16:00"), one, SkyWord.OVERCAST));
    }

    @Test
    void passesOverHoursOfAnotherDateAndHoursThatDoNotSay() {
        List<ForecastHour> rows = List.of(hour(MAY_DAY.minusDays(1), "06:00", 20.0, 30.0, 8.0),
                hour(MAY_DAY, "05:00", 1.0, null, 2.0), hour(MAY_DAY, "06:00", null, 5.0, null),
                hour(MAY_DAY, "09:00", 3.0, null, 6.0), hour(MAY_DAY.plusDays(1), "06:00", 20.0, 30.0, 8.0));
        assertEquals(new Weather(3.0, 1.5, 5.0), Weather.at(at("06:00"), rows, null));
    }

    @Test
    void fallsBackOnTheAuthorsWord() {
        List<ForecastHour> other = List.of(hour(MAY_DAY.plusDays(1), "06:00", 20.0, 30.0, 8.0));
        assertEquals(new Weather(SkyWord.BROKEN.okta(), null, null), Weather.at(at("06:00"), other, SkyWord.BROKEN));
        assertNull(Weather.at(at("06:00"), List.of(), null).okta());
        List<ForecastHour> windOnly = List.of(hour(null, "05:00", 1.0, null, null));
        assertEquals(new Weather(8.0, 1.0, null), Weather.at(at("06:00"), windOnly, SkyWord.OVERCAST));
    }
}
