package understorey.pages.words;

import understorey.advice.Measure;
import understorey.weather.Beaufort;

/** Metres, grams, degrees Celsius. */
final class MetricUnits implements Units {

    @Override
    public String figure(double value, Measure measure) {
        return switch (measure) {
            case METRES, PRINT_WIDTH -> metres(value);
            case WHOLE_METRES -> Words.number(value, 0) + " m";
            case WALK_METRES -> walk(value);
            case SCALE_BAR -> value < 1000 ? Words.number(value, 0) + " m" : Words.number(value / 1000, 0) + " km";
            case METRES_PER_SECOND, CELSIUS, CELSIUS_APART -> Words.number(value, 1) + " " + unit(measure);
            case WIND -> wind(value);
            case GRAMS -> value < 995 ? Words.number(value, 0) + " g" : Words.number(value / 1000, 1) + " kg";
            case KILOGRAMS -> Words.number(value, 1) + " kg";
            default -> plain(value, measure) + " " + unit(measure);
        };
    }

    @Override
    public String unit(Measure measure) {
        return switch (measure) {
            case METRES_PER_SECOND -> "m/s";
            case CELSIUS, CELSIUS_APART -> "°C";
            case RAIN -> "mm";
            case PLANT_HEIGHT -> "cm";
            case STEM_DENSITY -> "stems per m²";
            default -> throw new IllegalArgumentException(measure + " has more than one unit");
        };
    }

    @Override
    public String plain(double value, Measure measure) {
        return switch (measure) {
            case RAIN -> Words.number(value, 1);
            case PLANT_HEIGHT -> Words.number(value * 100, 0);
            case STEM_DENSITY -> value < 0.05 ? "under 0.1" : value == Math.rint(value) ? Words.number(value, 0) : Words.tenths(value);
            default -> Words.tenths(value);
        };
    }

    @Override
    public double scaleUnitM(double longestM) {
        return 1;
    }

    /** Millimetres below 10 cm, centimetres below a metre, a decimal below 10 m. */
    private static String metres(double m) {
        if (Math.abs(m) < 0.0995) {
            return Words.millimetres(m * 1000);
        }
        return Math.abs(m) < 0.995 ? Words.number(m * 100, 0) + " cm" : Words.tenths(m) + " m";
    }

    /** To ten metres, short ways to one, long ones to a hundred. */
    private static String walk(double m) {
        return m < 9.5 ? Words.number(m, 0) + " m" : m < 995 ? Words.number(m / 10, 0) + "0 m" : Words.number(m / 1000, 1) + " km";
    }

    /** With the force of the speed that is shown. */
    private static String wind(double speedMs) {
        return Words.number(speedMs, 1) + " m/s, " + Words.word(Beaufort.of(Figures.rounded(speedMs, 1).doubleValue()));
    }
}
