package understorey.weather;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.weather.Air.at;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import understorey.Places;
import understorey.plan.ForecastHour;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/** What no mist and no drops may do, whatever the forecast. */
class WeatherPropertiesTest {

    private static final ZoneId ZONE = Places.MID_LATITUDE.zone();
    private static final SunDay SUN = SunDay.of(Places.MID_LATITUDE.position(), Interval.day(MAY_DAY, ZONE));
    private static final String[] TIMES = {"00:00", "02:00", "03:00", "04:30", "05:00", "06:00", "07:00", "10:00", "13:00"};

    /** A forecast of changing weather, the same for the same seed but for what is added to each row. */
    private static List<ForecastHour> forecast(long seed, double moreSpreadC, double moreWindMs, boolean aloft) {
        Random random = new Random(seed);
        List<ForecastHour> rows = new ArrayList<>();
        for (String time : TIMES) {
            double rainMm = random.nextInt(4) == 0 ? random.nextDouble() * 0.4 : 0;
            Air air = at(time).damp(2 + random.nextDouble() * 15, random.nextDouble() * 4 + moreSpreadC)
                    .wind(random.nextDouble() * 3 + moreWindMs).cloud(random.nextInt(5)).rain(rainMm);
            air = aloft ? air.aloft(random.nextDouble() * 12, random.nextDouble() * 15 + moreWindMs) : air;
            rows.add(air.row());
        }
        return rows;
    }

    private static Mist mist(List<ForecastHour> forecast) {
        return Mist.atDawn(SUN, null, forecast, null);
    }

    @Property(tries = 300)
    void neverMakesMistLikelierWithMoreSpread(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 4) double moreC,
            @ForAll boolean aloft) {
        Likelihood damp = mist(forecast(seed, 0, 0, aloft)).likelihood();
        assertTrue(mist(forecast(seed, moreC, 0, aloft)).likelihood().compareTo(damp) <= 0);
    }

    @Property(tries = 300)
    void neverMakesMistLikelierWithMoreWind(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 4) double moreMs,
            @ForAll boolean aloft) {
        Likelihood still = mist(forecast(seed, 0, 0, aloft)).likelihood();
        assertTrue(mist(forecast(seed, 0, moreMs, aloft)).likelihood().compareTo(still) <= 0);
    }

    @Property(tries = 200)
    void neverKeepsDropsLongerInDrierAir(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 4) double moreC) {
        assertDriesFaster(forecast(seed, 0, 0, false), forecast(seed, moreC, 0, false));
    }

    @Property(tries = 200)
    void neverKeepsDropsLongerInMoreWind(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 4) double moreMs) {
        assertDriesFaster(forecast(seed, 0, 0, false), forecast(seed, 0, moreMs, false));
    }

    private static void assertDriesFaster(List<ForecastHour> moist, List<ForecastHour> dry) {
        Drops longer = Drops.of(Interval.day(MAY_DAY, ZONE), moist, null);
        Drops shorter = Drops.of(Interval.day(MAY_DAY, ZONE), dry, null);
        for (ZonedDateTime time = start(); time.isBefore(start().plusDays(1)); time = time.plusMinutes(7)) {
            assertTrue(shorter.at(time) <= longer.at(time) + 1e-9, time.toString());
        }
    }

    @Property(tries = 200)
    void staysBetweenNothingAndAll(@ForAll long seed, @ForAll boolean aloft) {
        List<ForecastHour> forecast = forecast(seed, 0, 0, aloft);
        Drops drops = Drops.of(Interval.day(MAY_DAY, ZONE), forecast, null);
        Mist mist = mist(forecast);
        assertTrue(!drops.reasons().isEmpty() && !mist.reasons().isEmpty());
        for (ZonedDateTime time = start().minusHours(3); time.isBefore(start().plusHours(27)); time = time.plusMinutes(7)) {
            assertTrue(drops.at(time) >= 0 && drops.at(time) <= 1, time.toString());
            assertTrue(mist.at(time) >= 0 && mist.at(time) <= 1, time.toString());
            Weather weather = new Forecast(forecast, MAY_DAY, ZONE).weather(time, null);
            assertTrue(weather.humidity() == null || weather.humidity() >= 0 && weather.humidity() <= 1);
            assertTrue(weather.damp() == null || weather.damp().spreadC() >= 0);
        }
    }

    private static ZonedDateTime start() {
        return MAY_DAY.atStartOfDay(ZONE);
    }
}
