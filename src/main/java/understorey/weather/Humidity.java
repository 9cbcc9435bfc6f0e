package understorey.weather;

/**
 * Water vapour in air over liquid water. Magnus's formula with the constants of Alduchov and Eskridge 1996, J. Appl.
 * Meteorol. 35: 601, within 0.25 % of the Goff-Gratch tables from 0 to 25 °C; over ice it reads too high.
 */
final class Humidity {

    private static final double MAGNUS_HPA = 6.1094;
    private static final double MAGNUS_A = 17.625;
    private static final double MAGNUS_B_C = 243.04;

    private Humidity() {
    }

    /** Vapour pressure of saturated air, hPa, at a temperature in °C above −243. */
    static double saturationHpa(double temperatureC) {
        return MAGNUS_HPA * Math.exp(MAGNUS_A * temperatureC / (MAGNUS_B_C + temperatureC));
    }

    /** Temperature, °C, at which air of a relative humidity above 0 and up to 1 is saturated. */
    static double dewPointC(double temperatureC, double humidity) {
        double gamma = Math.log(humidity) + MAGNUS_A * temperatureC / (MAGNUS_B_C + temperatureC);
        return MAGNUS_B_C * gamma / (MAGNUS_A - gamma);
    }

    /** Relative humidity, 0 to 1, of air with a dew point that is not above its temperature, both °C. */
    static double relative(double temperatureC, double dewPointC) {
        return saturationHpa(dewPointC) / saturationHpa(temperatureC);
    }
}
