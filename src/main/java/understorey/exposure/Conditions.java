package understorey.exposure;

import understorey.light.LightAt;
import understorey.light.SunDirection;
import understorey.light.Weather;

/**
 * The light and the air that a picture is taken in.
 *
 * @param ev100         of the light that the picture is metered for
 * @param contrastStops between a fleck of sun and the shade; 0 when no sun reaches the floor
 * @param shadeStops    of that contrast, how much lies below the light metered; 0 when the shade is metered, null
 *                      when nobody tells
 * @param windMs        mean at flower height; null when nobody knows it
 * @param gustMs        at flower height; null when nobody knows it
 * @param sunStops      by which the sky round a sun within the frame is brighter than the light metered; null when no
 *                      sun is seen there
 */
public record Conditions(double ev100, double contrastStops, Double shadeStops, Double windMs, Double gustMs,
                         Double sunStops) {

    /** Sky round the sun over ground that it lights from the front, stops: common practice, no source. */
    private static final double GLARE_STOPS = 3;
    /** From here on clouds cover the sun more often than not. */
    private static final double SUN_HIDDEN_OKTA = 4;

    /**
     * The conditions at a place and an instant under a cloud cover of 0 to 8 okta.
     *
     * @param weather   for the wind; its own cloud is left aside
     * @param sun       as the camera has it before it; null when it is down, or the picture faces nowhere in particular
     */
    public static Conditions of(LightAt light, double okta, Weather weather, SunDirection sun) {
        double ev100 = light.floorEv(okta);
        double contrast = light.contrastStops(okta);
        double shade = Math.max(0, Math.min(contrast, ev100 - light.floor().shade()));
        boolean seen = sun != null && sun.where() == SunDirection.Where.IN_FRAME && okta < SUN_HIDDEN_OKTA
                && light.open().sun() != null && light.floor().fleck() != null;
        return new Conditions(ev100, contrast, shade, atFlowers(weather.windMs(), light),
                atFlowers(weather.gustMs(), light), seen ? light.open().sun() - ev100 + GLARE_STOPS : null);
    }

    private static Double atFlowers(Double windMs, LightAt light) {
        return windMs == null ? null : Double.valueOf(StemSway.windAtFlowersMs(windMs, light.plantAreaIndex()));
    }

    /** What bends the stems at the worst, m/s: the gust, or the mean wind where no gust is told; null for neither. */
    Double worstWindMs() {
        return gustMs != null ? gustMs : windMs;
    }

    /** What they stand in between gusts, m/s: the mean wind, or the gust where no mean is told; null for neither. */
    Double usualWindMs() {
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
