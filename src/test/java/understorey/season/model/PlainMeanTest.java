package understorey.season.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PlainMeanTest {

    /**
     * Worked by hand: 118, 124, 127, 131 have the mean 125 and s² = (49 + 1 + 4 + 36)/3 = 30; s√(1 + 1/4) = 6.1237;
     * t for 3 degrees of freedom and 80 % is 1.6377 (printed tables).
     */
    @Test
    void foretellsANewYearAsWorkedByHand() {
        PlainMean mean = PlainMean.of(new double[] {118, 124, 127, 131});
        assertEquals(125, mean.mean());
        assertEquals(Math.sqrt(30), mean.deviation(), 1e-12);
        assertEquals(125 - 1.6377 * 6.1237, mean.next().range(0.8).low(), 0.001);
        assertEquals(125 + 1.6377 * 6.1237, mean.next().range(0.8).high(), 0.001);
    }

    /** Years that differ more never give a narrower range. */
    @Property
    void isNeverSurerOfMoreVariableYears(@ForAll @Size(min = 2, max = 12) double[] noise,
            @ForAll @DoubleRange(min = 1, max = 5) double more) {
        double[] calm = new double[noise.length];
        double[] wild = new double[noise.length];
        for (int i = 0; i < noise.length; i++) {
            calm[i] = 120 + Math.IEEEremainder(noise[i], 20);
        }
        double mean = PlainMean.mean(calm);
        for (int i = 0; i < noise.length; i++) {
            wild[i] = mean + more * (calm[i] - mean);
        }
        Prediction.Range narrow = PlainMean.of(calm).next().range(0.8);
        Prediction.Range wide = PlainMean.of(wild).next().range(0.8);
        assertTrue(wide.high() - wide.low() >= narrow.high() - narrow.low() - 1e-9);
    }
}
