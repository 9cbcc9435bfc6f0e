package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import understorey.advice.Measure;
import understorey.exposure.scale.StopScale;
import understorey.light.SunDirection;
import understorey.plan.Display;
import understorey.plan.Foliage;
import understorey.plan.LightWish;

class WordsTest {


    @Test
    void marksAperturesAsLensesDo() {
        assertEquals("f/1.4", Words.fNumber(1.4));
        assertEquals("f/2", Words.fNumber(2));
        assertEquals("f/5.6", Words.fNumber(5.6));
        assertEquals("f/8", Words.fNumber(8));
        assertEquals("f/9.5", Words.fNumber(9.5));
        assertEquals("f/10", Words.fNumber(9.96));
        assertEquals("f/11", Words.fNumber(11));
        assertEquals("f/11", Words.fNumber(11.314));
        assertEquals("f/∞", Words.fNumber(Double.POSITIVE_INFINITY));
    }

    @Test
    void marksTimesAsCamerasDo() {
        assertEquals("1/8000 s", spaced(Words.shutter(1 / 8000.0)));
        assertEquals("1/15 s", spaced(Words.shutter(1 / 15.0)));
        assertEquals("1/4 s", spaced(Words.shutter(0.25)));
        assertEquals("0.3 s", spaced(Words.shutter(0.3)));
        assertEquals("0.5 s", spaced(Words.shutter(0.5)));
        assertEquals("1 s", spaced(Words.shutter(1)));
        assertEquals("2.5 s", spaced(Words.shutter(2.5)));
        assertEquals("13 s", spaced(Words.shutter(13)));
        assertEquals("30 s", spaced(Words.shutter(30)));
        assertEquals("50 s", spaced(Words.shutter(50)));
    }

    @Test
    void countsLongTimesInMinutes() {
        assertEquals("59 s", spaced(Words.shutter(59.4)));
        assertEquals("1 min", spaced(Words.shutter(59.97)));
        assertEquals("1 min", spaced(Words.shutter(60)));
        assertEquals("1.5 min", spaced(Words.shutter(90)));
        assertEquals("10 min", spaced(Words.shutter(599)));
        assertEquals("10 min", spaced(Words.shutter(600)));
        assertEquals("43 min", spaced(Words.shutter(2560)));
    }

    @Test
    void readsEveryTimeOfTheScaleBackToItsMarking() {
        for (double marked : List.of(1 / 8000.0, 1 / 1000.0, 1 / 125.0, 1 / 30.0, 1 / 13.0, 1 / 6.0, 0.3, 0.4, 0.6, 0.8,
                1.3, 1.6, 3.2, 6.0, 25.0)) {
            assertEquals(marked, StopScale.snapShutterS(marked), 1e-12);
            String words = Words.shutter(marked).replace("\u00a0s", "");
            double read = words.startsWith("1/") ? 1 / Double.parseDouble(words.substring(2)) : Double.parseDouble(words);
            assertEquals(marked, read, 1e-9);
        }
    }

    @Test
    void givesStopsInThirdsAndHalves() {
        assertEquals("0 stops", spaced(Words.stops(0)));
        assertEquals("0 stops", spaced(Words.stops(-0.1)));
        assertEquals("⅓ stop", spaced(Words.stops(0.3)));
        assertEquals("½ stop", spaced(Words.stops(0.5)));
        assertEquals("⅔ stop", spaced(Words.stops(0.66)));
        assertEquals("1 stop", spaced(Words.stops(0.9)));
        assertEquals("1⅓ stops", spaced(Words.stops(1.3)));
        assertEquals("1½ stops", spaced(Words.stops(1.5)));
        assertEquals("2 stops", spaced(Words.stops(1.95)));
        assertEquals("−½ stop", spaced(Words.stops(-0.5)));
        assertEquals("−1⅓ stops", spaced(Words.stops(-1.3)));
    }

    @Test
    void givesDistancesTheUnitThatFits() {
        assertEquals("4.6 mm", spaced(Units.METRIC.of(0.0046, Measure.METRES)));
        assertEquals("46 mm", spaced(Units.METRIC.of(0.046, Measure.METRES)));
        assertEquals("10 mm", spaced(Units.METRIC.of(0.00996, Measure.METRES)));
        assertEquals("99 mm", spaced(Units.METRIC.of(0.0994, Measure.METRES)));
        assertEquals("10 cm", spaced(Units.METRIC.of(0.0995, Measure.METRES)));
        assertEquals("46 cm", spaced(Units.METRIC.of(0.46, Measure.METRES)));
        assertEquals("99 cm", spaced(Units.METRIC.of(0.9949, Measure.METRES)));
        assertEquals("1.0 m", spaced(Units.METRIC.of(0.995, Measure.METRES)));
        assertEquals("9.9 m", spaced(Units.METRIC.of(9.94, Measure.METRES)));
        assertEquals("10 m", spaced(Units.METRIC.of(9.95, Measure.METRES)));
        assertEquals("40 m", spaced(Units.METRIC.of(40.4, Measure.METRES)));
        assertEquals("−50 cm", spaced(Units.METRIC.of(-0.5, Measure.METRES)));
        assertEquals("−2.0 m", spaced(Units.METRIC.of(-2, Measure.METRES)));
        assertEquals("the horizon", Units.METRIC.of(Double.POSITIVE_INFINITY, Measure.METRES));
    }

