package understorey.light.illuminance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import understorey.light.WhiteBalance.Lit;

/** The lists disagree by 20 %, so order and ranges are held. */
class ColourTemperatureTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/daylight-colour.csv")
    void liesWithinThePublishedRange(String light, double altitudeDeg, Lit lit, double okta, int fromK, int toK) {
        int kelvin = lit == Lit.SUN ? ColourTemperature.kelvin(altitudeDeg, okta) : ColourTemperature.shadeKelvin(altitudeDeg, okta);
        assertEquals(Math.max(fromK, Math.min(toK, kelvin)), kelvin, 50, light);
    }

    /** Trilux lighting handbook: sunset 3000 K; Provita glossary: midday sun 5100 to 5400 K; three lists: blue sky 9900 to 11 500 K. */
    @Test
    void keepsWithinThePublishedRanges() {
        assertEquals(3000, ColourTemperature.kelvin(0, 0));
        assertTrue(ColourTemperature.kelvin(60, 0) >= 5100 && ColourTemperature.kelvin(60, 0) <= 5400);
        assertTrue(ColourTemperature.kelvin(-6, 0) >= 9900 && ColourTemperature.kelvin(-6, 0) <= 11_500);
        assertTrue(ColourTemperature.kelvin(40, 8) >= 5900 && ColourTemperature.kelvin(40, 8) <= 7000);
    }

    @Test
    void keepsThePublishedOrder() {
        int sunset = ColourTemperature.kelvin(0.2, 0);
        int noon = ColourTemperature.kelvin(50, 0);
        int overcast = ColourTemperature.kelvin(50, 8);
        int blueSky = ColourTemperature.kelvin(-5, 0);
        assertTrue(sunset < noon && noon < overcast && overcast < blueSky);
    }

    @Test
    void movesInStepsOfFiftyAndNeverLeaps() {
        for (double okta = 0; okta <= 8; okta++) {
            for (double h = -20; h < 90; h += 0.01) {
                int kelvin = ColourTemperature.kelvin(h, okta);
                assertEquals(0, kelvin % 50);
                assertEquals(kelvin, ColourTemperature.kelvin(h + 0.01, okta), 50);
            }
        }
    }
}
