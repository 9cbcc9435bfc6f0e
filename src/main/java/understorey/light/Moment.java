package understorey.light;

import understorey.sky.SunAt;

/**
 * The light and the weather at one instant and one place, for light wishes.
 *
 * @param clear         whether the sun is above the skyline
 * @param fleckShare    share of the ground in direct sun, 0 to 1
 * @param floorEv       to meter for on the ground
 * @param contrastStops between a fleck of sun and the shade beside it; 0 without flecks
 * @param okta          cloud cover, 0 to 8
 * @param mist          mist to expect, 0 to 1; not a number if unknown
 * @param drops         share of rain or dew left on the flowers, 0 to 1; not a number if unknown
 */
public record Moment(SunAt sun, boolean clear, double fleckShare, double floorEv, double contrastStops, double okta,
                     double mist, double drops) {

    private static final double SUN_SHINES_UP_TO_OKTA = 2;

    /** Chance that the sun shines through the clouds: always up to 2 okta, never at 8. */
    double openSky() {
        return Math.min(1, (8 - okta) / (8 - SUN_SHINES_UP_TO_OKTA));
    }
}
