package understorey.pages.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;

/**
 * Rounding, and figures as programs read them: each kind to the precision it is good for, half away from zero.
 *
 * <p>A figure is first rounded to six digits more than are kept. Round figures in a plan make sums that belong on
 * a rounding edge exactly (half of 0.25 m) and miss it by their last bit, upwards on one machine and downwards on
 * another; the first rounding puts them back on the edge, so that both write the same bytes. No figure is moved
 * by more than a millionth of its last digit. An infinite figure is absent, as is one that is null.
 */
public final class Figures {

    private static final int GUARD = 6;
    /** Half of what the guard digits count to; whole numbers round a thousand figures in a tenth of the time. */
    private static final long HALF_GUARD = 500_000;
    /** By the decimals to keep: one unit of them, guard digits and all. */
    private static final double[] GUARDED = {1e6, 1e7, 1e8, 1e9, 1e10};
    private static final int HALF_SECOND_NANOS = 500_000_000;
    private static final BigDecimal CIRCLE = BigDecimal.valueOf(360);

    private Figures() {
    }

    /**
     * A figure in the unit of its measure. Tables of daylight differ by more than a tenth of an exposure value; the sun is right to about
     * 0.02°. Distances are no finer than 0.1 mm, because a close-up is sharp over a millimetre. Four digits of an exposure time keep
     * 1/60 s apart from 1/64 s.
     */
    public static @Nullable BigDecimal of(@Nullable Double value, Measure measure) {
        return switch (measure) {
            case ALTITUDE -> decimals(value, 2);
            case BEARING, COMPASS -> belowCircle(decimals(value, 2));
            case PHASE -> belowCircle(decimals(value, 1));
            case DEGREES, EV100, EV100_NUMBER, METRES_PER_SECOND, WIND, CELSIUS, CELSIUS_APART, OKTA, RAIN, GIGABYTES, DAYS,
                    DAYS_TO_TENTH -> decimals(value, 1);
            case STOPS -> decimals(value, 2);
            case SHARE -> decimals(value, 3);
            case MAGNIFICATION -> decimals(value, 4);
            case METRES, WHOLE_METRES, PLANT_HEIGHT, FAR_LIMIT, WALK_METRES, SCALE_BAR, PRINT_WIDTH -> metres(value);
            case MILLIMETRES, SHUTTER_SECONDS -> significant(value, 4);
            case RATIO, TIMES, F_NUMBER, MEGAPIXELS, DIOPTRES, STEM_DENSITY, KILOGRAMS -> significant(value, 3);
            case ISO, KELVIN, COUNT, GRAMS, MINUTES -> decimals(value, 0);
            case WORD, DAY_OF_YEAR -> throw new IllegalArgumentException(measure + " is not a number");
        };
    }

    private static @Nullable BigDecimal metres(@Nullable Double metres) {
        BigDecimal rounded = significant(metres, 4);
        return rounded == null || rounded.scale() <= 4 ? rounded : decimals(metres, 4);
    }

    /** Latitude and longitude, to a millionth of a degree: 0.1 m. */
    public static BigDecimal positionDeg(double degrees) {
        return rounded(degrees, 6).stripTrailingZeros();
    }

    /** An instant to the second, half up. */
    public static ZonedDateTime second(ZonedDateTime time) {
        return time.plusNanos(HALF_SECOND_NANOS).truncatedTo(ChronoUnit.SECONDS);
    }

    /** To so many decimals, trailing noughts gone; null for what is absent. */
    public static @Nullable BigDecimal decimals(@Nullable Double value, int decimals) {
        return value == null || value.isInfinite() ? null : rounded(value, decimals).stripTrailingZeros();
    }

    /** To so many decimals, trailing noughts kept. */
    static BigDecimal rounded(double value, int decimals) {
        if (Math.abs(value) < 1e5 && decimals < GUARDED.length) {
            long guarded = Math.round(Math.abs(value) * GUARDED[decimals]);
            long kept = (guarded + HALF_GUARD) / (2 * HALF_GUARD);
            return BigDecimal.valueOf(value < 0 ? -kept : kept, decimals);
        }
        return BigDecimal.valueOf(value).setScale(decimals + GUARD, RoundingMode.HALF_UP)
                .setScale(decimals, RoundingMode.HALF_UP);
    }

    private static @Nullable BigDecimal significant(@Nullable Double value, int digits) {
        return value == null || value.isInfinite() ? null : BigDecimal.valueOf(value)
                .round(new MathContext(digits + GUARD, RoundingMode.HALF_UP))
                .round(new MathContext(digits, RoundingMode.HALF_UP)).stripTrailingZeros();
    }

    private static @Nullable BigDecimal belowCircle(@Nullable BigDecimal degrees) {
        return degrees != null && degrees.compareTo(CIRCLE) >= 0 ? degrees.subtract(CIRCLE) : degrees;
    }
}
