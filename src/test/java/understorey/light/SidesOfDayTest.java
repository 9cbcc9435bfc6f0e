package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import understorey.Places;
import understorey.light.SunDirection.Stretch;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;
import understorey.sky.Interval;
import understorey.sky.Skyline;
import understorey.sky.SunAt;
import understorey.sky.SunTrack;

/** The sides of a day against the same day looked at every 20 s. */
class SidesOfDayTest {

    private static final Duration QUARTER = Duration.ofMinutes(15);
    private static final Duration DENSE = Duration.ofSeconds(20);
    private static final Skyline LEVEL = Skyline.of(List.of(), null);
    /** A ridge with gaps, so that the sun clears it several times. */
    private static final Skyline RIDGE = Skyline.of(List.of(new SkylinePoint(0, 25), new SkylinePoint(70, 25),
            new SkylinePoint(75, 2), new SkylinePoint(95, 2), new SkylinePoint(100, 30), new SkylinePoint(180, 12),
            new SkylinePoint(260, 35)), null);

    static Stream<Places> days() {
        Places tropics = Places.TROPICS;
        Places north = Places.MID_LATITUDE;
        return Stream.concat(Places.ALL.stream(), Stream.of(
                new Places(new Position(23.4, tropics.position().longitude()), tropics.zone(), tropics.date().withMonth(6)),
                new Places(new Position(-8, tropics.position().longitude()), tropics.zone(), tropics.date().withMonth(10)),
                new Places(new Position(45, north.position().longitude()), north.zone(), north.date().withMonth(7)),
                new Places(new Position(-67, 140), Places.SOUTHERN.zone(), north.date().withMonth(12))));
    }

    @ParameterizedTest
    @MethodSource("days")
    void agreesWithADenseScanToTheMinute(Places day) {
        List<SunAt> dense = SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), DENSE);
        List<SunAt> track = SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), QUARTER);
        for (Skyline skyline : List.of(LEVEL, RIDGE)) {
            List<Interval> sunlit = skyline.sunlit(day.position(), SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), QUARTER));
            for (double facingDeg : new double[] {10, 67.5, 122, 200, 251, 333}) {
                List<Stretch> stretches = SunDirection.over(track, facingDeg, sunlit);
                assertFills(sunlit, stretches);
                assertAgrees(dense, facingDeg, stretches);
            }
        }
    }

    /** Where the scan disagrees, it agrees with itself within three steps: the change is a minute off at most. */
    private static void assertAgrees(List<SunAt> dense, double facingDeg, List<Stretch> stretches) {
        for (int i = 0; i < dense.size(); i++) {
            Side said = side(stretches, dense.get(i).time());
            if (said == null) {
                continue;
            }
            boolean near = false;
            for (int j = Math.max(0, i - 3); j <= Math.min(dense.size() - 1, i + 3) && !near; j++) {
                SunDirection seen = SunDirection.of(dense.get(j), facingDeg);
                near = seen != null && seen.side() == said;
            }
            assertTrue(near, said + " when facing " + facingDeg + " at " + dense.get(i));
        }
    }

    private static Side side(List<Stretch> stretches, ZonedDateTime time) {
        for (Stretch stretch : stretches) {
            if (stretch.time().contains(time)) {
                return stretch.side();
            }
        }
        return null;
    }

    /** The stretches, put together again, are the sunlight; neighbours differ. */
    private static void assertFills(List<Interval> sunlit, List<Stretch> stretches) {
        List<Interval> joined = new ArrayList<>();
        Side last = null;
        for (Stretch stretch : stretches) {
            int end = joined.size() - 1;
            if (end >= 0 && joined.get(end).to().equals(stretch.time().from())) {
                assertFalse(stretch.side() == last, "two stretches of " + last);
                joined.set(end, new Interval(joined.get(end).from(), stretch.time().to()));
            } else {
                joined.add(stretch.time());
            }
            last = stretch.side();
        }
        assertEquals(sunlit, joined);
    }

    /** Sun in the zenith at noon: back light, overhead, front light, and side light at no time. */
    @Test
    void goesFromBackToFrontOverheadWhereTheSunPassesTheZenith() {
        Places day = Places.TROPICS;
        List<Stretch> stretches = SunDirection.over(SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), QUARTER), 90,
                LEVEL.sunlit(day.position(), SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), QUARTER)));
        assertEquals(List.of(Side.BACK, Side.OVERHEAD, Side.FRONT), stretches.stream().map(Stretch::side).toList());
        // At 15° an hour the sun is above 55° for (180 − 110)/15 hours.
        assertEquals(70 / 15.0, stretches.get(1).time().length().toSeconds() / 3600.0, 1 / 60.0);
    }

    @Test
    void comesFromEverySideButOverheadUnderTheMidnightSun() {
        Places day = Places.POLAR_DAY;
        Set<Side> sides = EnumSet.noneOf(Side.class);
        SunDirection.over(SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), QUARTER), 30,
                LEVEL.sunlit(day.position(), SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), QUARTER)))
                .forEach(stretch -> sides.add(stretch.side()));
        assertEquals(EnumSet.of(Side.BACK, Side.SIDE, Side.FRONT), sides);
    }

    /** The sun climbs above 55° for some minutes between two rows: the parabola sees what straight lines do not. */
    @Test
    void findsAStayBetweenTwoRows() {
        Places day = Places.MID_LATITUDE;
        double highestDeg = SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), DENSE).stream()
                .mapToDouble(SunAt::apparentAltitudeDeg).max().orElseThrow();
        double latitude = day.position().latitude() + highestDeg - 55.015;
        int found = 0;
        for (double longitude = -5; longitude < -1; longitude += 0.25) {
            Position place = new Position(latitude, longitude);
            List<SunAt> track = SunTrack.of(place, Interval.day(day.date(), day.zone()), QUARTER);
            if (track.stream().allMatch(sun -> sun.apparentAltitudeDeg() < 55)) {
                List<Interval> sunlit = LEVEL.sunlit(place, track);
                assertEquals(1, SunDirection.over(track, 10, sunlit).stream()
                        .filter(stretch -> stretch.side() == Side.OVERHEAD).count());
                found++;
            }
        }
        assertTrue(found > 0, "no place hides its noon between two rows");
    }

    @Test
    void hasNoLightInThePolarNightAndNeedsATrack() {
        Places day = Places.POLAR_NIGHT;
        List<SunAt> track = SunTrack.of(day.position(), Interval.day(day.date(), day.zone()), QUARTER);
        assertEquals(List.of(), SunDirection.over(track, 90, LEVEL.sunlit(day.position(), track)));
        assertThrows(IllegalArgumentException.class, () -> SunDirection.over(track.subList(0, 2), 90, List.of()));
    }
}
