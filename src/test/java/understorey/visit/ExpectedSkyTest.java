package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.hour;
import static understorey.Samples.picture;
import static understorey.Samples.trip;
import static understorey.Samples.wood;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.plan.ForecastHour;

class ExpectedSkyTest {

    private static ExpectedSky sky(ForecastHour... hours) {
        return new ExpectedSky(trip(wood(), MAY_DAY, "06:00", "16:00", List.of(hours), picture("a").shot()));
    }

    private static ZonedDateTime at(String time) {
        return MAY_DAY.atTime(LocalTime.parse(time)).atZone(wood().zone());
    }

    @Test
    void blowsOnBeyondTheRowsOfTheForecast() {
        ExpectedSky sky = sky(hour(MAY_DAY, "08:00", 2.0, 4.0, 3.0), hour(MAY_DAY, "11:00", 9.0, 19.0, 8.0));
        assertNull(sky.weather(at("14:30")).windMs(), "the last row holds for its hour");
        assertEquals(9.0, sky.nearestWind(at("14:30")).windMs());
        assertEquals(19.0, sky.nearestWind(at("12:10")).gustMs());
        assertEquals(2.0, sky.nearestWind(at("06:00")).windMs());
        assertEquals(sky.weather(at("09:30")), sky.nearestWind(at("09:30")), "between rows nothing changes");
    }

    @Test
    void knowsNoWindWhereNoRowTellsOne() {
        assertNull(sky(hour(MAY_DAY, "08:00", null, null, 3.0)).nearestWind(at("09:00")).windMs());
        assertNull(sky().nearestWind(at("09:00")).windMs());
    }
}
