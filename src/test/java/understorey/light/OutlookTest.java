package understorey.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.advice.LightAdvice;
import understorey.plan.LightWish;
import understorey.sky.Interval;
import understorey.sky.SunAt;

class OutlookTest {

    private static final LocalDate DATE = LocalDate.of(2027, 5, 8);

    /** A morning from 05:00 in steps of five minutes: the sun climbs a degree a step from −6° in the east, and clears a hill at 3°. */
    private static List<Moment> morning(double okta) {
        List<Moment> day = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            day.add(moment(okta, DATE.atTime(5, 0).plusMinutes(5L * i).atZone(ZoneOffset.UTC)));
        }
        return day;
    }

    private static Moment moment(double okta, ZonedDateTime time) {
        double steps = Duration.between(DATE.atTime(5, 0).atZone(ZoneOffset.UTC), time).toMinutes() / 5.0;
        double altitude = steps - 6;
        boolean clear = altitude > 3;
        return new Moment(new SunAt(time, 80 + steps, altitude), clear, clear ? 0.2 : 0, 5 + steps / 4.0,
                clear ? 4 : 0, okta, 0, 0, 1, false, Double.NaN, 0, 1);
    }

    private static Outlook outlook(double okta, int planned, LightWish... wishes) {
        List<Moment> day = morning(okta);
        return Outlook.of(new Wishes(List.of(wishes), 90.0, null), day, day.get(planned), time -> moment(okta, time));
    }

    private static String clock(Interval window) {
        return window.from().toLocalTime() + "-" + window.to().toLocalTime();
    }

    @Test
    void findsTheWindowBetweenTheHillAndTooHigh() {
        Outlook outlook = outlook(0, 12, LightWish.LOW_SUN, LightWish.BACKLIGHT);
        assertEquals(Outlook.Grade.GOOD, outlook.grade());
        assertEquals(1, outlook.quality(), 1e-9);
        assertEquals(1, outlook.windows().size());
        // From above 3° at 05:46 to 7.6° at 06:08, where 0.6 of the low sun is left.
        assertEquals("05:46-06:08", clock(outlook.windows().get(0)));
        // Just before it the sun is behind the hill, just after it too high.
        assertEquals(List.of(LightAdvice.SunBehindLand.class, LightAdvice.SunTooHigh.class), kinds(outlook));
    }

    /** The same cloud lies over the window too, so it cannot be what ends it. */
    @Test
    void namesWhatChangesAtTheEdgeOfAWindowAndNotWhatIsThereAllDay() {
        Outlook outlook = outlook(4, 12, LightWish.LOW_SUN);
        assertNotEquals(List.of(), outlook.windows());
        assertEquals(List.of(LightAdvice.SunBehindLand.class, LightAdvice.SunTooHigh.class), kinds(outlook));
    }

    private static List<Class<?>> kinds(Outlook outlook) {
        return outlook.spoils().stream().<Class<?>>map(spoil -> spoil.why().getClass()).toList();
    }

    /** A sun at 6° is out a quarter of the time under 5 okta: reference/sun-line.csv at 10°. */
    @Test
    void multipliesWishesAndTellsTheWeakestFirst() {
        Outlook outlook = outlook(5, 12, LightWish.LOW_SUN, LightWish.SOFT);
        assertEquals(0.25 * 0.75, outlook.quality(), 0.005);
        assertInstanceOf(LightAdvice.SunBehindCloud.class, outlook.because().get(0));
        assertInstanceOf(LightAdvice.SoftUnderCloud.class, outlook.because().get(1));
    }

    @Test
    void hasNoWindowWhereTheLightNeverComes() {
        Outlook outlook = outlook(8, 12, LightWish.BACKLIGHT);
        assertEquals(List.of(), outlook.windows());
        assertEquals(Outlook.Grade.POOR, outlook.best());
        assertEquals(1, outlook.spoils().size());
        assertInstanceOf(LightAdvice.SunHidden.class, outlook.spoils().get(0).why());
    }

    /** A wish that the morning grants at no time: first the horizon, then the sun far too high. */
    @Test
    void tellsWhatSpoilsAWholeDayOneAfterAnother() {
        Outlook outlook = outlook(4.9, 12, LightWish.LOW_SUN, LightWish.OVERHEAD);
        assertEquals(List.of(), outlook.windows());
        assertTrue(outlook.spoils().size() > 1 && outlook.spoils().size() <= 4, outlook.spoils().toString());
        List<Moment> day = morning(4.9);
        Wishes wishes = new Wishes(List.of(LightWish.LOW_SUN, LightWish.OVERHEAD), 90.0, null);
        for (int i = 0; i < outlook.spoils().size(); i++) {
            Interval when = outlook.spoils().get(i).when();
            assertFalse(i > 0 && when.from().isBefore(outlook.spoils().get(i - 1).when().to()), outlook.spoils().toString());
            Moment first = day.stream().filter(moment -> moment.sun().time().equals(when.from())).findFirst().orElseThrow();
            assertEquals(kinds(outlook).get(i), wishes.weakest(first).limits().getClass());
        }
        assertEquals(day.get(0).sun().time(), outlook.spoils().get(0).when().from());
    }

    /** A sun at 24° is out half of the time under 4 okta: between 0.36 at 10° and 0.57 at 30°, reference/sun-line.csv. */
    @Test
    void fallsBackOnFairHoursWhereNoneIsGood() {
        Outlook outlook = outlook(4, 30, LightWish.BACKLIGHT);
        assertEquals(Outlook.Grade.FAIR, outlook.best());
        assertEquals(0.53, outlook.quality(), 0.02);
        assertTrue(outlook.windows().get(0).from().isAfter(DATE.atTime(5, 45).atZone(ZoneOffset.UTC)));
    }

    @Test
    void saysWhatSpoiltTheWishThatGainsMostByAWait() {
        List<Moment> day = morning(0);
        Wishes wishes = new Wishes(List.of(LightWish.SOFT, LightWish.LOW_SUN), null, null);
        assertEquals(new Wishes.Gain(true, new LightAdvice.SunBehindLand()), wishes.gained(day.get(8), day.get(12)));
        assertEquals(new Wishes.Gain(true, new LightAdvice.SunNotYetUp()), wishes.gained(day.get(2), day.get(12)));
        assertEquals(new Wishes.Gain(false, new LightAdvice.Harsh(day.get(20).contrastStops())),
                wishes.gained(day.get(20), morning(8).get(24)));
        assertEquals(null, wishes.gained(day.get(12), day.get(30)), "nothing is gained");
        assertEquals(null, wishes.gained(morning(2).get(10), morning(0).get(12)), "it was good before");
    }
}
