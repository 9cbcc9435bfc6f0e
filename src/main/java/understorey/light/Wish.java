package understorey.light;

import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.advice.LightAdvice;
import understorey.plan.LightWish;

/**
 * How well one instant gives the light that a picture wishes for, 0 to 1, and what most decides it.
 *
 * <p>The edges are common practice, no source. Low sun is the sun's centre up to 6°, fading out at 10°, and the glow
 * before it clears the skyline counts little. Light comes from ahead, aside or behind within 45° of that side, and quite
 * so within 32°; it has a side at all up to 35°, and none from 65° on. Wishes for sun count the chance that clouds let it
 * through, and want it to reach a twentieth of the ground at least; where that needs an edge of the wood and none is known,
 * the chance of one is a half. What is unknown of mist and drops counts as a half too. High sun begins at 30° and is full at 45°. Soft light has flecks up to a stop over the shade,
 * harsh light from three, for as much of the time as the sun is out. Drops are fair until they have dried, and good until
 * more than half of the water has. Twilight is fullest with the sun from −6° to −3°; any
 * other light fades where the ground has less than EV 5.
 *
 * @param value  0 never, 1 just as wished: a product of factors
 * @param there  what the light is when it is as wished
 * @param limits what the smallest factor means; {@code there} when none is under one
 * @param least  the smallest factor
 * @param factor the last one, and {@code means} what it means if it is small
 * @param rest   the wish without it; null without factors
 */
record Wish(double value, LightAdvice there, LightAdvice limits, double least, double factor, LightAdvice means, @Nullable Wish rest) {

    /** A glow in the sky, while the sun itself is still behind the skyline or below the horizon. */
    private static final double GLOW = 0.2;
    private static final double FLECKS_ENOUGH = 0.05;
    /** Chance of what is not known. */
    private static final double UNKNOWN = 0.5;
    /** A smaller chance of sun is none. */
    private static final double LEAST_CHANCE = 0.02;
    /** The sky is clear up to there (WMO terms). */
    private static final double CLEAR_OKTA = 2;
    private static final double OPEN_SHARE = 0.9;
    private static final double LOW_DEG = 10;
    private static final double ASIDE_DEG = 90;
    private static final double BEHIND_DEG = 180;

    Wish(LightAdvice there) {
        this(1, there, there, 1, 1, there, null);
    }

    /**
     * The wish at a moment.
     *
     * @param facingDeg bearing of the lens axis; null for a picture without one
     */
    static Wish of(LightWish wish, Moment moment, @Nullable Double facingDeg) {
        double bearing = moment.sun().azimuthDeg();
        return switch (wish) {
            case LOW_SUN -> lowSun(moment);
            case BACKLIGHT -> facingDeg == null ? anySide(moment, new LightAdvice.FaceIntoSun(bearing))
                    : side(moment, facingDeg, 0, LightAdvice.AheadAsWished::new);
            case SIDELIGHT -> facingDeg == null ? anySide(moment, new LightAdvice.FaceAcrossSun((bearing + ASIDE_DEG) % 360))
                    : side(moment, facingDeg, ASIDE_DEG, LightAdvice.AsideAsWished::new);
            case FRONTLIGHT -> facingDeg == null ? anySide(moment, new LightAdvice.FaceAwayFromSun((bearing + BEHIND_DEG) % 360))
                    : side(moment, facingDeg, BEHIND_DEG, LightAdvice.BehindYouAsWished::new);
            case OVERHEAD -> overhead(moment);
            case SOFT -> soft(moment);
            case MIST -> mist(moment.mist());
            case AFTER_RAIN -> drops(moment);
            case TWILIGHT -> twilight(moment);
        };
    }

    /** This wish where the ground is bright enough for colours to show and for focusing: fully from EV 5, not at all at EV 0. */
    Wish brightEnough(Moment moment) {
        double ev = moment.floorEv();
        return and(ramp(ev, 0, 5), ev < 0 ? new LightAdvice.LightGone(ev) : new LightAdvice.TooDim(ev));
    }

    /** This wish in the rain. Light after rain comes when it is over, so only the chance that it stays dry is left of it. */
    Wish inRain(Moment moment, LightWish wish) {
        double some = Rain.leaves(moment);
        double left = wish == LightWish.AFTER_RAIN && some < 1 ? 1 - moment.rainChance() : some;
        return left == 1 ? this : and(left, new LightAdvice.RainFalls(moment.rainMm(), moment.rainChance()));
    }

    private static Wish mist(double share) {
        Wish likely = new Wish(new LightAdvice.MistLikely());
        return Double.isNaN(share) ? likely.and(UNKNOWN, new LightAdvice.MistNotJudged())
                : likely.and(share, share >= 0.2 ? new LightAdvice.MistPossible() : new LightAdvice.MistUnlikely());
    }

    private static Wish drops(Moment moment) {
        Wish there = new Wish(new LightAdvice.DropsThere());
        double left = moment.drops();
        if (Double.isNaN(left)) {
            return there.and(UNKNOWN, new LightAdvice.DropsNotJudged());
        }
        double fair = Outlook.Grade.FAIR.least();
        return left == 0 ? there.and(0, new LightAdvice.DropsGone())
                : there.and(fair + (1 - fair) * left, new LightAdvice.DropsDrying())
                .and(moment.dropsChance(), new LightAdvice.DropsIfRainFell(moment.dropsChance()));
    }

