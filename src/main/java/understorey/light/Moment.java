package understorey.light;

import understorey.light.illuminance.SunLine;
import understorey.sky.SunAt;

/**
 * The light and the weather at one instant and one place, for light wishes.
 *
 * @param clear         whether the sun is above the skyline
 * @param fleckShare    share of the ground in direct sun, 0 to 1
 * @param floorEv       to meter for on the ground
 * @param contrastStops between a fleck of sun and the shade beside it while the sun is out; 0 without flecks
 * @param okta          cloud cover, 0 to 8
 * @param mist          mist to expect, 0 to 1; not a number if unknown
 * @param drops         share of rain or dew left on the flowers, 0 to 1, if that rain comes; not a number if unknown
 * @param dropsChance   of that rain, 0 to 1; 1 of dew
 * @param needsOpening  the sun comes in only from an edge of the wood, and none is known
 * @param temperatureC  of the air; not a number if unknown
 * @param rainMm        in the forecast's hour; not a number if unknown
 * @param rainChance    of that rain, 0 to 1; 1 if the forecast gives only its amount
 */
public record Moment(SunAt sun, boolean clear, double fleckShare, double floorEv, double contrastStops, double okta,
                     double mist, double drops, double dropsChance, boolean needsOpening, double temperatureC, double rainMm, double rainChance) {

    /** Chance that no cloud covers the sun, if it is above the skyline. */
    double openSky() {
        return SunLine.clear(okta, sun.altitudeDeg());
    }
}
