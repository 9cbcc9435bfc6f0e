package understorey.light;

import understorey.sky.SunAt;

/**
 * What a wish for light looks at, at one instant and one place.
 *
 * @param clear         the sun stands over the land there
 * @param fleckShare    share of the floor in direct sun, 0 to 1
 * @param floorEv       to meter for on the floor
 * @param contrastStops between a fleck of sun and the shade beside it; 0 without flecks
 * @param okta          cloud cover, 0 to 8
 * @param mist          how likely mist stands there, 0 to 1; not a number when it cannot be judged
 * @param drops         how much of the rain or dew still hangs on the flowers, 0 to 1; not a number likewise
 */
public record Moment(SunAt sun, boolean clear, double fleckShare, double floorEv, double contrastStops, double okta,
                     double mist, double drops) {

    private static final double SUN_SHINES_UP_TO_OKTA = 2;

    /** How far a sun may be counted on to find a gap in the clouds: always up to 2 okta, never at 8. */
    double openSky() {
        return Math.min(1, (8 - okta) / (8 - SUN_SHINES_UP_TO_OKTA));
    }
}
