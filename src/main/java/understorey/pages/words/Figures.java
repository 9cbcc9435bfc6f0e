package understorey.pages.words;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

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

    /** Altitude of the sun, to 0.01°: it is right to about 0.02°. */
    public static @Nullable BigDecimal altitudeDeg(@Nullable Double degrees) {
        return decimals(degrees, 2);
    }

    /** Azimuth of the sun, to 0.01°, below 360. */
    public static @Nullable BigDecimal azimuthDeg(@Nullable Double degrees) {
        return belowCircle(decimals(degrees, 2));
    }

    /** Phase of the moon, to 0.1°, below 360. */
    public static @Nullable BigDecimal phaseDeg(@Nullable Double degrees) {
        return belowCircle(decimals(degrees, 1));
    }

    /** Angles of a lens and of light on a subject, to 0.1°. */
    public static @Nullable BigDecimal lensDeg(@Nullable Double degrees) {
        return decimals(degrees, 1);
    }

    /** To a tenth: tables of daylight differ by more. */
    public static @Nullable BigDecimal ev100(@Nullable Double ev) {
        return decimals(ev, 1);
    }

    /** To 0.01 stop. */
    public static @Nullable BigDecimal stops(@Nullable Double stops) {
        return decimals(stops, 2);
    }

    /** 0 to 1, to a thousandth. */
    public static @Nullable BigDecimal share(@Nullable Double share) {
        return decimals(share, 3);
    }

    public static @Nullable BigDecimal magnification(@Nullable Double magnification) {
        return decimals(magnification, 4);
    }

    /** Plain ratios, f-numbers and indices, to three significant digits. */
    public static @Nullable BigDecimal ratio(@Nullable Double ratio) {
        return significant(ratio, 3);
    }

    /** To four significant digits and no finer than 0.1 mm, since a close-up is sharp over a millimetre. */
    public static @Nullable BigDecimal metres(@Nullable Double metres) {
        BigDecimal rounded = significant(metres, 4);
        return rounded == null || rounded.scale() <= 4 ? rounded : decimals(metres, 4);
    }

    public static @Nullable BigDecimal millimetres(@Nullable Double millimetres) {
        return significant(millimetres, 4);
    }

    public static BigDecimal days(double days) {
        return rounded(days, 1);
    }

    /** Exposure times, to four significant digits: 1/60 s is 0.01667. */
    public static @Nullable BigDecimal seconds(@Nullable Double seconds) {
        return significant(seconds, 4);
    }

    public static @Nullable BigDecimal grams(@Nullable Double grams) {
        return decimals(grams, 0);
    }

    public static @Nullable BigDecimal gigabytes(@Nullable Double gigabytes) {
        return decimals(gigabytes, 1);
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
