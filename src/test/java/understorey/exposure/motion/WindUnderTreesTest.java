package understorey.exposure.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.light.illuminance.CanopyLight;
import understorey.plan.Canopy;
import understorey.plan.Edge;
import understorey.plan.Foliage;

class WindUnderTreesTest {

    private static final LocalDate SUMMER = LocalDate.of(2027, 7, 1);
    private static final Canopy LEAFED = new Canopy(Canopy.Trees.DECIDUOUS, new Foliage.Index(4), 20.0);

    private static double share(Double clearingM, Edge... edges) {
        return WindUnderTrees.shareAt2M(CanopyLight.of(LEAFED, clearingM, List.of(edges), SUMMER));
    }

    /** A leafed interior has 0.12, a windward edge 0.45, a small glade 0.10: common practice, no source. */
    @Test
    void isAsInTheTableOfStands() {
        assertEquals(0.12, share(null), 1e-9);
        assertEquals(0.45, share(null, new Edge(270, 0)), 1e-9);
        assertEquals(0.10, share(20.0), 1e-9);
    }

    /**
     * Davies-Colley and others 2000: 0.20 of the wind in the open is left deep inside, and 0.577, 0.378 and 0.240 at 10, 20 and 40 m. The part
     * of the edge above the interior falls off the same way here.
     */
    @ParameterizedTest
    @CsvSource({"10, 0.577", "20, 0.378", "40, 0.240"})
    void fallsOffFromAnEdgeAsMeasured(double distanceM, double measured) {
        assertEquals((measured - 0.20) / 0.80, (share(null, new Edge(270, distanceM)) - 0.12) / (0.45 - 0.12), 0.001);
    }

    /** Swanson 1980: a clearing 20 heights wide has about the wind of the open. */
    @Test
    void growsWithAClearing() {
        assertEquals(share(20.0), share(60.0), 1e-9, "six heights wide");
        assertTrue(share(100.0) > share(60.0) && share(100.0) < share(200.0));
        assertEquals(0.64, share(200.0), 1e-9, "twenty heights wide");
    }
}
