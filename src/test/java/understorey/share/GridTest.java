package understorey.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.plan.Position;
import understorey.plan.Share.Precision;

class GridTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/generalised-positions.csv")
    void roundsToThePublishedCategories(double latitude, double longitude, double latitudeTenth, double longitudeTenth,
                                        double latitudeHundredth, double longitudeHundredth) {
        Position exact = new Position(latitude, longitude);
        assertEquals(new Position(latitudeTenth, longitudeTenth), Grid.TENTH.round(exact));
        assertEquals(new Position(latitudeHundredth, longitudeHundredth), Grid.HUNDREDTH.round(exact));
        assertSame(exact, Grid.EXACT.round(exact));
    }

    /** In binary 1.005 and 0.15 lie below the half; the author wrote the half. */
    @Test
    void roundsTheWrittenHalfAwayFromZero() {
        assertEquals(new Position(1.01, -1.01), Grid.HUNDREDTH.round(new Position(1.005, -1.005)));
        assertEquals(new Position(0.2, -0.2), Grid.TENTH.round(new Position(0.15, -0.15)));
        assertEquals(new Position(90, 180), Grid.TENTH.round(new Position(89.96, 179.96)));
    }

    @Test
    void knowsOnlyTheDegreeOfAHiddenPlace() {
        assertEquals(new Position(52, -4), Grid.DEGREE.round(new Position(52.337, -3.548)));
    }

    @Property
    void keepsNoDigitBeyondTheGridAndMovesByHalfACellAtMost(
            @ForAll @Scale(6) @DoubleRange(min = -90, max = 90) double latitude,
            @ForAll @Scale(6) @DoubleRange(min = -180, max = 180) double longitude) {
        Position exact = new Position(latitude, longitude);
        Grid[] grids = {Grid.DEGREE, Grid.TENTH, Grid.HUNDREDTH};
        for (int decimals = 0; decimals < grids.length; decimals++) {
            Grid grid = grids[decimals];
            Position told = grid.round(exact);
            assertTrue(BigDecimal.valueOf(told.latitude()).stripTrailingZeros().scale() <= decimals);
            assertTrue(BigDecimal.valueOf(told.longitude()).stripTrailingZeros().scale() <= decimals);
            double halfCell = 0.5 * Math.pow(10, -decimals) + 1e-9;
            assertEquals(latitude, told.latitude(), halfCell);
            assertEquals(longitude, told.longitude(), halfCell);
            assertEquals(told, grid.round(told));
        }
    }

    @Test
    void tellsHeightsToAHundredMetresUnlessExact() {
        assertEquals(200.0, Grid.HUNDREDTH.elevationM(180.0));
        assertEquals(100.0, Grid.TENTH.elevationM(50.0));
        assertEquals(-100.0, Grid.TENTH.elevationM(-50.0));
        assertEquals(183.0, Grid.EXACT.elevationM(183.0));
        assertNull(Grid.TENTH.elevationM(null));
    }

    @Test
    void isCoarserForASensitivePlace() {
        assertEquals(Grid.EXACT, Grid.of(Precision.EXACT, false));
        assertEquals(Grid.HUNDREDTH, Grid.of(Precision.COARSE, false));
        assertEquals(Grid.TENTH, Grid.of(Precision.COARSE, true));
        assertEquals(Grid.TENTH, Grid.of(Precision.HIDDEN, false));
        assertEquals(Grid.DEGREE, Grid.of(Precision.HIDDEN, true));
    }
}
