package understorey.yaml.value;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BearingTest {

    /** The 32 points are 11.25° apart, clockwise from north (The Mariner's Compass; from memory). */
    @ParameterizedTest
    @CsvSource({"N, 0", "NbE, 11.25", "NNE, 22.5", "NEbN, 33.75", "NE, 45", "NEbE, 56.25", "ENE, 67.5", "EbN, 78.75",
        "E, 90", "SE, 135", "SSE, 157.5", "S, 180", "SWbS, 213.75", "SW, 225", "WbS, 258.75", "W, 270", "WbN, 281.25",
        "NW, 315", "NbW, 348.75", "ene, 67.5", "0, 0", "65, 65", "65.5°, 65.5", "360, 0"})
    void readsPointsAndDegrees(String written, double degrees) {
        assertEquals(degrees, Bearing.read(written).value());
    }

    @Test
    void knowsThirtyTwoPoints() {
        assertEquals(32, Bearing.POINTS.stream().distinct().count());
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "361", "north", "NEN", "65 m", "", "NaN"})
    void refusesTheRest(String written) {
        assertNull(Bearing.read(written).value());
        assertNotNull(Bearing.read(written).fault());
    }

    @Test
    void suggestsThePointThatWasMeant() {
        assertEquals("did you mean 'ENE'?", Bearing.read("ENN").help());
    }
}
