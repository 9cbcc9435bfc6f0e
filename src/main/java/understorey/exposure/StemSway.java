package understorey.exposure;

/**
 * Flowers in the wind: how much of it reaches them, how far it bends them, how that smears on the sensor.
 *
 * <p>The stem is a sine of one frequency and amplitude, seen from the side and at the worst moment, in the
 * middle of its swing. At the ends of the swing it stands still, so waiting for a lull does better.
 */
public final class StemSway {

    /** Share of the 10 m wind at flower height on open ground with short turf. */
    private static final double OPEN = 0.4;
    /** Share of the 10 m wind at flower height in a leafless or an open wood. */
    private static final double LEAFLESS = 0.2;
    /** Share of the 10 m wind at flower height under closed leaves. */
    private static final double CLOSED = 0.1;
    /** Effective plant area index of a leafless wood. */
    private static final double LEAFLESS_INDEX = 0.8;
    /** Effective plant area index from which a wood counts as closed. */
    private static final double CLOSED_INDEX = 2.5;

    private static final double LIGHT_AIR_MS = 0.3;
    private static final double LIGHT_BREEZE_END_MS = 3.3;
    private static final double SWAY_IN_LIGHT_AIR_MM = 2;
    private static final double SWAY_IN_LIGHT_BREEZE_MM = 20;

    private StemSway() {
    }

    /**
     * Wind at flower height, about 0.3 m, from the wind at 10 m in the open (m/s; a gust for a gust): a share
     * of 0.4 in the open, 0.2 in a leafless wood (index 0.8), 0.1 under closed leaves (2.5 and more), straight
     * lines between. 0.1 is the published factor of a sheltered dense stand (NWCG Firefighter Math 8.2, for
     * flame height and a 6 m wind); 0.2 and 0.4 NWCG from memory. An assumption within a factor of two: no
     * measurement at flower height in such a wood was found.
     *
     * @param plantAreaIndex effective, of the canopy above; 0 for open ground
     */
    public static double windAtFlowersMs(double wind10Ms, double plantAreaIndex) {
        return wind10Ms * share(plantAreaIndex);
    }

    private static double share(double plantAreaIndex) {
        if (plantAreaIndex >= CLOSED_INDEX) {
            return CLOSED;
        }
        return plantAreaIndex <= LEAFLESS_INDEX
                ? between(OPEN, LEAFLESS, plantAreaIndex / LEAFLESS_INDEX)
                : between(LEAFLESS, CLOSED, (plantAreaIndex - LEAFLESS_INDEX) / (CLOSED_INDEX - LEAFLESS_INDEX));
    }

    /**
     * Half the width of a stem's swing, mm, in a wind at its own height, m/s: 2 mm where light air begins
     * (Beaufort 1, 0.3 m/s), 20 mm where light breeze ends (Beaufort 2, 3.3 m/s), a straight line between and
     * beyond, and in proportion to the wind below. An assumption, no source; a stiff short stem does less, a
     * long one with a heavy head more, by a factor of two or three.
     */
    public static double amplitudeMm(double windAtFlowersMs) {
        if (windAtFlowersMs < LIGHT_AIR_MS) {
            return SWAY_IN_LIGHT_AIR_MM * windAtFlowersMs / LIGHT_AIR_MS;
        }
        double share = (windAtFlowersMs - LIGHT_AIR_MS) / (LIGHT_BREEZE_END_MS - LIGHT_AIR_MS);
        return between(SWAY_IN_LIGHT_AIR_MM, SWAY_IN_LIGHT_BREEZE_MM, share);
    }

    /**
     * Blur on the sensor, mm, of an exposure centred on the middle of the swing: 2·A·m·sin(π·f·t) up to half a
     * period, the whole swing 2·A·m beyond. Follows from the sine A·sin(2π·f·t); for short times 2π·f·A·m·t,
     * peak speed × time. Herb stems sway at about 1 to 5 Hz (from memory).
     */
    public static double blurMm(double exposureS, double frequencyHz, double amplitudeMm, double magnification) {
        double swingMm = 2 * amplitudeMm * magnification;
        double halfPeriods = 2 * frequencyHz * exposureS;
        return halfPeriods >= 1 ? swingMm : swingMm * Math.sin(Math.PI / 2 * halfPeriods);
    }

    /**
     * Longest exposure, seconds, whose {@link #blurMm} is no more than this: asin(c / (2·A·m)) / (π·f).
     * Positive infinity when the whole swing stays within the blur.
     */
    public static double longestS(double blurMm, double frequencyHz, double amplitudeMm, double magnification) {
        double swingMm = 2 * amplitudeMm * magnification;
        return swingMm <= blurMm ? Double.POSITIVE_INFINITY
                : Math.asin(blurMm / swingMm) / (Math.PI * frequencyHz);
    }

    private static double between(double from, double to, double share) {
        return from + (to - from) * share;
    }
}
