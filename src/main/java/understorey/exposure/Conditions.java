package understorey.exposure;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.light.SunDirection;
import understorey.weather.Weather;

/**
 * The light and the air that a picture is taken in.
 *
 * @param ev100         of the light that the picture is metered for
 * @param contrastStops between a fleck of sun and the shade; 0 when no sun reaches the floor
 * @param shadeStops    of that contrast, how much lies below the light metered; 0 when the shade is metered, null
 *                      if unknown
 * @param windMs        mean at flower height; null if unknown
 * @param gustMs        at flower height; null if unknown
 * @param sunStops      by which the sky round a sun within the frame is brighter than the light metered; null if no
 *                      sun is seen there
 */
public record Conditions(double ev100, double contrastStops, @Nullable Double shadeStops, @Nullable Double windMs,
                         @Nullable Double gustMs, @Nullable Double sunStops) {

    /** Sky round the sun over ground that it lights from the front, stops: common practice, no source. */
    private static final double GLARE_STOPS = 3;
    /** From here on clouds cover the sun more often than not. */
    private static final double SUN_HIDDEN_OKTA = 4;

    /**
     * The conditions at a place and an instant under a cloud cover of 0 to 8 okta.
     *
     * @param weather   for the wind; its own cloud is left aside
     * @param sun       as the camera has it before it; null if it is down, or the picture has no bearing
     */
    public static Conditions of(LightAt light, double okta, Weather weather, @Nullable SunDirection sun) {
        double ev100 = light.floorEv(okta);
        double contrast = light.contrastStops(okta);
        double shade = Math.max(0, Math.min(contrast, ev100 - light.floor().shade()));
        Double sunEv = light.open().sun();
        boolean seen = sun != null && sun.where() == SunDirection.Where.IN_FRAME && okta < SUN_HIDDEN_OKTA
                && light.floor().fleck() != null;
        return new Conditions(ev100, contrast, shade, atFlowers(weather.windMs(), light),
                atFlowers(weather.gustMs(), light), seen && sunEv != null ? sunEv - ev100 + GLARE_STOPS : null);
    }

    private static @Nullable Double atFlowers(@Nullable Double windMs, LightAt light) {
        return windMs == null ? null : Double.valueOf(StemSway.windAtFlowersMs(windMs, light.plantAreaIndex()));
    }

    /** Strongest wind at the stems, m/s: the gust, or the mean wind without a gust; null if both are unknown. */
    @Nullable Double worstWindMs() {
        return gustMs != null ? gustMs : windMs;
    }

    /** Strongest wind at the stems, of conditions in which it is known, m/s. */
    double givenWindMs() {
        return Objects.requireNonNull(worstWindMs(), "no wind");
    }

    /** Wind at the stems between gusts, m/s: the mean wind, or the gust without a mean; null if both are unknown. */
    @Nullable Double usualWindMs() {
        return windMs != null ? windMs : gustMs;
    }

    /** How far the shade lies under the light metered, stops; as if it were metered itself where nobody tells. */
    double belowStops() {
        return shadeStops == null ? 0 : shadeStops;
    }

    /** How far a fleck of sun stands over the light metered, stops. */
    double aboveStops() {
        return contrastStops - belowStops();
    }
}
