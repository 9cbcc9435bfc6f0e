package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.spot;
import static understorey.Samples.walk;

import java.time.Duration;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.Samples;
import understorey.plan.Position;
import understorey.plan.Spot;
import understorey.plan.Walk;

class WalkingTest {

    private static final double PROGRAMS_RADIUS_M = 6_371_000;
    private static final double MEAN_RADIUS_M = 6_371_008.8;

    private static Walking among(List<Spot> spots, Walk... walks) {
        return new Walking(Samples.wood(spots, List.of(walks), null, null));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/haversine.csv")
    void measuresGreatCircles(double latitudeA, double longitudeA, double latitudeB, double longitudeB, double metres) {
        double measured = Walking.metres(new Position(latitudeA, longitudeA), new Position(latitudeB, longitudeB));
        assertEquals(metres * MEAN_RADIUS_M / PROGRAMS_RADIUS_M, measured, 0.001);
    }

    /** The sphere is enough for a walk; the worst row is 0.35 % off. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/geodesics.csv")
    void isWithinHalfAPercentOfTheEllipsoid(double latitudeA, double longitudeA, double latitudeB, double longitudeB, double metres) {
        double measured = Walking.metres(new Position(latitudeA, longitudeA), new Position(latitudeB, longitudeB));
        assertEquals(metres, measured, 0.004 * metres);
        assertEquals(measured, Walking.metres(new Position(latitudeB, longitudeB), new Position(latitudeA, longitudeA)), 1e-6);
    }

    /** Vincenty's own method finds no end here: nearly opposite points. */
    @Test
    void measuresNearlyOppositePoints() {
        assertEquals(Math.PI * MEAN_RADIUS_M, Walking.metres(new Position(0, 0), new Position(0.5, 179.7)), 0.005 * Math.PI * MEAN_RADIUS_M);
    }

    @Test
    void goesByTheAuthorsTimesEitherWayAndByWayOfOtherSpots() {
        Walking walking = new Walking(Samples.wood());
        assertEquals(Duration.ofMinutes(9), walking.between("Gate", "Footbridge", false));
        assertEquals(Duration.ofMinutes(9), walking.between("Footbridge", "Gate", false));
        assertEquals(Duration.ofMinutes(15), walking.between("Gate", "Bank", false));
        assertEquals(Duration.ofMinutes(15), walking.between("Bank", "Gate", false));
        assertEquals(Duration.ZERO, walking.between("Bank", "Bank", true));
        assertEquals(Duration.ZERO, walking.between(null, null, true));
    }

    @Test
    void takesTheShortestOfSeveralTravelTimes() {
        List<Spot> spots = List.of(spot("A", null, null, null), spot("B", null, null, null), spot("C", null, null, null));
        Walking walking = among(spots, walk("A", "C", 20), walk("A", "B", 4), walk("B", "C", 5));
        assertEquals(Duration.ofMinutes(9), walking.between("A", "C", false));
    }

    /** A degree of latitude is 111.195 km; on the flat 5.0367 km/h × 0.85 over 1.3 times the line (common practice). */
    @Test
    void estimatesFromPositionsWhereNobodyTimedTheWalk() {
        Walking walking = among(List.of(spot("A", 52.0, -3.5, null), spot("B", 52.01, -3.5, null)));
        double minutes = 1.11195 * 1.3 / (5.0367 * 0.85) * 60;
        assertEquals(Math.ceil(minutes), walking.between("A", "B", false).toMinutes());
    }

    /** Level ground: Naismith's 5 km/h is nearly Tobler's 5.04, the Swiss formula has 4.2 km/h, Irmischer and Clarke 3.95. */
    @Test
    void takesAsLongAsTheFunctionSays() {
        Walking walking = among(List.of(spot("A", 52.0, -3.5, null), spot("B", 52.01, -3.5, null)));
        double km = 1.11195 * 1.3;
        assertEquals(Math.ceil(km / (5 * 0.85) * 60), walking.between("A", "B", false, Pace.LANGMUIR).toMinutes());
        assertEquals(Math.ceil(km / (3.9463 * 0.85) * 60), walking.between("A", "B", false, Pace.IRMISCHER_CLARKE).toMinutes());
        assertEquals(Duration.ofMinutes(9), new Walking(Samples.wood()).between("Gate", "Footbridge", false, Pace.SWISS));
    }

    @Test
    void walksSlowerUphillThanDown() {
        Walking walking = among(List.of(spot("Low", 52.0, -3.5, 100.0), spot("High", 52.01, -3.5, 250.0)));
        assertTrue(walking.between("Low", "High", false).compareTo(walking.between("High", "Low", false)) > 0);
    }

    @Test
    void takesTheGroundForLevelWhereAHeightIsUnknown() {
        Walking known = among(List.of(spot("A", 52.0, -3.5, 400.0), spot("B", 52.01, -3.5, 400.0)));
        Walking half = among(List.of(spot("A", 52.0, -3.5, 400.0), spot("B", 52.01, -3.5, null)));
        assertEquals(known.between("A", "B", false), half.between("A", "B", false));
    }

    @Test
    void windsUpACliff() {
        Walking walking = among(List.of(spot("Foot", 52.0, -3.5, 0.0), spot("Top", 52.00001, -3.5, 100.0)));
        double minutes = 0.2 / (Pace.TOBLER.kmH(0.5) * 0.85) * 60;
        assertEquals(Math.ceil(minutes), walking.between("Foot", "Top", false).toMinutes());
    }

    @Test
    void doesNotKnowAWalkWithoutTimesOrPositions() {
        Walking walking = among(List.of(spot("A", 52.0, -3.5, null), spot("B", null, null, null)));
        assertNull(walking.between("A", "B", false));
        assertNull(walking.between(null, "B", false));
        assertEquals(Duration.ZERO, walking.between(null, "A", false));
    }

    /** By head torch at seven tenths of the pace: common practice, no source. */
    @Test
    void walksSlowerInTheDark() {
        assertEquals(Duration.ofMinutes(13), new Walking(Samples.wood()).between("Gate", "Footbridge", true));
    }

    @Property(tries = 200)
    void isNeverQuickerInTheDarkOrUphill(@ForAll @DoubleRange(min = -0.02, max = 0.02) double north,
            @ForAll @DoubleRange(min = -0.02, max = 0.02) double east,
            @ForAll @DoubleRange(min = 0, max = 500) double rise) {
        Walking walking = among(List.of(spot("A", 52.0, -3.5, 100.0), spot("B", 52 + north, -3.5 + east, 100 + rise)));
        Duration day = walking.between("A", "B", false);
        assertTrue(day.compareTo(walking.between("A", "B", true)) <= 0);
        assertTrue(day.compareTo(walking.between("B", "A", false)) >= 0);
        assertEquals(0, day.toSeconds() % 60);
    }
}
