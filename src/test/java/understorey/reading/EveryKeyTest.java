package understorey.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.plan.Bag;
import understorey.plan.CameraSettings;
import understorey.plan.Canopy;
import understorey.plan.ChosenCamera;
import understorey.plan.Compose;
import understorey.plan.DayWishes;
import understorey.plan.Edge;
import understorey.plan.Filter;
import understorey.plan.Foliage;
import understorey.plan.Display;
import understorey.plan.ForecastHour;
import understorey.plan.Lens;
import understorey.plan.Orientation;
import understorey.plan.Sensor;
import understorey.plan.Share;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkylinePoint;
import understorey.plan.Subject;
import understorey.plan.Support;
import understorey.plan.Temperatures;
import understorey.plan.Trip;
import understorey.plan.Viewpoint;
import understorey.plan.When;

/** The keys and units that the examples of the format leave out. */
class EveryKeyTest {

    private static final double EXACT = 1e-12;
    private final Plans plans = PlansReader.read(Path.of("src", "test", "resources", "every-key", "plans"));
    private final Trip inline = plans.trips().get(0);
    private final Trip ranked = plans.trips().get(1);
    private final Trip wished = plans.trips().get(2);

    @Test
    void findsNothingWrong() {
        assertEquals(List.of(), plans.findings());
    }

    @Test
    void readsDaysToChooseFrom() {
        assertEquals(new When.Between(LocalDate.of(2027, 4, 26), LocalDate.of(2027, 5, 20)), ranked.when());
        assertNull(ranked.arrive());
        assertEquals(Share.Audience.PARTY, ranked.audience());
        assertEquals("Phone", ranked.companions().get(0).gear().bodies().get(0).name());
    }

