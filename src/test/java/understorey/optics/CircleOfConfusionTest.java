package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CircleOfConfusionTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/circle-of-confusion.csv")
    void isAFifteenHundredthOfTheDiagonal(double widthMm, double heightMm, double circleMm) {
        assertEquals(circleMm, CircleOfConfusion.mm(widthMm, heightMm), 0.00005);
    }
}