    private static Wish lowSun(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        return sun(new LightAdvice.SunIsLow(altitude), moment, GLOW)
                .and(ramp(altitude, -4, 0), new LightAdvice.SunNotYetUp())
                .and(ramp(altitude, 10, 6), new LightAdvice.SunTooHigh(altitude));
    }

    /** The sun low enough to light a picture from one side: a picture without a bearing is turned to it. */
    private static Wish anySide(Moment moment, LightAdvice there) {
        double altitude = moment.sun().altitudeDeg();
        return sun(there, moment, 0).and(ramp(altitude, 65, 35), new LightAdvice.SunTooSteep(altitude));
    }

    private static Wish side(Moment moment, double facingDeg, double sideDeg, DoubleFunction<LightAdvice> there) {
        double offDeg = offAxisDeg(moment, facingDeg);
        return anySide(moment, there.apply(offDeg))
                .and(ramp(Math.abs(offDeg - sideDeg), 65, 32), new LightAdvice.SunOffTheSideWished(offDeg));
    }

    /** Bearing between the axis and the sun, 0 ahead to 180 behind. */
    private static double offAxisDeg(Moment moment, double facingDeg) {
        double apart = Math.abs(facingDeg - moment.sun().azimuthDeg()) % 360;
        return Math.min(apart, 360 - apart);
    }

    private static Wish overhead(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        return sun(new LightAdvice.SunIsHigh(altitude), moment, 0).and(ramp(altitude, 30, 45), new LightAdvice.SunNotHigh(altitude));
    }

    private static Wish soft(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        LightAdvice why = !moment.clear() ? new LightAdvice.SoftWithoutSun()
                : moment.okta() > CLEAR_OKTA ? new LightAdvice.SoftUnderCloud(moment.okta())
                : moment.fleckShare() >= OPEN_SHARE && altitude < LOW_DEG ? new LightAdvice.SunIsLow(altitude)
                : new LightAdvice.SoftUnderLeaves();
        double out = moment.clear() ? moment.openSky() : 0;
        return new Wish(why).and(1 - out * (1 - ramp(moment.contrastStops(), 3, 1)), moment.okta() > CLEAR_OKTA
                ? new LightAdvice.SunComesOut(moment.okta(), out) : new LightAdvice.Harsh(moment.contrastStops()));
    }

    private static Wish twilight(Moment moment) {
        double altitude = moment.sun().altitudeDeg();
        return new Wish(new LightAdvice.TwilightNow())
                .and(Math.min(ramp(altitude, -8, -6), ramp(altitude, 0, -3)), new LightAdvice.NotTwilight());
    }

    /** The sun itself must be seen, through cloud and leaves; without it something of the light may be left. */
    private static Wish sun(LightAdvice there, Moment moment, double left) {
        double chance = moment.openSky();
        Wish open = new Wish(there).and(chance, chance < LEAST_CHANCE ? new LightAdvice.SunHidden(moment.okta())
                : new LightAdvice.SunBehindCloud(moment.okta(), chance));
        if (!moment.clear()) {
            return open.and(left, moment.sun().apparentAltitudeDeg() > 0 ? new LightAdvice.SunBehindLand()
                    : new LightAdvice.SunNotYetUp());
        }
        double through = GLOW + (1 - GLOW) * Math.min(1, moment.fleckShare() / FLECKS_ENOUGH);
        return moment.needsOpening() ? open.and(Math.max(UNKNOWN, through), new LightAdvice.NeedsOpening(moment.sun().azimuthDeg()))
                : open.and(through, new LightAdvice.FlecksTooFew(moment.fleckShare()));
    }

    /** This wish times another factor. */
    Wish and(double factor, LightAdvice otherwise) {
        return new Wish(value * factor, there, factor < least ? otherwise : limits, Math.min(least, factor), factor, otherwise, this);
    }

    /** Its factors by what they mean. */
    Map<Class<?>, Double> factors() {
        Map<Class<?>, Double> factors = new HashMap<>();
        for (Wish one = this; one.rest != null; one = one.rest) {
            factors.merge(one.means.getClass(), one.factor, (a, b) -> a * b);
        }
        return factors;
    }

    /** Linear from 0 at one edge to 1 at the other, in either direction. */
    static double ramp(double x, double zero, double one) {
        return Math.max(0, Math.min(1, (x - zero) / (one - zero)));
    }

    /** Advice on the light if it is good; otherwise on what most speaks against it. */
    LightAdvice because() {
        return Outlook.Grade.of(value) == Outlook.Grade.GOOD ? there : limits;
    }

    /** The factor that falls most short of the same wish at a better moment; the smallest where none does. */
    LightAdvice lostAgainst(Wish better) {
        LightAdvice lost = limits;
        double most = 0;
        for (Wish one = this, other = better; one.rest != null && other.rest != null; one = one.rest, other = other.rest) {
            if (other.factor - one.factor > most) {
                most = other.factor - one.factor;
                lost = one.means;
            }
        }
        return lost;
    }
}
