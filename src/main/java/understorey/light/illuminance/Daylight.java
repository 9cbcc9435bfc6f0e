package understorey.light.illuminance;

/**
 * Light of the sun and of the sky by altitude and cloud. IES Calculation Procedures Committee,
 * <em>Recommended Practice for the Calculation of Daylight Availability</em>, J. IES 13(4), 1984, 381-392.
 *
 * <p>The three skies of that practice are at 2 okta and less (clear), 4.5 okta (partly cloudy) and 8 okta
 * (overcast): its classes end at 3 and 7 tenths. Between them the illuminances are interpolated linearly, which is
 * ours. Values are means of a kind of sky; a single moment may be twice or half as bright.
 *
 * <p>Two things are corrected for a low sun. The practice takes 1 / sin h for the air mass, which has no end at the
 * horizon; here it is that of Kasten and Young. And its sky climbs from the horizon's value with an upright start, so
 * that up to 5° it is mixed, evenly in the logarithm, with that value carried on as the published twilight climbs.
 */
public final class Daylight {

    private static final double CLEAR_OKTA = 2;
    private static final double PARTLY_OKTA = 4.5;
    private static final double OVERCAST_OKTA = 8;
    private static final double CLEAR_EXTINCTION = 0.21;
    private static final double PARTLY_EXTINCTION = 0.80;
    /** Altitude from which the sky of the practice is used unchanged. */
    private static final double LOW_DEG = 5;
    /** Starlight and airglow, order of magnitude only; Seidelmann as in {@link Twilight}. */
    private static final double NIGHT_LUX = 0.002;

    private Daylight() {
    }

    /** Sunlight outside the atmosphere facing the sun, lux, on a day of the year from 1 to 366. */
    public static double extraterrestrialLux(int dayOfYear) {
        return 127_500 * (1 + 0.034 * Math.cos(2 * Math.PI * (dayOfYear - 2) / 365));
    }

    /**
     * Relative air mass at the altitude in degrees, 0 to 90, at which the sun is seen: 1 overhead, 5.6 at 10°, 38 at
     * the horizon; within 0.5 %. Kasten and Young, <em>Applied Optics</em> 28 (1989) 4735.
     */
    static double airMass(double altitudeDeg) {
        return 1 / (Math.sin(Math.toRadians(altitudeDeg)) + 0.50572 * Math.pow(altitudeDeg + 6.07995, -1.6364));
    }

    /**
     * Light of the sun alone on a surface that faces it, lux; 0 at 8 okta and for a sun at or below 0°.
     *
     * @param altitudeDeg at which the sun is seen
     */
    public static double directNormalLux(double altitudeDeg, double okta, int dayOfYear) {
        if (altitudeDeg <= 0) {
            return 0;
        }
        double airMass = airMass(altitudeDeg);
        double clear = Math.exp(-CLEAR_EXTINCTION * airMass);
        double partly = Math.exp(-PARTLY_EXTINCTION * airMass);
        return extraterrestrialLux(dayOfYear) * bySky(okta, clear, partly, 0);
    }

    /**
     * Light of the sky alone on level ground, lux, at any true altitude of the sun.
     *
     * <p>The practice ends at the horizon. Below it the sky fades as the published twilight does, and down to the
     * starlight of a moonless night: the two meet well, 0.8 klx of clear sky against 758.6 lux of twilight at 0°.
     * A cloudy sky is assumed to fade in the same proportion.
     */
    public static double skyLux(double altitudeDeg, double okta) {
        double low = NIGHT_LUX + (bySky(okta, 800, 300, 300) - NIGHT_LUX) * Twilight.lux(Math.min(altitudeDeg, LOW_DEG))
                / Twilight.lux(0);
        if (altitudeDeg <= 0) {
            return low;
        }
        double sine = Math.sin(Math.toRadians(altitudeDeg));
        double practice = bySky(okta, 800 + 15_500 * Math.sqrt(sine), 300 + 45_000 * sine, 300 + 21_000 * sine);
        double share = Math.min(1, altitudeDeg / LOW_DEG);
        return Math.exp(share * Math.log(practice) + (1 - share) * Math.log(low));
    }

    /** Share of a clear moon's light that clouds leave on the ground: as much as they leave of a sun at 30°. */
    public static double cloudShare(double okta) {
        return levelLux(okta) / levelLux(0);
    }

    private static double levelLux(double okta) {
        return directNormalLux(30, okta, 1) / 2 + skyLux(30, okta);
    }

    /** Share of the overcast sky in the mix at a cloud cover: 0 up to 4.5 okta, 1 at 8. */
    public static double overcastShare(double okta) {
        return share(okta, PARTLY_OKTA, OVERCAST_OKTA);
    }

    private static double bySky(double okta, double clear, double partly, double overcast) {
        if (okta <= PARTLY_OKTA) {
            return clear + share(okta, CLEAR_OKTA, PARTLY_OKTA) * (partly - clear);
        }
        return partly + overcastShare(okta) * (overcast - partly);
    }

    private static double share(double okta, double from, double to) {
        return Math.max(0, Math.min(1, (okta - from) / (to - from)));
    }
}
