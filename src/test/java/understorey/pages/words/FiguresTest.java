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

class FiguresTest {

    @Property
    void theLastBitsOfASumNeverDecideOnARoundingEdge(@ForAll @IntRange(min = -100_000, max = 100_000) int edge) {
        double exact = (edge + 0.5) / 100;
        BigDecimal rounded = Figures.altitudeDeg(exact);
        assertEquals(rounded, Figures.altitudeDeg(Math.nextUp(Math.nextUp(exact))));
        assertEquals(rounded, Figures.altitudeDeg(Math.nextDown(Math.nextDown(exact))));
    }

    @Property
    void movesNoFigureByMoreThanHalfItsLastDigit(
            @ForAll @DoubleRange(min = -400, max = 400) @Scale(7) double value) {
        assertEquals(value, Figures.altitudeDeg(value).doubleValue(), 0.00500001);
        assertEquals(value, Figures.lensDeg(value).doubleValue(), 0.0500001);
        assertEquals(value, Figures.magnification(value).doubleValue(), 0.0000500001);
    }

    @Property
    void givesDistancesFourDigitsButNoneFinerThanATenthOfAMillimetre(
            @ForAll @DoubleRange(min = 0.01, max = 100_000) @Scale(7) double metres) {
        BigDecimal rounded = Figures.metres(metres);
        assertTrue(rounded.scale() <= 4, rounded.toString());
        assertEquals(metres, rounded.doubleValue(), Math.max(0.000050001, metres * 0.00050001));
    }

    @Test
    void roundsEachKindAsItSays() {
        assertEquals("12.35", Figures.altitudeDeg(12.345).toPlainString());
        assertEquals("-12.35", Figures.altitudeDeg(-12.345).toPlainString());
        assertEquals("0.01667", Figures.seconds(1 / 60.0).toPlainString());
        assertEquals("0.000125", Figures.seconds(1 / 8000.0).toPlainString());
        assertEquals("2.5", Figures.metres(2.5).toPlainString());
        assertEquals("17.26", Figures.metres(17.2567).toPlainString());
        assertEquals("0.0453", Figures.metres(0.04526).toPlainString());
        assertEquals("5.6", Figures.ratio(5.6).toPlainString());
        assertEquals("1350", Figures.grams(1349.5).toPlainString());
        assertEquals("0", Figures.ev100(-0.04).toPlainString());
    }

    @Test
    void keepsBearingsBelowTheFullCircle() {
        assertEquals("0", Figures.azimuthDeg(359.996).toPlainString());
        assertEquals("359.99", Figures.azimuthDeg(359.994).toPlainString());
        assertEquals("0", Figures.phaseDeg(359.97).toPlainString());
    }

    @Test
    void isAbsentForTheHorizonAndForWhatIsNotKnown() {
        assertNull(Figures.metres(Double.POSITIVE_INFINITY));
        assertNull(Figures.ev100(null));
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
