package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.spot;
import static understorey.Samples.wood;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Samples;
import understorey.advice.VisitAdvice;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.order.Leg;
import understorey.order.Orders;
import understorey.order.RunningOrder;
import understorey.plan.Canopy;
import understorey.plan.Contact;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

class SafetyTest {

    private static Safety plan(Trip trip, LocalDate date) {
        RunningOrder order = Orders.of(trip, date);
        return Safety.of(Day.of(trip, date), order.back(), order.leaveLastSpotBy(), order.shooting().stream().map(Leg::spot).toList());
    }

    private static Safety plan(Trip trip) {
        return plan(trip, MAY_DAY);
    }

    private static Site gated(Opening opening, String parkCloses) {
        return wood(wood().spots(), wood().walks(), opening, new Parking("Gate", parkCloses == null ? null : at(parkCloses), null));
    }

    private static Trip trip(Site site, String arrive, String leave, Contact contact, Shot... shots) {
        Trip trip = Samples.trip(site, arrive, leave, shots);
        return new Trip(trip.title(), trip.slug(), null, site, trip.when(), trip.arrive(), trip.leave(), trip.gear(), List.of(), contact,
                null, List.of(), null, trip.shots(), null);
    }

    private static LocalTime at(String time) {
        return LocalTime.parse(time);
    }

    private static final Shot BANK = picture("a").at("Bank").shot();
    private static final Shot BRIDGE = picture("b").at("Footbridge").shot();

    @Test
    void countsTheDaylightLeftOnceBack() {
        Safety safety = plan(trip(gated(null, null), "06:00", "10:00", null, BANK));
        SunDay sun = SunDay.of(Places.MID_LATITUDE.position(), Interval.day(MAY_DAY, Samples.zone()));
        assertEquals(at("06:50"), safety.back().toLocalTime());
        assertEquals(at("09:45"), safety.leaveLastSpotBy().toLocalTime());
        assertTrue(Duration.between(sun.civilDusk(), safety.lastLight()).abs().toMinutes() <= 10, "no tree stands over it");
        assertEquals(Duration.between(safety.back(), safety.lastLight()).toMinutes(), safety.daylightMargin());
        assertNull(safety.closing());
        assertNull(safety.message());
    }

    @Test
    void isShortOfDaylightAfterDusk() {
        Safety safety = plan(trip(gated(null, null), "21:00", "23:30", null, picture("a").at("Bank").pinned("22:30").shot()));
        assertTrue(safety.daylightMargin() < 0);
        assertEquals(new WalkOut("Bank", 22, 22, true), safety.walkOut());
    }

    @Test
    void walksOutFromTheFarthestSpotVisited() {
        assertEquals(new WalkOut("Bank", 15, 15, false), plan(trip(gated(null, null), "06:00", "10:00", null, BRIDGE, BANK)).walkOut());
        assertEquals(new WalkOut("Footbridge", 9, 9, false), plan(trip(gated(null, null), "06:00", "10:00", null, BRIDGE)).walkOut());
        assertNull(plan(trip(gated(null, null), "06:00", "06:10", null, BRIDGE)).walkOut());
    }

    /** A degree of latitude is 111.195 km; Irmischer and Clarke's 3.9463 km/h on the flat is the slowest of the five. */
    @Test
    void allowsForTheSlowestPaceWhereNobodyTimedTheWalk() {
        Site site = wood(List.of(spot("Gate", 52.0, -3.5, null), spot("Far", 52.01, -3.5, null)), List.of(), null,
                new Parking("Gate", null, null));
        WalkOut out = plan(trip(site, "06:00", "10:00", null, picture("a").at("Far").shot())).walkOut();
        assertEquals(Math.ceil(1.11195 * 1.3 / (5.0367 * 0.85) * 60), out.minutes());
        assertEquals(Math.ceil(1.11195 * 1.3 / (3.9463 * 0.85) * 60), out.longestMinutes());
    }

    @Test
    void setsTheFirstGateToShutAgainstSunset() {
        Opening opening = new Opening(at("05:00"), at("20:00"));
        assertEquals(at("20:00"), plan(trip(gated(opening, null), "06:00", "10:00", null, BANK)).closing().at().toLocalTime());
        Safety.Closing park = plan(trip(gated(opening, "19:00"), "06:00", "10:00", null, BANK)).closing();
        assertTrue(park.carPark());
        assertTrue(park.afterSunset() < 0, "it shuts by day");
        assertFalse(plan(trip(gated(opening, "21:00"), "06:00", "10:00", null, BANK)).closing().carPark());
    }

    @Test
    void leavesWordWhereToLookAndWhenToWorry() {
        Safety.Message message = plan(trip(gated(null, null), "06:00", "10:00", new Contact("my sister", at("11:00")), BRIDGE, BANK))
                .message();
        assertEquals("my sister", message.tell());
        assertEquals(List.of("Footbridge", "Bank"), message.route());
        assertEquals("Gate", message.base());
        assertEquals(MAY_DAY.atTime(6, 0).atZone(Samples.zone()), message.arrive());
        assertEquals(at("11:00"), message.backBy().toLocalTime());
        assertEquals(at("11:30"), message.actFrom().toLocalTime());
        Safety early = plan(trip(gated(null, null), "06:00", "10:00", new Contact("my sister", at("06:30")), BANK));
        assertEquals(List.of(VisitAdvice.BackTooLate.class), Samples.kinds(early.remarks()));
        ZonedDateTime leave = plan(trip(gated(null, null), "06:00", "10:00", new Contact("my sister", null), BANK)).message().backBy();
        assertEquals(at("10:00"), leave.toLocalTime());
    }