    @Property
    void neverShowsADecimalFromTenOn(@ForAll @DoubleRange(min = -12, max = 12) @Scale(9) double value) {
        String words = Words.tenths(value).replace('−', '-');
        assertEquals(Math.abs(Double.parseDouble(words)) < 10, words.contains("."), words);
        assertEquals(value, Double.parseDouble(words), 0.5);
    }

    @Test
    void writesNegativeFiguresWithAMinusAndNoughtWithout() {
        assertEquals("−3.2", Words.number(-3.2, 1));
        assertEquals("0", Words.number(-0.4, 0));
        assertEquals("EV −2.5", spaced(of(-2.5, Measure.EV100)));
        assertEquals("−6°", Words.degrees(-6));
    }

    @Test
    void roundsHalfAwayFromNought() {
        assertEquals("3", Words.number(2.5, 0));
        assertEquals("−3", Words.number(-2.5, 0));
        assertEquals("0.3", Words.number(0.25, 1));
    }

    @Test
    void saysWhenAShareIsUnderOnePercent() {
        assertEquals("0 %", spaced(Words.percent(0)));
        assertEquals("under 1 %", spaced(Words.percent(0.0001)));
        assertEquals("under 1 %", spaced(Words.percent(0.0099)));
        assertEquals("1 %", spaced(Words.percent(0.01)));
        assertEquals("46 %", spaced(Words.percent(0.455)));
        assertEquals("100 %", spaced(Words.percent(1)));
    }

    @Test
    void weighsInGramsUpToAKilogram() {
        assertEquals("25 g", spaced(Units.METRIC.of(25, Measure.GRAMS)));
        assertEquals("994 g", spaced(Units.METRIC.of(994, Measure.GRAMS)));
        assertEquals("1.0 kg", spaced(Units.METRIC.of(995, Measure.GRAMS)));
        assertEquals("1.4 kg", spaced(Units.METRIC.of(1350, Measure.GRAMS)));
    }

    @Test
    void givesEveryOtherMeasureItsUnit() {
        assertEquals("ISO 3200", spaced(of(3200, Measure.ISO)));
        assertEquals("9.9 Mpx", spaced(of(9.94, Measure.MEGAPIXELS)));
        assertEquals("10 Mpx", spaced(of(9.96, Measure.MEGAPIXELS)));
        assertEquals("2.0 dpt", spaced(of(2, Measure.DIOPTRES)));
        assertEquals("1.4×", of(1.4, Measure.TIMES));
        assertEquals("10×", of(9.97, Measure.TIMES));
        assertEquals("3.3 m/s", spaced(of(3.33, Measure.METRES_PER_SECOND)));
        assertEquals("5.5 °C", spaced(of(5.5, Measure.CELSIUS)));
        assertEquals("−0.7 °C", spaced(of(-0.705, Measure.CELSIUS)));
        assertEquals("2 okta", spaced(of(2, Measure.OKTA)));
        assertEquals("4.5 okta", spaced(of(4.5, Measure.OKTA)));
        assertEquals("7", of(7, Measure.COUNT));
        assertEquals("2.0 kg", spaced(of(1.96, Measure.KILOGRAMS)));
        assertEquals("25 min", spaced(of(25, Measure.MINUTES)));
        assertEquals("50 mm", spaced(of(50, Measure.MILLIMETRES)));
        assertEquals("30 cm", spaced(of(0.3, Measure.METRES)));
        assertEquals("f/4", of(4, Measure.F_NUMBER));
        assertEquals("1/60 s", spaced(of(1 / 60.0, Measure.SHUTTER_SECONDS)));
        assertEquals("1 stop", spaced(of(1, Measure.STOPS)));
        assertEquals("12 %", spaced(of(0.12, Measure.SHARE)));
        assertEquals("12°", of(12, Measure.DEGREES));
        assertEquals("80 g", spaced(of(80, Measure.GRAMS)));
        assertEquals("6500 K", spaced(of(6500, Measure.KELVIN)));
        assertThrows(IllegalArgumentException.class, () -> of(1, Measure.DAY_OF_YEAR));
    }

