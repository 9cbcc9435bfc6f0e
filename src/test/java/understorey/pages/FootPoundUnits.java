package understorey.pages;

import understorey.advice.Measure;
import understorey.pages.words.Units;
import understorey.pages.words.Words;

/** Feet, inches, pounds, degrees Fahrenheit and miles per hour: a second set of units, which is this class alone. */
final class FootPoundUnits implements Units {

    private static final double FOOT_M = 0.3048;
    private static final double MILE_M = 1609.344;
    private static final double INCH_MM = 25.4;
    private static final double POUND_G = 453.59237;
    private static final double MPH_MS = 0.44704;

    @Override
    public String figure(double value, Measure measure) {
        return switch (measure) {
            case METRES -> Math.abs(value) < FOOT_M ? Words.tenths(value * 1000 / INCH_MM) + "\u00a0in" : Words.tenths(value / FOOT_M) + "\u00a0ft";
            case WHOLE_METRES -> Words.number(value / FOOT_M, 0) + "\u00a0ft";
            case WALK_METRES -> value < MILE_M / 4 ? Words.number(value / FOOT_M, 0) + "\u00a0ft" : Words.tenths(value / MILE_M) + "\u00a0miles";
            case GRAMS -> Words.tenths(value / POUND_G) + "\u00a0lb";
            case KILOGRAMS -> Words.tenths(value * 1000 / POUND_G) + "\u00a0lb";
            default -> plain(value, measure) + "\u00a0" + unit(measure);
        };
    }

    @Override
    public String unit(Measure measure) {
        return switch (measure) {
            case METRES_PER_SECOND, WIND -> "mph";
            case CELSIUS, CELSIUS_APART -> "°F";
            case RAIN, PLANT_HEIGHT -> "in";
            case STEM_DENSITY -> "stems per ft²";
            default -> throw new IllegalArgumentException(measure.name());
        };
    }

    @Override
    public String plain(double value, Measure measure) {
        return switch (measure) {
            case CELSIUS -> Words.number(32 + value * 1.8, 0);
            case CELSIUS_APART -> Words.tenths(value * 1.8);
            case METRES_PER_SECOND, WIND -> Words.number(value / MPH_MS, 0);
            case RAIN -> Words.number(value / INCH_MM, 2);
            case PLANT_HEIGHT -> Words.number(value * 1000 / INCH_MM, 0);
            case STEM_DENSITY -> Words.tenths(value * FOOT_M * FOOT_M);
            default -> throw new IllegalArgumentException(measure.name());
        };
    }
}