    private static Safety without(Places place) {
        Site site = wood(place, wood().spots(), wood().walks(), new Opening(at("05:00"), at("20:00")), new Parking("Gate", null, null));
        Safety safety = plan(trip(site, "11:00", "13:00", null, BRIDGE), place.date());
        assertNull(safety.closing().afterSunset(), "no sunset");
        return safety;
    }

    @Test
    void hasNoLastLightWhereItStaysLightOrDarkAllDay() {
        assertNull(without(Places.POLAR_DAY).lastLight());
        assertNull(without(Places.POLAR_DAY).daylightMargin());
        Places dark = new Places(new Position(80, 26), Places.POLAR_NIGHT.zone(), Places.POLAR_NIGHT.date());
        assertNull(SunDay.of(dark.position(), Interval.day(dark.date(), dark.zone())).civilDusk(), "13° under the horizon at noon");
        assertNull(without(dark).lastLight());
        assertNull(without(dark).daylightMargin());
    }

    /** At 70° N the sun stays down in December, yet stands above −6° round noon. */
    @Test
    void hasItsLastLightAtTheEndOfTheTwilightThatIsAllOfAPolarNight() {
        Places place = Places.POLAR_NIGHT;
        Safety safety = without(place);
        SunDay sun = SunDay.of(place.position(), Interval.day(place.date(), place.zone()));
        assertNull(sun.sunset());
        List<LightAt> light = LightTable.of(wood(place, wood().spots(), List.of(), null, null), null, Interval.day(place.date(), place.zone()));
        double altitudeDeg = new DayCurve(light).altitudeDeg(safety.lastLight());
        assertEquals(-6, altitudeDeg, 1, "civil twilight by definition, as slowly as the sun sinks there");
        assertTrue(safety.lastLight().isAfter(sun.solarNoon()), "the evening's, not the morning's");
        assertEquals(Duration.between(safety.back(), safety.lastLight()).toMinutes(), safety.daylightMargin());
    }

    /** The park shuts long before dusk, whenever one means to leave. */
    @Test
    void walksOutByDayWhereTheCarParkShutsByDay() {
        assertFalse(plan(trip(gated(null, "19:00"), "16:00", "23:00", null, BANK)).walkOut().dark());
        assertTrue(plan(trip(gated(null, null), "16:00", "23:00", null, BANK)).walkOut().dark());
    }

    @Test
    void countsNoWayOutWhereNobodySaidFromWhere() {
        Safety safety = plan(trip(wood(), "06:00", "10:00", new Contact("my sister", null), BANK));
        assertNull(safety.walkOut());
        assertNull(safety.message().base());
        assertEquals(wood().position(), safety.message().position());
    }

    @Test
    void promisesNoWalkWhereNoPictureIsTaken() {
        Contact sister = new Contact("my sister", null);
        Safety.Message message = plan(trip(gated(null, null), "06:00", "06:10", sister, BRIDGE)).message();
        assertEquals(List.of(), message.route());
        assertEquals(at("06:10"), message.back().toLocalTime());
    }

    /** One darkness for lamp, last light and walk: turning back at the last minute brings one home by the walk-out's minutes. */
    @Test
    void isAtOneWithItselfUnderDarkTrees() {
        Site open = gated(null, null);
        Site dark = new Site(open.name(), open.slug(), null, open.position(), null, open.zone(), List.of(),
                new Canopy(Canopy.Trees.EVERGREEN, null, 20.0), open.spots(), open.walks(), null, open.parking(), List.of(), List.of(), null,
                null, false, List.of(), null, List.of(), null);
        Trip trip = trip(dark, "15:00", "21:40", null, BANK);
        Safety safety = plan(trip);
        assertTrue(safety.lastLight().isBefore(safety.leaveLastSpotBy()), "it is dusk under the trees before one turns back");
        assertTrue(safety.walkOut().dark());
        assertEquals(safety.walkOut().minutes(), Duration.between(safety.leaveLastSpotBy(),
                MAY_DAY.atTime(trip.leave()).atZone(Samples.zone())).toMinutes());
        assertEquals(safety.lastLight(), Day.of(trip, MAY_DAY).headTorch().from());
    }

    @Test
    void warnsWhoeverMayStayLongerThanTheWordGiven() {
        Safety safety = plan(trip(gated(null, null), "06:00", "10:00", new Contact("my sister", at("09:00")), BANK));
        assertEquals(List.of(VisitAdvice.StayTooLate.class), Samples.kinds(safety.remarks()));
        assertTrue(plan(trip(gated(null, "09:00"), "06:00", "10:00", new Contact("my sister", at("09:00")), BANK)).remarks().isEmpty());
    }

    @Test
    void takesACheckInAfterMidnightForTheNextDay() {
        Safety safety = plan(trip(gated(null, null), "18:00", "22:00", new Contact("my sister", at("00:30")), BANK));
        assertTrue(safety.remarks().isEmpty(), safety.remarks().toString());
        assertEquals(MAY_DAY.plusDays(1), safety.message().backBy().toLocalDate());
    }
}
