package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Samples;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.plan.Canopy;
import understorey.plan.Site;
import understorey.sky.Interval;
import understorey.sky.SunAt;
import understorey.sky.SunDay;

class DayCurveTest {

    private static List<LightAt> light(Places place, Canopy canopy) {
        Site wood = Samples.wood(place, List.of(), List.of(), null, null);
        Site site = new Site(wood.name(), wood.slug(), null, wood.position(), null, wood.zone(), List.of(), canopy, List.of(), List.of(), null, null,
                List.of(), List.of(), null, null, false, List.of(), null, List.of(), null);
        return LightTable.of(site, null, Interval.day(place.date(), place.zone()));
    }

    @Test
    void keepsToTheSunWithinThreeHundredthsOfADegree() {
        for (Places place : Places.ALL) {
            List<LightAt> rows = light(place, Canopy.NONE);
            DayCurve curve = new DayCurve(rows);
            ZonedDateTime start = rows.get(0).sun().time();
            for (int minute = 0; !start.plusMinutes(minute).isAfter(rows.get(rows.size() - 1).sun().time()); minute += 7) {
                ZonedDateTime time = start.plusMinutes(minute);
                double altitudeDeg = SunAt.of(place.position(), time).altitudeDeg();
                if (Math.abs(altitudeDeg) <= 45) {
                    assertEquals(altitudeDeg, curve.altitudeDeg(time), 0.03, place + " " + time);
                }
            }
        }
    }

    /** Outdoor work wants a light from the end of civil twilight on (Astronomical Almanac): open ground under cloud, to ten minutes. */
    @Test
    void growsDimInTheOpenAboutTheEndOfCivilTwilight() {
        int dusks = 0;
        for (Places place : Places.ALL) {
            SunDay sun = SunDay.of(place.position(), Interval.day(place.date(), place.zone()));
            ZonedDateTime last = lastLight(light(place, Canopy.NONE));
            if (sun.civilDusk() != null && sun.sunset() != null && sun.civilDusk().isAfter(sun.sunset()) && sun.civilDawn() != null) {
                assertTrue(Duration.between(sun.civilDusk(), last).abs().toMinutes() <= 10, place + " " + last);
                dusks++;
            }
        }
        assertTrue(dusks >= 3, dusks + " dusks");
    }

    /** Of a whole day; null if the day ends without a head torch. */
    private static ZonedDateTime lastLight(List<LightAt> rows) {
        ZonedDateTime end = rows.get(rows.size() - 1).time();
        ZonedDateTime last = new DayCurve(rows).lastLight(end);
        return end.equals(last) ? null : last;
    }

    /** Every minute by itself. */
    @Test
    void findsFirstAndLastLightWhereAScanFindsThem() {
        List<LightAt> rows = light(Places.MID_LATITUDE, new Canopy(Canopy.Trees.EVERGREEN, null, 20.0));
        DayCurve curve = new DayCurve(rows);
        ZonedDateTime start = rows.get(0).sun().time();
        ZonedDateTime first = null;
        ZonedDateTime last = null;
        for (int minute = 0; minute < 24 * 60; minute++) {
            ZonedDateTime time = start.plusMinutes(minute);
            if (!curve.dim(time)) {
                first = first == null ? time : first;
                last = time;
            }
        }
        assertTrue(Duration.between(curve.firstLight(start), first).abs().toMinutes() <= 1);
        assertTrue(Duration.between(last, lastLight(rows)).abs().toMinutes() <= 1);
        assertTrue(lastLight(rows).isBefore(lastLight(light(Places.MID_LATITUDE, Canopy.NONE))), "leaves darken the floor");
        assertNull(curve.firstLight(lastLight(rows).plusMinutes(30)), "no light comes again before midnight");
    }
}
