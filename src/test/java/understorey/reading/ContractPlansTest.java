package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.plan.Bag;
import understorey.plan.Canopy;
import understorey.plan.Filter;
import understorey.plan.Foliage;
import understorey.plan.ForecastHour;
import understorey.plan.LightWish;
import understorey.plan.Orientation;
import understorey.plan.Position;
import understorey.plan.Role;
import understorey.plan.Season;
import understorey.plan.Sensor;
import understorey.plan.Share;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;
import understorey.plan.Support;
import understorey.plan.Temperatures;
import understorey.plan.Trip;
import understorey.plan.Viewpoint;
import understorey.plan.When;

/** The examples of the format's own description, read key by key. */
class ContractPlansTest {

    private static final double EXACT = 1e-12;
    private final Plans plans = PlansReader.read(Path.of("src", "test", "resources", "contract", "plans"));

    @Test
    void findsNothingWrongWithTheExamples() {
        assertEquals(List.of(), plans.findings());
        assertFalse(plans.hasErrors());
        assertEquals(List.of(), plans.faultyTrips());
        assertEquals(List.of("a-quick-look", "first-light-in-the-ramsons"), plans.trips().stream().map(Trip::slug).toList());
        assertEquals(List.of("gorsewell-dingle"), plans.sites().stream().map(Site::slug).toList());
        assertEquals(List.of("day-bag", "pocket-phone"), plans.bags().stream().map(Bag::slug).toList());
    }

    @Test
    void tenLinesAreEnough() {
        Trip trip = plans.trips().get(0);
        assertEquals("A quick look at the ramsons", trip.title());
        assertEquals(new When.On(LocalDate.of(2027, 5, 8)), trip.when());
        assertEquals("gorsewell-dingle-a-quick-look", trip.site().slug());
        assertEquals(new Position(52.337, -3.548), trip.site().position());
        assertEquals(List.of("Phone"), trip.gear().bodies().stream().map(b -> b.name()).toList());
        assertNull(trip.gear().slug());
        assertEquals(2, trip.gear().bodies().get(0).fixedLenses().size());
        Shot floor = trip.shots().get(0);
        assertEquals("ramsons", floor.subject().key());
        assertNull(floor.role());
        assertNull(floor.viewpoint());
        assertEquals(Role.CLOSING, trip.shots().get(1).role());
        assertEquals(Share.Audience.PRIVATE, trip.audience());
    }

    @Test
    void readsTheTrip() {
        Trip trip = plans.trips().get(1);
        assertEquals("First light in the ramsons", trip.title());
        assertEquals("Dingle in May", trip.series());
        assertEquals(plans.sites().get(0), trip.site());
        assertEquals(LocalTime.of(5, 0), trip.arrive());
        assertEquals(LocalTime.of(11, 0), trip.leave());
        assertEquals(plans.bags().get(0), trip.gear());
        assertEquals("Second camera", trip.companions().get(0).name());
        assertEquals(plans.bags().get(1), trip.companions().get(0).gear());
        assertEquals("my sister, by text", trip.contact().tell());
        assertEquals(LocalTime.NOON, trip.contact().backBy());
        assertEquals(SkyWord.BROKEN, trip.sky());
        assertEquals("From the whole white floor down to **one** flower head.\n", trip.story());
        assertEquals(Share.Audience.PUBLIC, trip.audience());
        assertEquals(Share.Precision.COARSE, trip.precision());
    }

    @Test
    void readsTheForecast() {
        List<ForecastHour> hours = plans.trips().get(1).forecast();
        assertEquals(new ForecastHour(null, LocalTime.of(5, 0), 6.0, 5.5, null, 1.0, 2.0, 2.0, 0.0, null,
                null, null), hours.get(0));
        ForecastHour nine = hours.get(1);
        assertEquals(0.71, nine.humidity(), EXACT);
        assertEquals(12 / 3.6, nine.windMs(), EXACT);
        assertEquals(24 / 3.6, nine.gustMs(), EXACT);
        assertEquals(0.4, nine.rainMm(), EXACT);
        assertEquals(0.4, nine.rainChance(), EXACT);
    }

