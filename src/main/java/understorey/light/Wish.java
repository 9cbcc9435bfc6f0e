package understorey.light;

import static understorey.reason.Figure.Measure.DEGREES;
import static understorey.reason.Figure.Measure.EV100;
import static understorey.reason.Figure.Measure.OKTA;
import static understorey.reason.Figure.Measure.SHARE;
import static understorey.reason.Figure.Measure.STOPS;

import understorey.plan.LightWish;
import understorey.reason.Reason;

/**
 * How far one instant gives the light that a picture wishes for, 0 to 1, and the one thing that most decides it. The
 * edges are common practice, no source: low sun is the sun's centre up to 6°, fading out at 10°, and the glow before
 * it clears the land counts little; light comes from ahead, aside or behind within 45° of that side; it has a side at
 * all up to 35°, and none from 65° on; high sun begins at 30° and is full at 45°; soft light has flecks up to a stop
 * over the shade, harsh light from three; twilight is fullest with the sun from −6° to −3°.
 *
 * @param value 0 never, 1 just as wished
 * @param kind  what decides it
 */
record Wish(double value, LightReason kind) {

    /** A glow in the sky, while the sun itself is still behind the land or under the horizon. */
    private static final double GLOW = 0.3;
    private static final double FLECKS_ENOUGH = 0.05;
    private static final double NO_FLECKS_OKTA = 4;
    private static final double OPEN_SHARE = 0.9;
    private static final double HALF_CIRCLE = 180;

    /**
     * The wish at a moment.
     *
     * @param facingDeg bearing of the lens axis; null when the picture faces nowhere in particular
     */
    static Wish of(LightWish wish, Moment moment, Double facingDeg) {
        Wish light = switch (wish) {
            case LOW_SUN -> lowSun(moment);
            case BACKLIGHT -> from(moment, facingDeg, 0, LightReason.AHEAD_AS_WISHED, LightReason.FACE_INTO_SUN);
            case SIDELIGHT -> from(moment, facingDeg, 90, LightReason.ASIDE_AS_WISHED, LightReason.FACE_ACROSS_SUN);
            case FRONTLIGHT -> from(moment, facingDeg, HALF_CIRCLE, LightReason.BEHIND_YOU_AS_WISHED,
                    LightReason.FACE_AWAY_FROM_SUN);
            case OVERHEAD -> overhead(moment);
            case SOFT -> soft(moment);
            case MIST -> likelihood(moment.mist(), LightReason.MIST_LIKELY, LightReason.MIST_UNLIKELY,
                    LightReason.MIST_NOT_JUDGED);
            case AFTER_RAIN -> likelihood(moment.drops(), moment.drops() > 0.6 ? LightReason.DROPS_THERE
                    : LightReason.DROPS_DRYING, LightReason.DROPS_GONE, LightReason.DROPS_NOT_JUDGED);
            case TWILIGHT -> twilight(moment);
        };
        return light.and(wish == LightWish.TWILIGHT ? 1 : ramp(moment.floorEv(), -4, 0), LightReason.LIGHT_GONE);
    }

    /** What nobody can judge stands in the middle. */
    private static Wish likelihood(double share, LightReason likely, LightReason unlikely, LightReason notJudged) {
        return Double.isNaN(share) ? new Wish(0.5, notJudged) : new Wish(share, share > 0.2 ? likely : unlikely);
    }

    private static Wish lowSun(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        Wish height = new Wish(1, LightReason.SUN_IS_LOW).and(ramp(altitude, -4, 0), LightReason.SUN_NOT_YET_UP)
                .and(ramp(altitude, 10, 6), LightReason.SUN_TOO_HIGH);
        return sun(height, moment, GLOW);
    }

    private static Wish from(Moment moment, Double facingDeg, double sideDeg, LightReason there, LightReason turn) {
        Wish side = facingDeg == null ? new Wish(1, turn) : new Wish(1, there).and(
                ramp(Math.abs(offAxisDeg(moment, facingDeg) - sideDeg), 80, 45), LightReason.SUN_OFF_THE_SIDE_WISHED);
        Wish sided = side.and(ramp(moment.sun().altitudeDeg(), 65, 35), LightReason.SUN_TOO_STEEP);
        return sun(sided, moment, 0).and(!moment.clear() ? 1 : GLOW + (1 - GLOW)
                * Math.min(1, moment.fleckShare() / FLECKS_ENOUGH), LightReason.FLECKS_TOO_FEW);
    }

    /** Bearing between the axis and the sun, 0 ahead to 180 behind. */
    static double offAxisDeg(Moment moment, double facingDeg) {
        double apart = Math.abs(facingDeg - moment.sun().azimuthDeg()) % 360;
        return Math.min(apart, 360 - apart);
    }

