package understorey.light;

import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.LightWish;

/**
 * How well one instant gives the light that a picture wishes for, 0 to 1, and the cause that most decides it.
 *
 * <p>The edges are common practice, no source. Low sun is the sun's centre up to 6°, fading out at 10°, and the glow
 * before it clears the land counts little. Light comes from ahead, aside or behind within 45° of that side, and quite
 * so within 32°; it has a side at all up to 35°, and none from 65° on. Wishes for sun want it through the clouds, and
 * through the leaves to a twentieth of the floor at least. High sun begins at 30° and is full at 45°. Soft light has
 * flecks up to a stop over the shade, harsh light from three. Twilight is fullest with the sun from −6° to −3°.
 *
 * @param value  0 never, 1 just as wished: a product of factors
 * @param there  what the light is when it is as wished
 * @param limits the smallest factor's name; {@code there} when none is under one
 * @param least  the smallest factor
 * @param factor the last one, and {@code name} its name
 * @param rest   the wish without it; null without factors
 */
record Wish(double value, Cause there, Cause limits, double least, double factor, Cause name, @Nullable Wish rest) {

    /** A glow in the sky, while the sun itself is still behind the land or under the horizon. */
    private static final double GLOW = 0.2;
    private static final double FLECKS_ENOUGH = 0.05;
    private static final double NO_FLECKS_OKTA = 4;
    private static final double OPEN_SHARE = 0.9;
    private static final double LOW_DEG = 10;
    private static final double HALF_CIRCLE = 180;

    private Wish(Cause there) {
        this(1, there, there, 1, 1, there, null);
    }

    /**
     * The wish at a moment.
     *
     * @param facingDeg bearing of the lens axis; null for a picture without one
     */
    static Wish of(LightWish wish, Moment moment, @Nullable Double facingDeg) {
        Wish light = switch (wish) {
            case LOW_SUN -> lowSun(moment);
            case BACKLIGHT -> from(moment, facingDeg, 0, Cause.AHEAD_AS_WISHED, Cause.FACE_INTO_SUN);
            case SIDELIGHT -> from(moment, facingDeg, 90, Cause.ASIDE_AS_WISHED, Cause.FACE_ACROSS_SUN);
            case FRONTLIGHT -> from(moment, facingDeg, HALF_CIRCLE, Cause.BEHIND_YOU_AS_WISHED,
                    Cause.FACE_AWAY_FROM_SUN);
            case OVERHEAD -> sun(new Wish(Cause.SUN_IS_HIGH), moment, 0)
                    .and(ramp(moment.sun().altitudeDeg(), 30, 45), Cause.SUN_NOT_HIGH);
            case SOFT -> soft(moment);
            case MIST -> likelihood(moment.mist(), Cause.MIST_LIKELY, Cause.MIST_POSSIBLE,
                    Cause.MIST_UNLIKELY, Cause.MIST_NOT_JUDGED);
            case AFTER_RAIN -> likelihood(moment.drops(), Cause.DROPS_THERE, Cause.DROPS_DRYING,
                    Cause.DROPS_GONE, Cause.DROPS_NOT_JUDGED);
            case TWILIGHT -> twilight(moment);
        };
        return wish == LightWish.TWILIGHT ? light : light.and(ramp(moment.floorEv(), -4, 0), Cause.LIGHT_GONE);
    }

    /** An unknown share counts as one half. */
    private static Wish likelihood(double share, Cause likely, Cause possible, Cause unlikely,
                                   Cause notJudged) {
        return Double.isNaN(share) ? new Wish(likely).and(0.5, notJudged)
                : new Wish(likely).and(share, share >= 0.2 ? possible : unlikely);
    }

    private static Wish lowSun(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        return sun(new Wish(Cause.SUN_IS_LOW), moment, GLOW)
                .and(ramp(altitude, -4, 0), Cause.SUN_NOT_YET_UP).and(ramp(altitude, 10, 6), Cause.SUN_TOO_HIGH);
    }

    private static Wish from(Moment moment, @Nullable Double facingDeg, double sideDeg, Cause there, Cause turn) {
        Wish sided = sun(new Wish(facingDeg == null ? turn : there), moment, 0)
                .and(ramp(moment.sun().altitudeDeg(), 65, 35), Cause.SUN_TOO_STEEP);
        return facingDeg == null ? sided : sided.and(
                ramp(Math.abs(offAxisDeg(moment, facingDeg) - sideDeg), 65, 32), Cause.SUN_OFF_THE_SIDE_WISHED);
    }

    /** Bearing between the axis and the sun, 0 ahead to 180 behind. */
    static double offAxisDeg(Moment moment, double facingDeg) {
        double apart = Math.abs(facingDeg - moment.sun().azimuthDeg()) % 360;
        return Math.min(apart, 360 - apart);
    }

    private static Wish soft(Moment moment) {
        Cause why = !moment.clear() ? Cause.SOFT_WITHOUT_SUN
                : moment.okta() >= NO_FLECKS_OKTA ? Cause.SOFT_UNDER_CLOUD
                : moment.fleckShare() >= OPEN_SHARE && moment.sun().altitudeDeg() < LOW_DEG ? Cause.SUN_IS_LOW
                : Cause.SOFT_UNDER_LEAVES;
        return new Wish(why).and(ramp(moment.contrastStops(), 3, 1), Cause.HARSH);
    }

    private static Wish twilight(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        return new Wish(Cause.TWILIGHT_NOW)
                .and(Math.min(ramp(altitude, -8, -6), ramp(altitude, 0, -3)), Cause.NOT_TWILIGHT);
    }

    /** The sun itself must be seen, through cloud and leaves; without it something of the light may be left. */
    private static Wish sun(Wish light, Moment moment, double left) {
        Wish open = light.and(moment.openSky(), Cause.SUN_BEHIND_CLOUD);
        if (!moment.clear()) {
            return open.and(left, moment.sun().apparentAltitudeDeg() > 0 ? Cause.SUN_BEHIND_LAND
                    : Cause.SUN_NOT_YET_UP);
        }
        return open.and(GLOW + (1 - GLOW) * Math.min(1, moment.fleckShare() / FLECKS_ENOUGH), Cause.FLECKS_TOO_FEW);
    }

    /** This wish times another factor. */
    Wish and(double factor, Cause otherwise) {
        return new Wish(value * factor, there, factor < least ? otherwise : limits, Math.min(least, factor), factor, otherwise, this);
    }

    /** Linear from 0 at one edge to 1 at the other, in either direction. */
    static double ramp(double x, double nought, double one) {
        return Math.max(0, Math.min(1, (x - nought) / (one - nought)));
    }

    /** Advice on the light if it is good; otherwise on what most speaks against it. */
    Advice because(Moment moment, @Nullable Double facingDeg) {
        return (Outlook.Grade.of(value) == Outlook.Grade.GOOD ? there : limits).advice(moment, facingDeg);
    }

    /** The factor that falls most short of the same wish at a better moment; the smallest where none does. */
    Cause lostAgainst(Wish better) {
        Cause lost = limits;
        double most = 0;
        for (Wish one = this, other = better; one.rest != null && other.rest != null; one = one.rest, other = other.rest) {
            if (other.factor - one.factor > most) {
                most = other.factor - one.factor;
                lost = one.name;
            }
        }
        return lost;
    }

    /** Advice on what most speaks against the light. */
    Advice against(Moment moment, @Nullable Double facingDeg) {
        return limits.advice(moment, facingDeg);
    }
}