    @Test
    void readsTheShots() {
        Shot floor = plans.trips().get(1).shots().get(0);
        assertEquals("The white floor", floor.name());
        assertEquals(Role.OPENING, floor.role());
        assertEquals("Footbridge", floor.spot());
        assertEquals(Viewpoint.Stance.STANDING, floor.viewpoint());
        assertEquals(Orientation.LANDSCAPE, floor.orientation());
        assertEquals(new Sharp.Range(2.5, 40), floor.sharp());
        assertEquals(50, floor.focalEquivalentMm());
        assertEquals(67.5, floor.facingDeg());
        assertEquals(List.of(LightWish.LOW_SUN, LightWish.BACKLIGHT), floor.light());
        assertEquals(true, floor.polariser());
        assertEquals(Duration.ofMinutes(20), floor.duration());
        assertEquals(3, floor.priority());
        Shot head = plans.trips().get(1).shots().get(1);
        assertEquals(0.045, head.frame().widthM(), EXACT);
        assertEquals(new Sharp.Depth(0.012), head.sharp());
        assertEquals(List.of(LightWish.SOFT, LightWish.AFTER_RAIN), head.light());
        assertNull(head.priority());
    }

    @Test
    void readsTheSite() {
        Site site = plans.sites().get(0);
        assertEquals("Gorsewell Dingle", site.name());
        assertEquals("A wooded dingle in the hills", site.publicName());
        assertEquals(180, site.elevationM());
        assertEquals(ZoneId.of("Europe/London"), site.zone());
        assertEquals(List.of(new SkylinePoint(0, 14), new SkylinePoint(90, 6), new SkylinePoint(180, 11),
                new SkylinePoint(270, 17)), site.skyline());
        assertEquals(new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.HALF_LEAF, 18.0), site.canopy());
        assertEquals(3, site.spots().size());
        assertEquals(Foliage.Stage.BUD_BURST, site.canopyAt(site.spot("Footbridge")).foliage());
        assertEquals(18.0, site.canopyAt(site.spot("Footbridge")).heightM());
        assertEquals(new Slope(15, 225), site.spot("Stone bank").slope());
        assertEquals(12, site.spot("Stone bank").clearingRadiusM());
        assertEquals(Duration.ofMinutes(9), site.walks().get(0).duration());
        assertEquals(LocalTime.of(20, 0), site.opening().to());
        assertEquals("none", site.parking().fee());
        Season season = site.seasons().get(0);
        assertEquals("ramsons", season.subject());
        assertEquals(LocalDate.of(2024, 4, 29), season.records().get(1).full());
        assertEquals(new Temperatures("gorsewell-daily-means.csv", List.of(
                new Temperatures.Day(LocalDate.of(2027, 1, 1), 4.2), new Temperatures.Day(LocalDate.of(2027, 1, 2), 5.1))),
                season.temperatures());
        assertEquals(Season.Stage.IN_BUD, season.seen().get(0).stage());
        assertEquals(true, site.sensitive());
        assertEquals(1, site.cautions().size());
    }

    @Test
    void readsTheBag() {
        Bag bag = plans.bags().get(0);
        assertEquals(2, bag.bodies().size());
        var body = bag.bodies().get(0);
        assertEquals(Sensor.FULL_FRAME, body.sensor());
        assertEquals(24, body.pixelsMpx());
        assertEquals(3, body.stabilisedStops());
        assertEquals(28, body.rawSizeMb());
        assertEquals(400, body.batteryFrames());
        var main = bag.bodies().get(1).fixedLenses().get(0);
        assertEquals(new Sensor(9.8, 7.3), main.sensor());
        assertEquals(6.9, main.shortestMm());
        assertEquals(1.8, main.widestShort());
        var zoom = bag.lenses().get(0);
        assertEquals(24, zoom.shortestMm());
        assertEquals(70, zoom.longestMm());
        assertEquals(0.38, zoom.closestM(), EXACT);
        assertEquals(0.3, zoom.magnification());
        assertEquals(72, zoom.threadMm());
        assertEquals(Support.Kind.TRIPOD, bag.supports().get(0).kind());
        assertEquals(0.12, bag.supports().get(0).lowestM(), EXACT);
        assertEquals(6, bag.supports().get(0).carriesKg(), EXACT);
        assertEquals(1350, bag.supports().get(0).weightG(), EXACT);
        assertEquals(Filter.Kind.POLARISER, bag.filters().get(0).kind());
        assertEquals(1.5, bag.filters().get(0).lossStops());
        assertEquals(72, bag.filters().get(1).filterThreadMm());
        assertEquals(true, bag.remoteRelease());
        assertEquals(List.of(64.0, 64.0), bag.cardsGb());
        assertEquals(2, bag.batteries());
        assertEquals(200, bag.extras().get(0).weightG());
    }
}
