package understorey.exposure;

import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import understorey.exposure.motion.Lulls;
import understorey.exposure.motion.StemSway;
import understorey.light.LightAt;
import understorey.light.SunDirection;
import understorey.light.illuminance.PiecewiseLinear;
import understorey.weather.Weather;

/**
 * The light and the air that a picture is taken in.
 *
 * @param ev100         of the light that the picture is metered for
 * @param contrastStops within the frame, between a fleck of sun and the shade; 0 when no sun reaches the ground
 * @param shadeStops    of that contrast, how much lies below the light metered; 0 when the shade is metered, null
 *                      if unknown
 * @param windMs        mean at flower height; of {@link #ASSUMED_WIND_MS} without a forecast
 * @param gustMs        at flower height; never below the mean
 * @param sunStops      by which the sky around a sun within the frame is brighter than the light metered; null if no
 *                      sun is seen there
 * @param metering      what is metered
 * @param pastGustStops by which a frame may be slower than a gust allows, because it is taken between gusts; 0 where they follow
 *                      each other, positive infinity in a lull
 */
public record Conditions(double ev100, double contrastStops, @Nullable Double shadeStops, double windMs,
                         double gustMs, @Nullable Double sunStops, Metering metering, double pastGustStops) {

    /** Wind at 10 m in the open where no wind is forecast, m/s: a light breeze (Beaufort 2), never still air. */
    public static final double ASSUMED_WIND_MS = 2;
    /** Least mean wind at 10 m, m/s: a forecast of none is never still air. Common practice, no source. */
    private static final double LEAST_WIND_MS = 0.3;
    /** Gust over mean of a wind over open land, where no gust is forecast: 1 + 3·I, I = 0.2 (from memory). */
    private static final double GUSTS = 1.6;
    /** Stops past a gust's limit by the mean wind at 10 m, m/s: two up to a light breeze, none where lulls end. Common practice, no source. */
    private static final PiecewiseLinear PAST_GUST_STOPS = new PiecewiseLinear(new double[][] {{2, 2}, {6, 0}});
    /** Height of flowers whose height is not given, m. */
    private static final double FLOWERS_M = 0.3;

    /** Sky around the sun over ground that it lights from the front, stops: common practice, no source. */
    private static final double GLARE_STOPS = 3;
    /** From here on clouds cover the sun more often than not. */
    private static final double SUN_HIDDEN_OKTA = 4;

    /**
     * The conditions at a place and an instant under a cloud cover of 0 to 8 okta.
     *
     * @param weather   for the wind; its own cloud is left aside
     * @param sun       as the camera has it before it; null if it is down, or the picture has no bearing
     * @param flowersM  height of the flowers above the ground, m; null if it is not given
     */
    public static Conditions of(LightAt light, Metering metering, double okta, Weather weather, @Nullable SunDirection sun,
            @Nullable Double flowersM) {
        double ev100 = light.meteredEv(metering.part(), okta);
        double contrast = metering.small() || metering.inMist() ? 0 : light.contrastStops(okta);
        double shade = Math.max(0, Math.min(contrast, ev100 - light.floor().shade()));
        Double sunEv = light.open().sun();
        boolean seen = sun != null && sun.where() == SunDirection.Where.IN_FRAME && okta < SUN_HIDDEN_OKTA
                && !metering.inMist() && light.floor().fleck() != null;
        UnaryOperator<Double> atFlowers = windMs -> StemSway.windAtFlowersMs(windMs, light.place().canopy(), flowersM == null ? FLOWERS_M : flowersM);
        double meanMs = meanMs(weather);
        double gustMs = Math.max(meanMs, weather.gustMs() == null ? GUSTS * meanMs : weather.gustMs());
        return new Conditions(ev100, contrast, shade, atFlowers.apply(meanMs), atFlowers.apply(gustMs),
                seen && sunEv != null ? sunEv - ev100 + GLARE_STOPS : null, metering, PAST_GUST_STOPS.at(meanMs));
    }

    boolean hasLulls() {
        return pastGustStops > 0;
    }

    /** The mean wind at 10 m, m/s; the gust where only that is forecast. */
    private static double meanMs(Weather weather) {
        return Math.max(LEAST_WIND_MS, weather.windMs() != null ? weather.windMs() : weather.gustMs() != null ? weather.gustMs() : ASSUMED_WIND_MS);
    }

    /** The light in a lull, which gusts end. */
    Conditions inLull() {
        return new Conditions(ev100, contrastStops, shadeStops, windMs * Lulls.LEFT, gustMs, sunStops, metering, Double.POSITIVE_INFINITY);
    }

    /** How far the shade is below the light metered, stops; 0 if that is unknown. */
    double belowStops() {
        return shadeStops == null ? 0 : shadeStops;
    }

    /** How far a fleck of sun is above the light metered, stops. */
    double aboveStops() {
        return contrastStops - belowStops();
    }
}
