package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class PaceTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/walking-pace.csv")
    void keepsThePublishedPaces(double slope, double tobler, double naismith, double langmuir, double irmischerClarke,
            double swissMinutes, double swiss) {
        assertEquals(tobler, Pace.TOBLER.kmH(slope), 0.0005);
        assertEquals(naismith, Pace.NAISMITH.kmH(slope), 0.0005);
        assertEquals(irmischerClarke, Pace.IRMISCHER_CLARKE.kmH(slope), 0.0005);
        assertEquals(swiss, Pace.SWISS.kmH(slope), 0.0005);
        assertEquals(swissMinutes, 60 / Pace.SWISS.kmH(slope), 0.002);
        assertEquals(langmuir, Pace.LANGMUIR.kmH(slope), 0.0005);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/walking-routes.csv")
    void keepsThePublishedTimesOfWholeRoutes(Pace pace, double one, double two, double three, double four, double total,
            Double climb) {
        assertEquals(one, 60 * 1.5 / pace.kmH(0), 0.01);
        assertEquals(two, 60 * 1.2 / pace.kmH(0.1), 0.01);
        assertEquals(three, 60 * 0.8 / pace.kmH(-0.1), 0.01);
        assertEquals(four, 60 * 0.5 / pace.kmH(-0.3), 0.01);
        assertEquals(total, one + two + three + four, 0.01);
        if (climb != null) {
            assertEquals(climb, 60 * 4 / pace.kmH(0.05), 0.01);
        }
    }

    /** Tobler's maximum is slopely 6 km/h at a slope of −0.05. */
    @Test
    void isFastestAGentleWayDown() {
        assertEquals(6, Pace.TOBLER.kmH(-0.05), 1e-12);
        assertEquals(6 * Math.exp(-0.175), Pace.TOBLER.kmH(0), 1e-12);
    }

    /** Langmuir's rule gives 11 km/h at −11°. */
    @Test
    void holdsNobodyForFasterThanAStroll() {
        assertTrue(Pace.LANGMUIR.kmH(-0.2) > 11);
        for (Pace pace : Pace.values()) {
            for (double slope = -0.5; slope <= 0.5; slope += 0.01) {
                assertTrue(pace.capped(slope) <= 6 && pace.capped(slope) > 0);
            }
        }
    }
}
