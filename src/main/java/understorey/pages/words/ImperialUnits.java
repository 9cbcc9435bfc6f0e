package understorey.pages.words;

import understorey.advice.Measure;
import understorey.weather.Beaufort;

/**
 * Feet and inches, pounds and ounces, degrees Fahrenheit, miles per hour. The yard is 0.9144 m and the pound 0.453 592 37 kg exactly, by
 * the international agreement of 1959; the mile has 1760 yards, and 0 °C is 32 °F (NIST SP 811, appendix B).
 */
final class ImperialUnits implements Units {

    private static final double INCH_M = 0.0254;
    private static final double FOOT_M = 0.3048;
    private static final double YARD_M = 0.9144;
    private static final double MILE_M = 1609.344;
    private static final double OUNCE_G = 453.59237 / 16;
    private static final double MPH_MS = 0.44704;
    private static final int INCHES_A_FOOT = 12;
    private static final int OUNCES_A_POUND = 16;
    /** From there on inches say nothing. */
    private static final double NEAR_M = 10 * FOOT_M;
    /** From there on a distance is as exact as a walk. */
    private static final double FAR_M = 1000 * FOOT_M;

    @Override
    public String figure(double value, Measure measure) {
        return switch (measure) {
            case METRES -> metres(value);
            case WHOLE_METRES -> value < NEAR_M ? metres(value) : feet(value);
            case WALK_METRES -> walk(value);
            case SCALE_BAR -> value < MILE_M ? feet(value) : miles(Words.number(value / MILE_M, 0));
            case PRINT_WIDTH -> Words.number(value / INCH_M, 0) + "\u00a0in";
            case WIND -> plain(value, Measure.METRES_PER_SECOND) + "\u00a0mph, "
                    + Words.word(Beaufort.of(Figures.rounded(value, 1).doubleValue()));
            case GRAMS -> pounds(value);
            case KILOGRAMS -> pounds(value * 1000);
            default -> plain(value, measure) + "\u00a0" + unit(measure);
        };
    }

    @Override
    public String unit(Measure measure) {
        return switch (measure) {
            case METRES_PER_SECOND -> "mph";
            case CELSIUS, CELSIUS_APART -> "°F";
            case RAIN, PLANT_HEIGHT -> "in";
            case STEM_DENSITY -> "stems per ft²";
            default -> throw new IllegalArgumentException(measure + " has more than one unit");
        };
    }

    @Override
    public String plain(double value, Measure measure) {
        return switch (measure) {
            case CELSIUS -> Words.number(32 + value * 1.8, 0);
            case CELSIUS_APART -> Words.tenths(value * 1.8);
            case METRES_PER_SECOND -> Words.tenths(value / MPH_MS);
            case RAIN -> value > 0 ? hundredths(value / 1000 / INCH_M) : "0";
            case PLANT_HEIGHT -> Words.number(value / INCH_M, 0);
            case STEM_DENSITY -> {
                double perFoot = value * FOOT_M * FOOT_M;
                yield perFoot < 0.995 ? hundredths(perFoot) : Words.plain(Words.tenths(perFoot));
            }
            default -> throw new IllegalArgumentException(measure + " has more than one unit");
        };
    }

    @Override
    public double scaleUnitM(double longestM) {
        return longestM < MILE_M ? FOOT_M : MILE_M;
    }

    /** Inches below a foot, feet and inches below ten, whole feet beyond. */
    private static String metres(double m) {
        double size = Math.abs(m);
        long inches = Math.round(size / INCH_M);
        if (inches < INCHES_A_FOOT) {
            return inches(m / INCH_M);
        }
        if (size >= FAR_M) {
            return walk(m);
        }
        if (size >= NEAR_M) {
            return feet(m);
        }
        long over = inches % INCHES_A_FOOT;
        return (m < 0 ? "−" : "") + inches / INCHES_A_FOOT + "\u00a0ft" + (over == 0 ? "" : "\u00a0" + over + "\u00a0in");
    }

    /** To two digits: a close-up is framed to a tenth of an inch, and the steps of its stack are thousandths. */
    private static String inches(double inches) {
        double size = Math.abs(inches);
        return (size < 0.0995 ? Words.number(inches, 3) : size < 0.995 ? Words.number(inches, 2) : Words.tenths(inches)) + "\u00a0in";
    }

    private static String feet(double m) {
        return Words.number(m / FOOT_M, 0) + "\u00a0ft";
    }

    /** To ten yards, short ways to one, from half a mile on in miles. */
    private static String walk(double m) {
        double yards = m / YARD_M;
        return yards < 9.5 ? Words.number(yards, 0) + "\u00a0yd" : yards < 875 ? Words.number(yards / 10, 0) + "0\u00a0yd"
                : miles(Words.number(m / MILE_M, 1));
    }

    private static String miles(String number) {
        String plain = Words.plain(number);
        return plain + (plain.equals("1") ? "\u00a0mile" : "\u00a0miles");
    }

    /** Ounces below a pound, to a tenth where they are few. */
    private static String pounds(double g) {
        long ounces = Math.round(g / OUNCE_G);
        if (ounces < OUNCES_A_POUND) {
            return Words.plain(Words.tenths(g / OUNCE_G)) + "\u00a0oz";
        }
        long over = ounces % OUNCES_A_POUND;
        return ounces / OUNCES_A_POUND + "\u00a0lb" + (over == 0 ? "" : "\u00a0" + over + "\u00a0oz");
    }

    private static String hundredths(double value) {
        return value < 0.005 ? "under 0.01" : Words.number(value, 2);
    }
}