    private static Wish overhead(Moment moment) {
        Wish height = new Wish(1, LightReason.SUN_IS_HIGH)
                .and(ramp(moment.sun().altitudeDeg(), 30, 45), LightReason.SUN_NOT_HIGH);
        return sun(height, moment, GLOW);
    }

    private static Wish soft(Moment moment) {
        LightReason why = !moment.clear() ? LightReason.SOFT_WITHOUT_SUN
                : moment.okta() >= NO_FLECKS_OKTA ? LightReason.SOFT_UNDER_CLOUD
                : moment.fleckShare() < OPEN_SHARE ? LightReason.SOFT_UNDER_LEAVES : LightReason.SUN_IS_LOW;
        return new Wish(1, why).and(ramp(moment.contrastStops(), 3, 1), LightReason.HARSH);
    }

    private static Wish twilight(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        return new Wish(1, LightReason.TWILIGHT_NOW)
                .and(Math.min(ramp(altitude, -8, -6), ramp(altitude, 0, -3)), LightReason.NOT_TWILIGHT);
    }

    /** The sun itself must be seen; without it something of the light may be left. */
    private static Wish sun(Wish light, Moment moment, double left) {
        if (!moment.clear()) {
            return light.and(left, moment.sun().apparentAltitudeDeg() > 0 ? LightReason.SUN_BEHIND_LAND
                    : LightReason.SUN_NOT_YET_UP);
        }
        return light.and(left + (1 - left) * moment.sunshine(), LightReason.SUN_BEHIND_CLOUD);
    }

    /** Both together; the weaker of them decides. */
    Wish and(double factor, LightReason otherwise) {
        return new Wish(value * factor, factor < Math.min(value, 0.7) ? otherwise : kind);
    }

    /** From 0 at one edge to 1 at the other, whichever is the larger. */
    static double ramp(double x, double nought, double one) {
        return Math.max(0, Math.min(1, (x - nought) / (one - nought)));
    }

    /** The deciding thing with its figures. */
    Reason reason(Moment moment, Double facingDeg) {
        double altitude = moment.sun().altitudeDeg();
        double bearing = moment.sun().azimuthDeg();
        return switch (kind) {
            case SUN_IS_LOW -> Reason.of(LightReason.SUN_IS_LOW).with("altitude", altitude, DEGREES);
            case SUN_TOO_HIGH -> Reason.of(LightReason.SUN_TOO_HIGH).with("altitude", altitude, DEGREES);
            case SUN_BEHIND_CLOUD -> Reason.of(LightReason.SUN_BEHIND_CLOUD).with("okta", moment.okta(), OKTA);
            case FLECKS_TOO_FEW -> Reason.of(LightReason.FLECKS_TOO_FEW).with("share", moment.fleckShare(), SHARE);
            case AHEAD_AS_WISHED -> Reason.of(LightReason.AHEAD_AS_WISHED).with("off", offAxisDeg(moment, facingDeg), DEGREES);
            case ASIDE_AS_WISHED -> Reason.of(LightReason.ASIDE_AS_WISHED).with("off", offAxisDeg(moment, facingDeg), DEGREES);
            case BEHIND_YOU_AS_WISHED -> Reason.of(LightReason.BEHIND_YOU_AS_WISHED)
                    .with("off", offAxisDeg(moment, facingDeg), DEGREES);
            case SUN_OFF_THE_SIDE_WISHED -> Reason.of(LightReason.SUN_OFF_THE_SIDE_WISHED)
                    .with("off", offAxisDeg(moment, facingDeg), DEGREES);
            case FACE_INTO_SUN -> Reason.of(LightReason.FACE_INTO_SUN).with("bearing", bearing, DEGREES);
            case FACE_ACROSS_SUN -> Reason.of(LightReason.FACE_ACROSS_SUN).with("bearing", (bearing + 90) % 360, DEGREES);
            case FACE_AWAY_FROM_SUN -> Reason.of(LightReason.FACE_AWAY_FROM_SUN)
                    .with("bearing", (bearing + HALF_CIRCLE) % 360, DEGREES);
            case SUN_TOO_STEEP -> Reason.of(LightReason.SUN_TOO_STEEP).with("altitude", altitude, DEGREES);
            case SUN_IS_HIGH -> Reason.of(LightReason.SUN_IS_HIGH).with("altitude", altitude, DEGREES);
            case SUN_NOT_HIGH -> Reason.of(LightReason.SUN_NOT_HIGH).with("altitude", altitude, DEGREES);
            case SOFT_UNDER_CLOUD -> Reason.of(LightReason.SOFT_UNDER_CLOUD).with("okta", moment.okta(), OKTA);
            case HARSH -> Reason.of(LightReason.HARSH).with("contrast", moment.contrastStops(), STOPS);
            case LIGHT_GONE -> Reason.of(LightReason.LIGHT_GONE).with("ev", moment.floorEv(), EV100);
            default -> Reason.of(kind);
        };
    }
}
