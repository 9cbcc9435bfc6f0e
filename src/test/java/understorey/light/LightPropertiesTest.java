package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import understorey.light.illuminance.CanopyLight;
import understorey.light.illuminance.Daylight;
import understorey.plan.Position;
import understorey.sky.Interval;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

/** What no light may do, whatever the place, the day, the leaves and the clouds. */
class LightPropertiesTest {

    private static final Skyline LEVEL = Skyline.of(List.of(), null);
    /** The published pieces of the twilight do not quite meet: 1 % at most, which is 0.015 EV. */
    private static final double JOINT_EV = 0.015;
    @Property
    void risesWithTheSunUnderOneSky(@ForAll @DoubleRange(min = -30, max = 90) double lowDeg,
            @ForAll @DoubleRange(min = 0, max = 40) double up, @ForAll @DoubleRange(min = 0, max = 8) double okta,
            @ForAll @DoubleRange(min = 0, max = 8) double pai) {
        LightAt low = light(lowDeg, pai);
        LightAt high = light(Math.min(90, lowDeg + up), pai);
        assertTrue(high.floorEv(okta) >= low.floorEv(okta) - JOINT_EV);
        assertTrue(high.open().shade() >= low.open().shade() - JOINT_EV);
        assertTrue(high.open().broken() >= low.open().broken() - JOINT_EV);
        assertTrue(high.open().overcast() >= low.open().overcast() - JOINT_EV);
        if (low.open().sun() != null) {
            assertTrue(high.open().sun() >= low.open().sun() - JOINT_EV);
            assertTrue(low.open().sun() >= low.open().shade());
        }
        if (low.floor().fleck() != null) {
            assertTrue(high.floor().fleck() >= low.floor().fleck() - JOINT_EV);
            assertTrue(low.floor().fleck() >= low.floor().shade());
        }
    }

    @Property(tries = 200)
    void neverLeapsFromAQuarterToTheNext(@ForAll @DoubleRange(min = -75, max = 75) double latitude,
            @ForAll @IntRange(min = 1, max = 365) int dayOfYear, @ForAll @DoubleRange(min = 0, max = 8) double pai) {
        List<LightAt> table = LightTable.of(new Position(latitude, 0),
                Interval.day(LocalDate.ofYearDay(2027, dayOfYear), ZoneOffset.UTC), place(pai, LocalDate.ofYearDay(2027, dayOfYear)));
        for (int i = 1; i < table.size(); i++) {
            LightAt from = table.get(i - 1);
            LightAt to = table.get(i);
            assertSmooth(from, to, light -> light.open().shade());
            assertSmooth(from, to, light -> light.open().broken());
            assertSmooth(from, to, light -> light.open().overcast());
            assertSmooth(from, to, light -> light.floor().shade());
            assertSmooth(from, to, light -> light.floor().broken());
            assertSmooth(from, to, light -> light.floor().overcast());
            if (from.aboveSkyline() && to.aboveSkyline()) {
                assertSmooth(from, to, light -> light.open().sun());
            }
            if (from.floor().fleck() != null && to.floor().fleck() != null) {
                assertSmooth(from, to, light -> light.floor().fleck());
            }
        }
    }

    private static void assertSmooth(LightAt from, LightAt to, ToDoubleFunction<LightAt> ev) {
        double limit = 1.7 * Math.abs(to.sun().altitudeDeg() - from.sun().altitudeDeg()) + 0.3;
        double change = Math.abs(ev.applyAsDouble(to) - ev.applyAsDouble(from));
        assertTrue(change <= limit, () -> change + " EV over " + from.sun() + " to " + to.sun());
    }

    @Property
    void neverBrightensWithMoreLeaf(@ForAll @DoubleRange(min = -20, max = 90) double altitudeDeg,
            @ForAll @DoubleRange(min = 0, max = 8) double pai, @ForAll @DoubleRange(min = 0, max = 8) double more,
            @ForAll @DoubleRange(min = 0, max = 8) double okta) {
        LightAt thin = light(altitudeDeg, pai);
        LightAt thick = light(altitudeDeg, pai + more);
        assertTrue(thick.floor().shade() <= thin.floor().shade() + 1e-9);
        assertTrue(thick.floor().broken() <= thin.floor().broken() + 1e-9);
        assertTrue(thick.floor().overcast() <= thin.floor().overcast() + 1e-9);
        assertTrue(thick.fleckShare() <= thin.fleckShare());
        assertTrue(thick.floorEv(okta) <= thin.floorEv(okta) + 1e-9);
        if (thick.floor().fleck() != null) {
            assertTrue(thick.floor().fleck() <= thin.floor().fleck() + 1e-9);
        }
        assertEquals(thin.open(), thick.open());
    }

    @Property
    void neverBrightensTheDirectSunWithMoreCloud(@ForAll @DoubleRange(min = -5, max = 90) double altitudeDeg,
            @ForAll @DoubleRange(min = 0, max = 8) double okta, @ForAll @DoubleRange(min = 0, max = 8) double more,
            @ForAll @IntRange(min = 1, max = 366) int dayOfYear) {
        double thin = Daylight.directNormalLux(altitudeDeg, okta, dayOfYear);
        double thick = Daylight.directNormalLux(altitudeDeg, Math.min(8, okta + more), dayOfYear);
        assertTrue(thick <= thin + 1e-9 && thick >= 0);
    }

    private static LightAt light(double altitudeDeg, double pai) {
        LocalDate date = LocalDate.of(2027, 5, 8);
        ZoneId zone = ZoneOffset.UTC;
        return LightAt.of(new SunAt(date.atTime(12, 0).atZone(zone), 180, altitudeDeg), place(pai, date));
    }

    private static Standpoint place(double pai, LocalDate date) {
        return Standpoint.of(LEVEL, new CanopyLight(pai, null, null), date);
    }
}
