package understorey.optics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CircleOfConfusionTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/circle-of-confusion.csv")
    void isAFifteenHundredthOfTheDiagonal(double widthMm, double heightMm, double circleMm) {
        assertEquals(circleMm, CircleOfConfusion.mm(widthMm, heightMm), 0.00005);
    }

    /** 0.2 mm at 25 cm (Ray 2000, p. 52) is 0.48 mm from an arm's length of 60 cm, over an enlargement of 100 / 3. */
    @Test
    void shrinksForAPrintThatPeopleStepUpTo() {
        assertEquals(0.48 / (1200 / 36.0), CircleOfConfusion.mm(36, 24, 1200), 1e-12);
        assertEquals(CircleOfConfusion.mm(36, 24), CircleOfConfusion.mm(36, 24, 300));
    }
}
