package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.ZonedDateTime;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import understorey.advice.Measure;

class FiguresTest {

    @Property
    void theLastBitsOfASumNeverDecideOnARoundingEdge(@ForAll @IntRange(min = -100_000, max = 100_000) int edge) {
        double exact = (edge + 0.5) / 100;
        BigDecimal rounded = Figures.of(exact, Measure.ALTITUDE);
        assertEquals(rounded, Figures.of(Math.nextUp(Math.nextUp(exact)), Measure.ALTITUDE));
        assertEquals(rounded, Figures.of(Math.nextDown(Math.nextDown(exact)), Measure.ALTITUDE));
    }

    @Property
    void movesNoFigureByMoreThanHalfItsLastDigit(
            @ForAll @DoubleRange(min = -400, max = 400) @Scale(7) double value) {
        assertEquals(value, Figures.of(value, Measure.ALTITUDE).doubleValue(), 0.00500001);
        assertEquals(value, Figures.of(value, Measure.DEGREES).doubleValue(), 0.0500001);
        assertEquals(value, Figures.of(value, Measure.MAGNIFICATION).doubleValue(), 0.0000500001);
    }

    @Property
    void givesDistancesFourDigitsButNoneFinerThanATenthOfAMillimetre(
            @ForAll @DoubleRange(min = 0.01, max = 100_000) @Scale(7) double metres) {
        BigDecimal rounded = Figures.of(metres, Measure.METRES);
        assertTrue(rounded.scale() <= 4, rounded.toString());
        assertEquals(metres, rounded.doubleValue(), Math.max(0.000050001, metres * 0.00050001));
    }

    @Test
    void roundsEachKindAsItSays() {
        assertEquals("12.35", Figures.of(12.345, Measure.ALTITUDE).toPlainString());
        assertEquals("-12.35", Figures.of(-12.345, Measure.ALTITUDE).toPlainString());
        assertEquals("0.01667", Figures.of(1 / 60.0, Measure.SHUTTER_SECONDS).toPlainString());
        assertEquals("0.000125", Figures.of(1 / 8000.0, Measure.SHUTTER_SECONDS).toPlainString());
        assertEquals("2.5", Figures.of(2.5, Measure.METRES).toPlainString());
        assertEquals("17.26", Figures.of(17.2567, Measure.METRES).toPlainString());
        assertEquals("0.0453", Figures.of(0.04526, Measure.METRES).toPlainString());
        assertEquals("5.6", Figures.of(5.6, Measure.RATIO).toPlainString());
        assertEquals("1350", Figures.of(1349.5, Measure.GRAMS).toPlainString());
        assertEquals("0", Figures.of(-0.04, Measure.EV100).toPlainString());
    }

    @Test
    void keepsBearingsBelowTheFullCircle() {
        assertEquals("0", Figures.of(359.996, Measure.BEARING).toPlainString());
        assertEquals("359.99", Figures.of(359.994, Measure.BEARING).toPlainString());
        assertEquals("0", Figures.of(359.97, Measure.PHASE).toPlainString());
    }

    @Test
    void isAbsentForTheHorizonAndForWhatIsNotKnown() {
        assertNull(Figures.of(Double.POSITIVE_INFINITY, Measure.METRES));
        assertNull(Figures.of(null, Measure.EV100));
    }

    @Test
    void roundsInstantsToTheSecondHalfUpAndOverMidnight() {
        ZonedDateTime time = ZonedDateTime.parse("2027-05-08T23:59:59.5+01:00[Europe/London]");
        assertEquals(ZonedDateTime.parse("2027-05-09T00:00:00+01:00[Europe/London]"), Figures.second(time));
        assertEquals(ZonedDateTime.parse("2027-05-08T23:59:59+01:00[Europe/London]"),
                Figures.second(time.minusNanos(1)));
    }

    /** {@link BigDecimal} on the shortest decimal of the double, rounded half up twice, says the same. */
    @Property(tries = 3000)
    void roundsAsDecimalArithmeticDoes(@ForAll @DoubleRange(min = -99_999, max = 99_999) double value,
                                       @ForAll @IntRange(min = 0, max = 4) int decimals) {
        BigDecimal exact = BigDecimal.valueOf(value).setScale(decimals + 6, RoundingMode.HALF_UP)
                .setScale(decimals, RoundingMode.HALF_UP);
        assertEquals(0, exact.compareTo(Figures.rounded(value, decimals)), () -> value + " to " + decimals);
    }
}
