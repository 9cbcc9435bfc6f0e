package understorey.pages.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.advice.Measure;

/**
 * Figures in feet, pounds and degrees Fahrenheit. Exact factors: the international yard and pound agreement of 1959 (yard 0.9144 m,
 * so inch 25.4 mm and foot 0.3048 m; pound 453.59237 g), and NIST SP 811 (2008), appendix B.8: mile 1609.344 m, mile per hour
 * 0.44704 m/s, ounce 28.34952 g, °F = 1.8 °C + 32.
 */
class ImperialUnitsTest {

    @ParameterizedTest
    @CsvSource({"0.0254, 1.0 in", "0.00254, 0.10 in", "0.000254, 0.010 in", "0.045, 1.8 in", "0.15, 5.9 in", "0.2794, 11 in",
        "0.3048, 1 ft", "0.295, 1 ft", "0.4572, 1 ft 6 in", "0.9144, 3 ft", "1.5, 4 ft 11 in", "1.52, 5 ft", "3.03, 9 ft 11 in",
        "3.0479, 10 ft", "3.048, 10 ft", "12, 39 ft", "40, 131 ft", "304, 997 ft", "304.8, 330 yd", "900, 0.6 miles"})
    void saysDistancesAsAPhotographerDoes(double metres, String words) {
        assertEquals(words, of(metres, Measure.METRES));
    }

    @ParameterizedTest
    @CsvSource({"1, 1 yd", "8.2296, 9 yd", "9.144, 10 yd", "91.44, 100 yd", "283, 310 yd", "795, 870 yd", "804.672, 0.5 miles",
        "1609.344, 1 mile", "4023.36, 2.5 miles"})
    void saysWalksInYardsAndMiles(double metres, String words) {
        assertEquals(words, of(metres, Measure.WALK_METRES));
    }

    @ParameterizedTest
    @CsvSource({"28.34952, 1 oz", "10, 0.4 oz", "198.44664, 7 oz", "340, 12 oz", "453.59237, 1 lb", "440, 1 lb", "680.388, 1 lb 8 oz",
        "4989.5, 11 lb"})
    void saysWeightsInPoundsAndOunces(double grams, String words) {
        assertEquals(words, of(grams, Measure.GRAMS));
        assertEquals(words, of(grams / 1000, Measure.KILOGRAMS));
    }

    /** 0 °C, 100 °C and −40 °C: the two fixed points of the scale, and where both scales meet. */
    @ParameterizedTest
    @CsvSource({"0, 32 °F", "100, 212 °F", "-40, −40 °F", "6, 43 °F", "-18, 0 °F"})
    void saysTemperaturesInWholeDegrees(double celsius, String words) {
        assertEquals(words, of(celsius, Measure.CELSIUS));
    }

    @Test
    void saysDifferencesOfTemperatureWithoutTheOffset() {
        assertEquals("1.8 °F", of(1, Measure.CELSIUS_APART));
        assertEquals("18 °F", of(10, Measure.CELSIUS_APART));
    }

    @ParameterizedTest
    @CsvSource({"0.44704, 1.0 mph", "0.3, 0.7 mph", "4.4704, 10 mph", "10, 22 mph"})
    void saysSpeedsInMilesPerHour(double speedMs, String words) {
        assertEquals(words, of(speedMs, Measure.METRES_PER_SECOND));
    }

    /** Force 3 from 3.4 m/s, force 5 from 8.0 m/s, by the limits in m/s of the World Meteorological Organization. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {"3.4; 7.6 mph, gentle breeze", "3.3; 7.4 mph, light breeze", "8.0; 18 mph, fresh breeze"})
    void namesAWindAsOtherReadersSeeIt(double speedMs, String words) {
        assertEquals(words, of(speedMs, Measure.WIND));
    }

    @ParameterizedTest
    @CsvSource({"25.4, 1.00 in", "0.4, 0.02 in", "0.1, under 0.01 in", "0, 0 in"})
    void saysRainInInches(double millimetres, String words) {
        assertEquals(words, of(millimetres, Measure.RAIN));
    }

    /** A square foot has 0.09290304 m² (NIST SP 811). */
    @ParameterizedTest
    @CsvSource({"100, 9.3 stems per ft²", "10.7639104, 1 stems per ft²", "1, 0.09 stems per ft²", "0.05, under 0.01 stems per ft²"})
    void saysDensitiesForASquareFoot(double perSquareMetre, String words) {
        assertEquals(words, of(perSquareMetre, Measure.STEM_DENSITY));
    }

    @Test
    void keepsWhatTheTradeHasInMillimetres() {
        for (Measure measure : new Measure[] {Measure.MILLIMETRES, Measure.F_NUMBER, Measure.EV100, Measure.KELVIN, Measure.DIOPTRES}) {
            assertEquals(Units.METRIC.of(50, measure), Units.IMPERIAL.of(50, measure));
        }
    }

    @Test
    void saysPrintsInInchesAndLandInFeet() {
        assertEquals("24 in", of(0.6, Measure.PRINT_WIDTH));
        assertEquals("591 ft", of(180, Measure.WHOLE_METRES));
        assertEquals("3 ft 3 in", of(1, Measure.WHOLE_METRES));
        assertEquals("10–18 in", Units.IMPERIAL.plain(0.25, Measure.PLANT_HEIGHT) + "–" + of(0.45, Measure.PLANT_HEIGHT));
        assertEquals("the horizon", of(1001, Measure.FAR_LIMIT));
    }

    @Test
    void countsTheScaleOfADrawingInFeetAndThenInMiles() {
        assertEquals(0.3048, Units.IMPERIAL.scaleUnitM(1609));
        assertEquals(1609.344, Units.IMPERIAL.scaleUnitM(1610));
        assertEquals("500 ft", of(152.4, Measure.SCALE_BAR));
        assertEquals("1 mile", of(1609.344, Measure.SCALE_BAR));
        assertEquals("2 km", Units.METRIC.of(2000, Measure.SCALE_BAR).replace('\u00a0', ' '));
    }

    private static String of(double value, Measure measure) {
        return Units.IMPERIAL.of(value, measure).replace('\u00a0', ' ');
    }
}
