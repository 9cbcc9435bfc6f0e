package understorey.exposure;

import java.util.List;
import understorey.advice.Advice;
import understorey.advice.PhoneAdvice;
import understorey.advice.ToneAdvice;
import understorey.exposure.scale.Bracket;
import understorey.exposure.scale.StopScale;
import understorey.kit.LensFit;
import understorey.light.LightAt.Metered;
import understorey.plan.Body;
import understorey.plan.LightWish;

/** Which tones of the scene a frame holds: the bracket, and the histogram to aim for. */
public final class Tones {

    /** A sensor clips at 18/√2 = 12.7 % of the exposure that saturates it: ISO 12232 as quoted in secondary copies, stops above mid-grey. */
    public static final double HEADROOM_STOPS = StopScale.log2(100 * Math.sqrt(2) / 18);
    private static final double MID_GREY = 0.18;
    private static final double LEAST_STOPS = 1 / 6.0;
    /** Two frames by hand or of flowers that move, because more do not line up: common practice, no source. */
    private static final int FEWEST_STEPS = 1;

    private Tones() {
    }

    /** Stops of a surface above mid-grey, from the share of light that it reflects. */
    public static double aboveMidGrey(double reflectance) {
        return StopScale.log2(reflectance / MID_GREY);
    }

    /**
     * Stops to expose below the light metered, so that one frame holds the petals in flecks of sun too, negative above it in mist; 0
     * where they hold as metered, where a bracket holds them, for a phone, and for a picture of soft light, which waits for a cloud.
     */
    static double lessStops(LensFit fit, Conditions conditions) {
        if (conditions.metering().inMist()) {
            return -conditions.metering().moreStops();
        }
        double less = Bracket.lessStops(above(conditions));
        boolean one = Bracket.stops(above(conditions), conditions.belowStops(), keepsRaw(fit), Bracket.MOST_STEPS).size() == 1;
        boolean soft = fit.intent().shot().light().contains(LightWish.SOFT);
        return one && !soft && !Phone.is(fit) && conditions.shadeStops() != null && less >= LEAST_STOPS ? less : 0;
    }

    private static double above(Conditions conditions) {
        Double sun = conditions.sunStops();
        return sun == null ? conditions.aboveStops() : Math.max(conditions.aboveStops(), sun);
    }

    /** The frames of the bracket; adds why, and where the petals belong. A phone makes its own frames. */
    static List<Integer> bracket(List<Advice> reasons, LensFit fit, Conditions conditions) {
        boolean raw = keepsRaw(fit);
        Metering metering = conditions.metering();
        if (metering.small()) {
            reasons.add(metering.part() == Metered.SUN ? new ToneAdvice.SmallFrameInSun(metering.besideStops())
                    : new ToneAdvice.SmallFrameInShade(metering.besideStops()));
        }
        if (metering.inMist()) {
            reasons.add(new ToneAdvice.ExposeForMist(metering.moreStops()));
        }
        double above = above(conditions);
        if (conditions.sunStops() != null) {
            reasons.add(new ToneAdvice.FrameHoldsSun(conditions.sunStops()));
        }
        double contrast = above + conditions.belowStops();
        List<Integer> stops = Bracket.stops(above, conditions.belowStops(), raw,
                fit.steady() && Stack.still(fit, conditions) ? Bracket.MOST_STEPS : FEWEST_STEPS);
        if (Phone.is(fit) && stops.size() > 1) {
            reasons.add(new PhoneAdvice.PhoneHdr(contrast));
            stops = List.of(0);
        } else if (stops.size() > 1) {
            reasons.add(stops.get(0) == 0
                    ? new ToneAdvice.BracketUp(contrast, stops.size())
                    : new ToneAdvice.Bracket(contrast, stops.size(), -stops.get(0)));
        } else if (lessStops(fit, conditions) > 0) {
            reasons.add(new ToneAdvice.ExposeForFlecks(contrast, lessStops(fit, conditions)));
        }
        Advice aim = Phone.is(fit) || lessStops(fit, conditions) > 0 ? null : Petals.aim(fit.intent().shot().subject());
        if (aim != null) {
            reasons.add(aim);
        }
        if (!raw) {
            reasons.add(Phone.is(fit) ? new PhoneAdvice.PhoneTones() : new ToneAdvice.NoRaw());
        }
        return stops;
    }

    /** A body that takes other lenses keeps RAW, also where the bag gives no size of it; a phone only where the bag gives its size. */
    private static boolean keepsRaw(LensFit fit) {
        Body body = fit.camera().body();
        return body.rawSizeMb() != null || !fit.camera().lens().builtIn();
    }
}