    @Test
    void callsAWindByTheForceOfTheSpeedShown() {
        assertEquals("2.0\u00a0m/s, light breeze", of(2, Measure.WIND));
        assertEquals("0.0\u00a0m/s, calm", of(0, Measure.WIND));
        assertEquals("0.2\u00a0m/s, calm", of(0.24, Measure.WIND));
        assertEquals("0.3\u00a0m/s, light air", of(0.26, Measure.WIND));
        assertEquals("3.4\u00a0m/s, gentle breeze", of(3.35, Measure.WIND));
    }

    @Test
    void tellsMinutesInHoursFromAnHourOn() {
        assertEquals("59\u00a0min", of(59, Measure.MINUTES));
        assertEquals("1\u00a0h", of(60, Measure.MINUTES));
        assertEquals("2\u00a0h 1\u00a0min", of(121, Measure.MINUTES));
    }

    @Test
    void holdsFigureAndUnitTogether() {
        for (Measure measure : List.of(Measure.MILLIMETRES, Measure.METRES, Measure.SHUTTER_SECONDS, Measure.ISO,
                Measure.STOPS, Measure.MEGAPIXELS, Measure.DIOPTRES, Measure.SHARE, Measure.EV100,
                Measure.METRES_PER_SECOND, Measure.KELVIN, Measure.CELSIUS, Measure.OKTA, Measure.GRAMS, Measure.KILOGRAMS)) {
            for (double value : List.of(0.02, 0.4, 3.0, 70.0, 2000.0)) {
                String words = of(value, measure);
                assertFalse(words.contains(" "), words);
                assertTrue(words.contains("\u00a0"), words);
            }
        }
    }

    @Test
    void readsClocksToTheMinuteHalfUpAcrossMidnight() {
        assertEquals("05:04", clock(ZonedDateTime.parse("2027-05-08T05:04:29+01:00")));
        assertEquals("05:05", clock(ZonedDateTime.parse("2027-05-08T05:04:30+01:00")));
        assertEquals("00:00", clock(ZonedDateTime.parse("2027-05-08T23:59:30+01:00")));
        assertEquals("—", clock(null));
        assertEquals("06:10", value(LocalTime.of(6, 10), null));
        assertEquals("06:11", value(ZonedDateTime.parse("2027-05-08T06:10:45Z"), null));
    }

    @Test
    void namesDaysAndWordsInFull() {
        assertEquals("Saturday 8 May 2027", Dates.day(LocalDate.of(2027, 5, 8)));
        assertEquals("Sunday 1 August 2027", value(LocalDate.of(2027, 8, 1), null));
        assertEquals("1 August", value(LocalDate.of(2027, 8, 1), Measure.DAY_OF_YEAR));
        assertEquals("April", value(Month.APRIL, null));
        assertEquals("April", Words.name(Month.APRIL));
        assertEquals("half leaf", Words.word(Foliage.Stage.HALF_LEAF));
        assertEquals("Stone bank", value("Stone bank", null));
        assertEquals("top left", value(SunDirection.Part.TOP_LEFT, null));
    }

    /** A light wish on a page is the term of the trade, which is not always the word of the plan. */
    @Test
    void namesEachLightWishInTheTermOfTheTrade() {
        assertEquals(List.of("low sun", "backlight", "sidelight", "front light", "overhead", "soft", "mist", "after rain", "twilight"),
                Arrays.stream(LightWish.values()).map(Words::word).toList());
    }

    @Test
    void takesTheNearestOfSixteenPoints() {
        assertEquals("N", Words.compass(0));
        assertEquals("N", Words.compass(11.2));
        assertEquals("NNE", Words.compass(11.25));
        assertEquals("ENE", Words.compass(67.5));
        assertEquals("NNW", Words.compass(348.7));
        assertEquals("N", Words.compass(348.75));
        assertEquals("N", Words.compass(360));
        assertEquals("NW", Words.compass(-45));
    }

    @Test
    void neverGivesABearingOfAFullTurn() {
        assertEquals("359°", Words.bearing(359.4));
        assertEquals("0°", Words.bearing(359.6));
        assertEquals("0°", Words.bearing(360));
        assertEquals("68°", Words.bearing(67.5));
    }

    private static String clock(ZonedDateTime time) {
        return new ClockWords(Display.USUAL.clock()).of(time);
    }

    private static String value(Object value, Measure measure) {
        return Values.of(Display.USUAL).of(value, measure);
    }

    private static String of(double value, Measure measure) {
        return Units.METRIC.of(value, measure);
    }

    private static String spaced(String words) {
        return words.replace('\u00a0', ' ');
    }
}