    @Test
    void readsDaysPickedByHandAndWhatIsWishedOfThem() {
        assertEquals(new When.OneOf(List.of(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 5, 9))), wished.when());
        assertEquals(List.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY), wished.wishes().weekdays());
        assertEquals(List.of(new DayWishes.Stretch(LocalDate.of(2027, 5, 2), LocalDate.of(2027, 5, 2)),
                new DayWishes.Stretch(LocalDate.of(2027, 5, 14), LocalDate.of(2027, 5, 17))), wished.wishes().avoid());
        assertEquals(-1.5, wished.wishes().springWarmerC(), EXACT);
        assertEquals(DayWishes.NONE, inline.wishes());
    }

    @Test
    void readsTheUnitsAndTheClockOfThePages() {
        assertEquals(new Display(Display.UnitSystem.IMPERIAL, Display.Clock.HOURS_12), wished.display());
        assertEquals(Display.USUAL, inline.display());
    }

    @Test
    void readsDailyTemperaturesFromTheirEnds() {
        Temperatures temperatures = ranked.site().seasons().get(0).temperatures();
        assertEquals("wood-means.csv", temperatures.file());
        assertEquals(List.of(LocalDate.of(2026, 3, 1), LocalDate.of(2026, 3, 2), LocalDate.of(2026, 3, 3)),
                temperatures.days().stream().map(Temperatures.Day::date).toList());
        assertEquals(5, temperatures.days().get(0).meanC(), EXACT);
        assertEquals(7.5, temperatures.days().get(1).meanC(), EXACT);
        assertEquals(10, temperatures.days().get(2).meanC(), EXACT);
    }

    @Test
    void readsABagWrittenInATrip() {
        Bag bag = ranked.gear();
        assertNull(bag.slug());
        assertEquals(Sensor.FOUR_THIRDS, bag.bodies().get(0).sensor());
        assertEquals(100, bag.bodies().get(0).baseIso());
        assertEquals(3200, bag.bodies().get(0).topIso());
        Lens lens = bag.lenses().get(0);
        assertEquals(6.3, lens.widestLong());
        assertEquals(22, lens.smallestStop());
        assertEquals(0.9144, lens.closestM(), EXACT);
        assertEquals(63.5, lens.threadMm(), EXACT);
        assertEquals(4, lens.stabilisedStops());
        assertEquals(0.12, lens.breathing(), EXACT);
    }

    @Test
    void readsAForecastFromATableInOrder() {
        ForecastHour five = ranked.forecast().get(0);
        assertEquals(new ForecastHour(LocalDate.of(2027, 5, 1), LocalTime.of(5, 0), 9.0, null, 0.92, null, null, 6.0,
                null, 0.1, null, null), five);
        ForecastHour six = ranked.forecast().get(1);
        assertEquals(10, six.temperatureC(), EXACT);
        assertEquals(5, six.dewPointC(), EXACT);
        assertEquals(3.12928, six.windMs(), EXACT);
        assertEquals(10 * 1852 / 3600.0, six.gustMs(), EXACT);
        assertEquals(6, six.okta(), EXACT);
        assertEquals(2.54, six.rainMm(), EXACT);
        assertEquals(4, six.temperature850C(), EXACT);
        assertEquals(12 * 1852 / 3600.0, six.wind850Ms(), EXACT);
    }

    @Test
    void readsTheAirAloftOfAForecastInTheTrip() {
        assertEquals(List.of(new ForecastHour(null, LocalTime.of(5, 0), null, null, null, null, null, null, null, null,
                4.0, 6.0)), inline.forecast());
    }

    @Test
    void readsTheRestOfAShot() {
        Shot shot = ranked.shots().get(0);
        assertEquals("wood-orchid", shot.subject().key());
        assertEquals(new Viewpoint.Height(0.6096), shot.viewpoint());
        assertEquals(Orientation.PORTRAIT, shot.orientation());
        assertEquals(8, shot.tiltDeg());
        assertEquals(new Compose("leaves", "carpet", "trunks", "lower left", List.of("fallen ash", "the fence")), shot.compose());
        assertEquals(LocalTime.of(6, 10), shot.start());
        assertEquals(0.6, shot.printWidthM(), EXACT);
        assertEquals(22.5, shot.facingDeg());
        assertEquals(0.6, shot.frame().fills(), EXACT);
        assertEquals(0.4572, shot.frame().distanceM(), EXACT);
        assertEquals(new Sharp.Range(0.4064, Double.POSITIVE_INFINITY), shot.sharp());
        assertEquals(false, shot.polariser());
        assertEquals(new ChosenCamera("Small body", "Long"), shot.chosen());
        assertEquals(Duration.ofMinutes(65), shot.duration());
        assertEquals("Go **home**.", shot.otherwise());
        assertEquals(new CameraSettings(6.3, 1 / 250.0, 400, false), shot.set());
        assertEquals("A local orchid", ranked.shots().get(1).after());
        assertEquals(CameraSettings.NONE, ranked.shots().get(1).set());
        assertEquals(2, ranked.shots().get(1).frame().heightM());
        assertEquals(List.of(), ranked.shots().get(1).light());
    }

    @Test
    void readsATiltWithItsDirection() {
        assertEquals(-10, ranked.shots().get(1).tiltDeg());
        assertEquals(20, ranked.shots().get(2).tiltDeg());
    }

    @Test
    void readsOneThingToKeepOutWithoutBrackets() {
        assertEquals(new Compose(null, null, null, null, List.of("bright sky")), ranked.shots().get(1).compose());
    }

    @Test
    void readsASubjectDescribedInAShot() {
        Subject lantern = ranked.shots().get(1).subject();
        assertEquals("marsh-lantern", lantern.key());
        assertEquals(11, lantern.monthFirst());
        assertEquals(2, lantern.monthLast());
        assertTrue(lantern.southern());
        assertEquals(1 / 0.09290304, lantern.stemsPerM2().sparse(), EXACT);
        assertEquals(0.2032, lantern.heightLowM(), EXACT);
        assertEquals(new Subject.AreaIndex(0.02, 0.08), lantern.flowerAreaIndex());
        assertEquals(Subject.Reflectance.YELLOW, lantern.reflectance());
        assertEquals("Stay on the boards.", lantern.care());
        Subject sedge = ranked.shots().get(2).subject();
        assertEquals("sedge", sedge.key());
        assertNull(sedge.flowerAreaIndex());
        assertNull(sedge.heightM());
    }

    @Test
    void readsTheRestOfASite() {
        Site site = ranked.site();
        assertEquals(179.832, site.elevationM(), EXACT);
        assertEquals(List.of(new SkylinePoint(22.5, -2), new SkylinePoint(270, 17)), site.skyline());
        assertEquals(new Foliage.LeafOut(LocalDate.of(2027, 4, 28)), site.canopy().foliage());
        assertEquals(Canopy.Trees.MIXED, site.canopy().trees());
        assertEquals("DE", site.country());
        assertEquals(List.of(new Edge(22.5, 91.44), new Edge(270, 40)), site.edges());
        assertEquals(List.of(), site.spot("Hide").edges());
        assertEquals(List.of(new Edge(180, 1000)), site.spot("Dam").edges());
        assertEquals(120, site.spot("Hide").elevationM());
        assertEquals("Mind the step.", site.spot("Hide").notes());
        assertEquals(List.of(), site.skylineAt(site.spot("Hide")));
        assertNull(site.parking().spot());
        assertNull(site.opening());
        assertEquals("wood-orchid", site.seasons().get(0).subject());
        assertNull(site.seasons().get(0).records().get(1).first());
        assertEquals(1, site.subjects().size());
        assertFalse(site.sensitive());
        assertEquals("| a | table |\n|---|-------|\n", site.notes());
    }

    /** 1 acre = 4046.8564224 m² (international yard, 1959). */
    @Test
    void readsTheTreesOfASiteAndOfASpot() {
        Canopy canopy = ranked.site().canopy();
        assertEquals(6.096, canopy.baseM(), EXACT);
        assertEquals(300, canopy.stemsPerHa(), EXACT);
        assertEquals(0.35, canopy.stemDiameterM(), EXACT);
        Canopy dam = ranked.site().canopyAt(ranked.site().spot("Dam"));
        assertEquals(6.096, dam.baseM(), EXACT);
        assertEquals(100 / 0.40468564224, dam.stemsPerHa(), 1e-9);
    }

    @Test
    void givesASiteInATripAPageOfItsOwn() {
        assertEquals("testing-wood-inline", inline.site().slug());
        assertEquals("testing-wood", ranked.site().slug());
        assertEquals(new Foliage.Index(2.1), inline.site().canopy().foliage());
        assertTrue(inline.site().canopyAt(inline.site().spot("Log")).isNone());
    }

    @Test
    void readsTheRestOfABag() {
        Bag bag = plans.bags().get(0);
        assertEquals("rest", bag.slug());
        assertEquals(Sensor.ONE_INCH, bag.bodies().get(0).sensor());
        Lens zoom = bag.bodies().get(1).fixedLenses().get(0);
        assertEquals(new Sensor(7.6, 5.7), zoom.sensor());
        assertEquals(110, zoom.longestMm());
        assertTrue(zoom.builtIn());
        assertEquals(20, bag.bodies().get(1).rawSizeMb(), EXACT);
        assertEquals(Support.Kind.BEANBAG, bag.supports().get(1).kind());
        assertEquals(4.5359237, bag.supports().get(2).carriesKg(), EXACT);
        assertEquals(Filter.Kind.NEUTRAL_DENSITY, bag.filters().get(0).kind());
        assertEquals(3, bag.filters().get(1).dioptres());
        assertEquals(25, bag.filters().get(2).lengthMm());
        assertEquals(List.of(128.0), bag.cardsGb());
        assertEquals(0, bag.batteries());
        assertNull(bag.extras().get(0).weightG());
    }
}
