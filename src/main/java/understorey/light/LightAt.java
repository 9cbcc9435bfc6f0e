package understorey.light;

import java.time.LocalDate;
import understorey.plan.Canopy;
import understorey.sky.Skyline;
import understorey.sky.SunAt;

/**
 * The light at an instant, in the open and on the floor under a canopy, as exposure values at ISO 100.
 *
 * @param sun                where the sun stands
 * @param shadowPerHeight    length of a shadow on level ground over the height that throws it; null when the sun's centre is not up
 * @param aboveSkyline       the sun's centre stands clear of land and horizon
 * @param fleckShare         share of the floor in direct sun, 0 to 1; 0 when the sun is hidden
 * @param open               on open ground
 * @param floor              under the canopy; as in the open where there is none
 * @param colourTemperatureK of a clear sky, K; lists differ by 20 %
 * @param plantAreaIndex     effective one of the canopy, 0 for open ground
 */
public record LightAt(SunAt sun, Double shadowPerHeight, boolean aboveSkyline, double fleckShare, OpenEv open,
        FloorEv floor, int colourTemperatureK, double plantAreaIndex) {

    private static final double CLEAR_OKTA = 0;
    private static final double BROKEN_OKTA = 6;
    private static final double OVERCAST_OKTA = 8;
    /** Up to here flecks and shade are two lights under a canopy. */
    private static final double CLEAR_UP_TO_OKTA = 2;
    /** From here on its floor is judged as a whole. */
    private static final double MINGLED_OKTA = 4;
    private static final double FEW_FLECKS = 0.1;
    private static final double MANY_FLECKS = 0.4;
    /** Below one part in a hundred of the floor a fleck is a chance find. */
    private static final double LEAST_FLECK_SHARE = 0.01;

    /**
     * Exposure values on open ground.
     *
     * @param sun      an upright subject that the sun lights from the front, clear sky; null when the sun is hidden
     * @param shade    level ground lit by the clear sky alone
     * @param broken   level ground under 6 okta
     * @param overcast level ground under 8 okta
     */
    public record OpenEv(Double sun, double shade, double broken, double overcast) {
    }

    /**
     * Exposure values on the floor of a wood.
     *
     * @param fleck    an upright subject in a fleck of sun, lit from the front, clear sky; null when the sun is hidden
     * @param shade    level ground between the flecks, clear sky
     * @param broken   level ground under 6 okta, flecks and shade taken together
     * @param overcast level ground under 8 okta
     */
    public record FloorEv(Double fleck, double shade, double broken, double overcast) {
    }

    /** The light at a place with that skyline and canopy on a date; a canopy of null is open ground. */
    public static LightAt of(SunAt sun, Skyline skyline, Canopy canopy, LocalDate date) {
        double pai = PlantArea.effectiveIndex(canopy, date);
        boolean clears = skyline.clears(sun);
        double apparentDeg = sun.apparentAltitudeDeg();
        Falling light = new Falling(sun.altitudeDeg(), clears, date.getDayOfYear());
        return new LightAt(sun,
                apparentDeg > 0 ? 1 / Math.tan(Math.toRadians(apparentDeg)) : null,
                clears,
                clears ? CanopyLight.gapFraction(apparentDeg, pai) : 0,
                new OpenEv(light.frontEv(0), light.shadeEv(CLEAR_OKTA, 0),
                        light.levelEv(BROKEN_OKTA, 0), light.levelEv(OVERCAST_OKTA, 0)),
                new FloorEv(light.frontEv(pai), light.shadeEv(CLEAR_OKTA, pai),
                        light.levelEv(BROKEN_OKTA, pai), light.levelEv(OVERCAST_OKTA, pai)),
                ColourTemperature.kelvin(sun.altitudeDeg(), CLEAR_OKTA),
                pai);
    }

    /**
     * Exposure value to meter for on level ground under a cloud cover of 0 to 8 okta. Open ground, and a floor
     * under cloud: direct light by the gap fraction and the sky through the canopy. Under a canopy and a clear sky
     * flecks and shade are two lights: the shade while flecks are less than a tenth of the floor, the floor as a
     * whole once they are two fifths, and from 4 okta on; mixed in between (common practice, no source).
     */
    public double floorEv(double okta) {
        Falling light = new Falling(sun.altitudeDeg(), aboveSkyline, sun.time().getDayOfYear());
        double byShare = (fleckShare - FEW_FLECKS) / (MANY_FLECKS - FEW_FLECKS);
        double byCloud = (okta - CLEAR_UP_TO_OKTA) / (MINGLED_OKTA - CLEAR_UP_TO_OKTA);
        double whole = plantAreaIndex == 0 ? 1 : Math.max(0, Math.min(1, Math.max(byShare, byCloud)));
        return light.levelEv(okta, plantAreaIndex, whole);
    }

    /** Stops between a fleck of sun and the shade beside it; 0 where clouds or leaves leave no flecks. */
    public double contrastStops(double okta) {
        boolean flecked = okta < MINGLED_OKTA && floor.fleck() != null && fleckShare >= LEAST_FLECK_SHARE;
        return flecked ? Math.max(0, floor.fleck() - floor.shade()) : 0;
    }

    /** Light falling at one altitude of the sun, which the land may hide. */
    private record Falling(double altitudeDeg, boolean clears, int dayOfYear) {

        /** Direct light on an upright front and the half of the sky that it faces. */
        Double frontEv(double pai) {
            if (!clears) {
                return null;
            }
            double direct = directNormalLux(CLEAR_OKTA) * Math.cos(Math.toRadians(altitudeDeg));
            return ExposureValue.ev100(direct + skyLux(CLEAR_OKTA, pai) / 2);
        }

        double shadeEv(double okta, double pai) {
            return ExposureValue.ev100(skyLux(okta, pai));
        }

        double levelEv(double okta, double pai) {
            return levelEv(okta, pai, 1);
        }

        /** Level ground with only a share of the direct light that reaches it counted in. */
        double levelEv(double okta, double pai, double share) {
            double direct = directNormalLux(okta) * Math.sin(Math.toRadians(altitudeDeg));
            return ExposureValue.ev100(share * direct * CanopyLight.gapFraction(altitudeDeg, pai) + skyLux(okta, pai));
        }

        private double directNormalLux(double okta) {
            return clears ? Daylight.directNormalLux(altitudeDeg, okta, dayOfYear) : 0;
        }

        /** Up to 4.5 okta the sky is taken as evenly bright, at 8 as the standard overcast one, mixed between. */
        private double skyLux(double okta, double pai) {
            double overcast = Daylight.overcastShare(okta);
            double through = (1 - overcast) * CanopyLight.uniformSky(pai) + overcast * CanopyLight.overcastSky(pai);
            return Daylight.skyLux(altitudeDeg, okta) * through;
        }
    }
}
