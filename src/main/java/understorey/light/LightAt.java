package understorey.light;

import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import understorey.light.illuminance.ColourTemperature;
import understorey.light.illuminance.Daylight;
import understorey.light.illuminance.ExposureValue;
import understorey.light.illuminance.Moonlight;
import understorey.light.illuminance.TrunkSpace;
import understorey.sky.MoonAt;
import understorey.sky.SunAt;

/**
 * The light at an instant, in the open and on the ground under a canopy, as exposure values at ISO 100; the ground is level
 * or a slope.
 *
 * @param sun                position of the sun
 * @param shadowPerHeight    length of a shadow on level ground per height of its object; null if the sun's centre is not up
 * @param aboveSkyline       whether the sun's centre is above skyline and horizon
 * @param fleckShare         share of the ground in direct sun, 0 to 1; 0 if the sun is hidden
 * @param open               on open ground
 * @param floor              under the canopy; as in the open without one
 * @param colourTemperatureK of a clear sky, K; published lists differ by 20 %
 * @param place              its skyline and its canopy
 * @param moonLux            of the moon on open level ground under a clear sky; 0 by day and if the moon is down
 */
public record LightAt(SunAt sun, @Nullable Double shadowPerHeight, boolean aboveSkyline, double fleckShare, OpenEv open,
        FloorEv floor, int colourTemperatureK, Standpoint place, double moonLux) {

    private static final double CLEAR_OKTA = 0;
    private static final double BROKEN_OKTA = 6;
    private static final double OVERCAST_OKTA = 8;
    /** Cloud cover up to which flecks and shade are two lights under a canopy. */
    private static final double CLEAR_UP_TO_OKTA = 2;
    /** Cloud cover from which the ground under a canopy is judged as a whole. */
    private static final double MINGLED_OKTA = 4;
    private static final double FEW_FLECKS = 0.1;
    private static final double MANY_FLECKS = 0.4;
    /** Share of the ground below which a fleck of sun is found only by chance. */
    private static final double LEAST_FLECK_SHARE = 0.01;
    /** Share of the ground below which there is no fleck to meter. */
    private static final double NO_FLECK_SHARE = 0.001;

    /** Sun that lights an upright front most: sin³ h = 0.21 · cos² h, from the clear extinction of {@link Daylight}. */
    private static final double BEST_FRONT_DEG = 32;

    /**
     * Exposure values on open ground.
     *
     * @param sun      what the sun lights, clear sky: an upright subject from the front, or level ground under a sun
     *                 so high that this gets more; null if the sun is hidden
     * @param shade    the ground lit by the clear sky alone
     * @param broken   the ground under 6 okta
     * @param overcast the ground under 8 okta
     */
    public record OpenEv(@Nullable Double sun, double shade, double broken, double overcast) {
    }

    /**
     * Exposure values on the ground of a wood.
     *
     * @param fleck    a subject in a fleck of sun, as in the open, clear sky; null if the sun is hidden or
     *                 leaves less than a thousandth of the ground in sun
     * @param shade    the ground between the flecks, clear sky
     * @param broken   the ground under 6 okta, flecks and shade taken together
     * @param overcast the ground under 8 okta
     */
    public record FloorEv(@Nullable Double fleck, double shade, double broken, double overcast) {
    }

    /** The light at a place, without the moon. */
    public static LightAt of(SunAt sun, Standpoint place) {
        return of(sun, place, null);
    }

    /** The light at a place by sun, sky and moon; a null moon gives no light. */
    public static LightAt of(SunAt sun, Standpoint place, @Nullable MoonAt moon) {
        return of(sun, place, moon == null ? 0 : Moonlight.lux(moon));
    }

    /** The light between two rows of one place: sun and moon are linear, and their light is computed from them. */
    static LightAt between(LightAt from, LightAt to, double share) {
        return of(SunAt.between(from.sun, to.sun, share), from.place, from.moonLux + share * (to.moonLux - from.moonLux));
    }

    /** The light of this sun and moon at another place. */
    LightAt at(Standpoint other) {
        return of(sun, other, moonLux);
    }

    private static LightAt of(SunAt sun, Standpoint place, double moonLux) {
        boolean clears = place.skyline().clears(sun);
        double apparentDeg = sun.apparentAltitudeDeg();
        double share = clears ? place.canopy().sunShare(sun.azimuthDeg(), apparentDeg) : 0;
        Falling open = new Falling(sun, clears, place, 1, place.openSky(), place.overcastOpen());
        Falling floor = new Falling(sun, clears, place, share, place.uniformSky(), place.overcastSky());
        return new LightAt(sun,
                apparentDeg > 0 ? 1 / Math.tan(Math.toRadians(apparentDeg)) : null,
                clears,
                share,
                new OpenEv(clears ? open.sunEv() : null, open.shadeEv(), open.groundEv(BROKEN_OKTA, 1),
                        open.groundEv(OVERCAST_OKTA, 1)),
                new FloorEv(share >= NO_FLECK_SHARE ? floor.sunEv() : null, floor.shadeEv(),
                        floor.groundEv(BROKEN_OKTA, 1), floor.groundEv(OVERCAST_OKTA, 1)),
                ColourTemperature.kelvin(sun.altitudeDeg(), CLEAR_OKTA),
                place, moonLux);
    }

    /** True if most plants there can be in the sun: from two fifths of the ground on. */
    public boolean mostlySunlit() {
        return fleckShare >= MANY_FLECKS;
    }

    /** True if flecks of sun are easy to find: from 1 % of the ground on. */
    public boolean flecked() {
        return fleckShare >= LEAST_FLECK_SHARE;
    }

    /** True if the sun comes in only from an edge of the wood, and none is known. */
    boolean needsOpening() {
        TrunkSpace trunks = place.canopy().trunks();
        return aboveSkyline && trunks != null && trunks.needsOpening(sun.apparentAltitudeDeg());
    }

    /** The instant. */
    public ZonedDateTime time() {
        return sun.time();
    }

    /** Effective plant area index of the canopy, 0 for open ground. */
    public double plantAreaIndex() {
        return place.canopy().plantAreaIndex();
    }

    /** Exposure value of the moon alone on open ground under a clear sky; null without moonlight. */
    public @Nullable Double moonEv() {
        return moonLux > 0 ? ExposureValue.ev100(moonLux) : null;
    }

    /** Exposure value of the moon alone under the canopy, through the same gaps as the sky; null without moonlight. */
    public @Nullable Double moonFloorEv() {
        return moonLux > 0 ? ExposureValue.ev100(moonLux * place.uniformSky()) : null;
    }

    /**
     * Exposure value to meter for on the ground under a cloud cover of 0 to 8 okta. Open ground, and a wood
     * under cloud, get direct light by the gap fraction and the sky through the canopy. Under a canopy and a clear sky,
     * flecks and shade are two lights. The shade counts while flecks are less than a tenth of the ground; the whole ground
     * counts from two fifths, and from 4 okta; in between it is mixed (common practice, no source). By night the moon
     * counts as the sky does, dimmed by clouds as a sun would be.
     */
    public double floorEv(double okta) {
        double byShare = (fleckShare - FEW_FLECKS) / (MANY_FLECKS - FEW_FLECKS);
        double byCloud = (okta - CLEAR_UP_TO_OKTA) / (MINGLED_OKTA - CLEAR_UP_TO_OKTA);
        double whole = plantAreaIndex() == 0 ? 1 : Math.max(0, Math.min(1, Math.max(byShare, byCloud)));
        return ExposureValue.ev100(falling().groundLux(okta, whole) + falling().moonLux(moonLux, okta));
    }

    /** The part of the ground that a picture meters. */
    public enum Metered { GROUND, SHADE, SUN_AND_SHADE, SUN }

    /** Part that {@link #floorEv} meters: under a canopy and a clear sky the shade, or flecks and shade together. */
    public Metered metered(double okta) {
        return plantAreaIndex() == 0 || okta >= MINGLED_OKTA ? Metered.GROUND
                : okta <= CLEAR_UP_TO_OKTA && fleckShare <= FEW_FLECKS ? Metered.SHADE : Metered.SUN_AND_SHADE;
    }

    /** Exposure value of one part of the ground under a cloud cover of 0 to 8 okta; of a sun that is hidden, of all of it. */
    public double meteredEv(Metered part, double okta) {
        return switch (part) {
            case GROUND, SUN_AND_SHADE -> floorEv(okta);
            case SHADE -> ExposureValue.ev100(falling().groundLux(okta, 0) + falling().moonLux(moonLux, okta));
            case SUN -> floor.fleck() == null ? floorEv(okta) : floor.fleck();
        };
    }

    private Falling falling() {
        return new Falling(sun, aboveSkyline, place, fleckShare, place.uniformSky(), place.overcastSky());
    }

    /** Stops between a fleck of sun, on a plant or on the ground, and the shade beside it; 0 if clouds or leaves leave no flecks. */
    public double contrastStops(double okta) {
        if (okta >= MINGLED_OKTA || floor.fleck() == null || !flecked()) {
            return 0;
        }
        double ground = new Falling(sun, aboveSkyline, place, 1, place.uniformSky(), place.overcastSky())
                .groundEv(CLEAR_OKTA, 1);
        return Math.max(0, Math.max(floor.fleck(), ground) - floor.shade());
    }

    /**
     * Light that falls on a place while the sun has one position; the skyline may hide the sun.
     *
     * @param gap      share of the ground that the sun reaches
     * @param uniform  share of an evenly bright sky that reaches it
     * @param overcast share of the standard overcast sky
     */
    private record Falling(SunAt sun, boolean clears, Standpoint place, double gap, double uniform, double overcast) {

        /**
         * Exposure value of a sunlit subject: the larger of an upright front under half of the sky and of level ground under
         * all of it. Plants lean towards a sun above the altitude at which an upright front gets most. Their direct light
         * stays the same from there, at most 0.12 EV over that of an upright front, until level ground gets more.
         */
        double sunEv() {
            double frontDeg = Math.min(sun.apparentAltitudeDeg(), BEST_FRONT_DEG);
            double front = directNormalLux(frontDeg, CLEAR_OKTA) * Math.cos(Math.toRadians(frontDeg));
            double level = directNormalLux(CLEAR_OKTA) * Math.sin(Math.toRadians(sun.apparentAltitudeDeg()));
            double sky = skyLux(CLEAR_OKTA);
            return ExposureValue.ev100(Math.max(front + sky / 2, level + sky));
        }

        double shadeEv() {
            return ExposureValue.ev100(skyLux(CLEAR_OKTA));
        }

        double groundEv(double okta, double share) {
            return ExposureValue.ev100(groundLux(okta, share));
        }

        /** Illuminance of the ground, level or a slope, if a share of the direct light that reaches it counts. */
        double groundLux(double okta, double share) {
            double direct = directNormalLux(okta) * place.incidence(sun.azimuthDeg(), sun.apparentAltitudeDeg());
            return share * direct * gap + skyLux(okta);
        }

        private double directNormalLux(double okta) {
            return directNormalLux(sun.apparentAltitudeDeg(), okta);
        }

        private double directNormalLux(double altitudeDeg, double okta) {
            return clears ? Daylight.directNormalLux(altitudeDeg, okta, place.date().getDayOfYear()) : 0;
        }

        double skyLux(double okta) {
            return Daylight.skyLux(sun.altitudeDeg(), okta) * through(okta);
        }

        /** Share of the sky's light that arrives: evenly bright up to 4.5 okta, the standard overcast sky at 8, mixed in between. */
        private double through(double okta) {
            double cloudy = Daylight.overcastShare(okta);
            return (1 - cloudy) * uniform + cloudy * overcast;
        }

        double moonLux(double clearLux, double okta) {
            return clearLux == 0 ? 0 : clearLux * Daylight.cloudShare(okta) * through(okta);
        }
    }
}
