package understorey.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class LengthsTest {

    @Test
    void changesItsUnitWithTheLength() {
        assertEquals("6.3\u00a0mm", Lengths.of(0.0063));
        assertEquals("63\u00a0mm", Lengths.of(0.063));
        assertEquals("40\u00a0cm", Lengths.of(0.4));
        assertEquals("7.3\u00a0m", Lengths.of(7.3));
        assertEquals("the horizon", Lengths.of(Double.POSITIVE_INFINITY));
    }

    @Test
    void writesOneSignAndOneUnit() {
        assertEquals("−99\u00a0mm", Lengths.of(-0.099));
        assertEquals("−3.2\u00a0mm", Lengths.of(-0.00321));
        assertEquals("−1.0\u00a0m", Lengths.of(-0.9995));
        assertEquals("0.0\u00a0mm", Lengths.of(-0.00001));
    }
}
