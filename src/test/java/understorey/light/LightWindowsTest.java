package understorey.light;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.UniqueElements;
import org.junit.jupiter.api.Test;
import understorey.light.illuminance.CanopyLight;
import understorey.plan.LightWish;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;
import understorey.sky.Interval;
import understorey.sky.Skyline;
import understorey.sky.SunAt;
import understorey.weather.Drops;
import understorey.weather.Forecast;
import understorey.weather.Mist;

/** A window of good or fair light is that at each of its minutes: flecks, clouds and the skyline change the light at once. */
class LightWindowsTest {

    private static final Mist NO_MIST = new Mist(null, null, List.of());

    private static List<LightAt> rows(double latitude, LocalDate date, double pai, double landDeg) {
        Skyline skyline = Skyline.of(List.of(new SkylinePoint(0, landDeg), new SkylinePoint(180, landDeg / 2)), null);
        return LightTable.of(new Position(latitude, 0), Interval.day(date, ZoneOffset.UTC), Standpoint.of(skyline,
                new CanopyLight(pai, null, null), date));
    }

    private static LightDay day(double okta, double perHour) {
        return new LightDay(time -> Math.max(0, Math.min(8, okta + perHour * (time.toLocalTime().toSecondOfDay() / 3600.0 - 12))),
                time -> new Forecast(List.of(), time.toLocalDate(), time.getZone()).weather(time, null), NO_MIST,
                Drops.of(Interval.day(LocalDate.of(2027, 5, 8), ZoneOffset.UTC), List.of(), null));
    }

    @Property(tries = 200)
    void isAsGoodAsItIsCalledAtEachMinute(@ForAll @DoubleRange(min = -65, max = 65) double latitude,
            @ForAll @IntRange(min = 1, max = 365) int dayOfYear, @ForAll @DoubleRange(min = 0, max = 6) double pai,
            @ForAll @DoubleRange(min = 0, max = 20) double landDeg, @ForAll @DoubleRange(min = 0, max = 8) double okta,
            @ForAll @DoubleRange(min = -1, max = 1) double perHour,
            @ForAll @Size(min = 1, max = 2) @UniqueElements List<LightWish> wanted,
            @ForAll @DoubleRange(min = 0, max = 360) double facingDeg, @ForAll long seed) {
        List<LightAt> rows = rows(latitude, LocalDate.ofYearDay(2027, dayOfYear), pai, landDeg);
        LightDay day = day(okta, perHour);
        List<Moment> moments = day.over(rows);
        Wishes wishes = new Wishes(wanted, facingDeg, null);
        Outlook outlook = Outlook.of(wishes, moments, day.at(rows, rows.get(48).time()), time -> day.at(rows, time));
        Random random = new Random(seed);
        for (Interval window : outlook.windows()) {
            assertTrue(window.length().toMinutes() >= 1);
            for (int minute = 0; minute <= window.length().toMinutes(); minute++) {
                ZonedDateTime time = window.from().plusMinutes(minute);
                ZonedDateTime within = time.plusNanos((long) (random.nextDouble() * 60e9));
                double quality = wishes.quality(day.at(rows, time));
                assertTrue(quality >= outlook.best().least() - 1e-9, quality + " at " + time + " in " + window);
                double between = wishes.quality(day.at(rows, within));
                assertTrue(between > outlook.best().least() / 2 || !window.contains(within), between + " at " + within + " in " + window);
            }
        }
    }

    /**
     * Soft light under thick leaves and a clear sky: flecks of sun come, and with them harsh light, once they are a
     * hundredth of the ground. The sun climbs evenly, so the minute is found by asking each.
     */
    @Test
    void endsBeforeTheFirstFleckOfSun() {
        List<LightAt> rows = rows(52, LocalDate.of(2027, 5, 8), 4, 0);
        LightDay day = day(0, 0);
        Outlook outlook = Outlook.of(new Wishes(List.of(LightWish.SOFT), null, null), day.over(rows), day.at(rows, rows.get(20).time()),
                time -> day.at(rows, time));
        ZonedDateTime flecks = rows.get(16).time();
        while (!LightAt.of(SunAt.of(new Position(52, 0), flecks), rows.get(0).place()).flecked()) {
            flecks = flecks.plusMinutes(1);
        }
        assertTrue(day.at(rows, flecks).contrastStops() > 3, "harsh at once");
        ZonedDateTime end = outlook.windows().get(0).to();
        assertTrue(end.isBefore(flecks) && Duration.between(end, flecks).toMinutes() <= 1, end + " before " + flecks);
    }
}
