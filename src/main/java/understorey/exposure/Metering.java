package understorey.exposure;

import org.jspecify.annotations.Nullable;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.LightAt.Metered;
import understorey.plan.LightWish;

/**
 * The light that a picture meters. Among flecks of sun a small frame lies in one of them or in the shade beside it, and a wide one
 * holds both. Mist is one light.
 *
 * @param part        of the ground
 * @param besideStops between that light and the other one beside a small frame; 0 where the frame holds all the light there is
 * @param moreStops   that the meter has to be given, because what it makes mid-grey is brighter
 */
public record Metering(Metered part, double besideStops, double moreStops) {

    /** One light everywhere. */
    public static final Metering GROUND = new Metering(Metered.GROUND, 0, 0);

    /** Width that the shadow of a body or a folding diffuser covers, m: common practice, no source. */
    private static final double SMALL_M = 0.4;
    /** Mist against mid-grey: two thirds of a stop to one, common practice, no source. */
    public static final double IN_MIST_STOPS = 2 / 3.0;

    /**
     * What a picture meters under a cloud cover of 0 to 8 okta. A small frame is in the sun if it wishes for it, or where most of the
     * ground is sunlit and it wishes for no soft light: common practice, no source.
     *
     * @param fit null for a picture that no lens takes, which counts as wide
     */
    public static Metering of(@Nullable LensFit fit, LightAt light, double okta) {
        double contrast = light.contrastStops(okta);
        if (fit == null || contrast == 0 || light.plantAreaIndex() == 0 || fit.frameWidthM() > SMALL_M) {
            return wide(light, okta);
        }
        boolean soft = fit.intent().shot().light().contains(LightWish.SOFT);
        boolean wished = fit.intent().shot().wishesForSun();
        return new Metering(wished || light.mostlySunlit() && !soft ? Metered.SUN : Metered.SHADE, contrast, 0);
    }

    /** What a wide frame meters. */
    static Metering wide(LightAt light, double okta) {
        return new Metering(light.metered(okta), 0, 0);
    }

    /** What a picture in mist meters, which veils flecks, shade and sky. */
    public static Metering inMist(LightAt light, double okta) {
        return new Metering(light.metered(okta), 0, IN_MIST_STOPS);
    }

    /** Whether a frame lies in one light, with another beside it. */
    public boolean small() {
        return besideStops > 0;
    }

    public boolean inMist() {
        return moreStops > 0;
    }
}
