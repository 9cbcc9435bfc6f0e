package understorey.scene;

import understorey.kit.CoverTrade;
import understorey.kit.LensFit;
import understorey.plan.Canopy;
import understorey.plan.Slope;
import understorey.plan.Subject;
import understorey.sky.SunAt;

/**
 * One picture, ready to be drawn.
 *
 * @param fNumber         as set on the lens
 * @param sharpFromM      nearest sharp point, from the lens
 * @param sharpToM        farthest sharp point, up to infinity
 * @param slope           of the ground; null when level
 * @param canopy          over the spot; null if not given
 * @param clearingRadiusM without trees; null under a closed canopy
 * @param sun             null when land hides it or it is down
 */
public record Setup(LensFit fit, double fNumber, double sharpFromM, double sharpToM, Slope slope, Canopy canopy,
                    Double clearingRadiusM, SunAt sun) {

    /** Where the catalogue does not know: common practice, no source. */
    private static final double UNKNOWN_HEAD_M = 0.04;
    private static final double UNKNOWN_PLANT_M = 0.3;
    private static final double UNKNOWN_STEMS = 20;
    /** Common practice, no source. */
    private static final double CLOSE = 2.5;
    private static final double CLOSEST = 4;

    Subject subject() {
        return fit.intent().shot().subject();
    }

    /** True when one plant is framed, not a view or a drift: the frame is no higher than some plants. */
    boolean close() {
        return fit.intent().frame() != null && fit.frameHeightM() < CLOSE * (lowM() + highM()) / 2;
    }

    double headM() {
        return subject().headWidthMm() == null ? UNKNOWN_HEAD_M : subject().headWidthMm() / 1000;
    }

    double lowM() {
        return subject().heightM() == null ? UNKNOWN_PLANT_M : subject().heightLowM();
    }

    double highM() {
        return subject().heightM() == null ? UNKNOWN_PLANT_M : subject().heightHighM();
    }

    boolean stemsKnown() {
        return subject().stemsPerM2() != null;
    }

    /** Of a good stand; an assumption where it is not known. */
    double stemsPerM2() {
        return subject().stemsPerM2() == null ? UNKNOWN_STEMS : subject().stemsPerM2().typical();
    }

    /** Rise of the ground along the view, degrees. */
    double riseDeg() {
        return Math.max(-60, Math.min(60, CoverTrade.alongViewDeg(slope, fit.intent().shot().facingDeg())));
    }

    boolean trees() {
        return canopy != null && !canopy.isNone();
    }

    /** True when little but the one head is in the frame. */
    boolean closest() {
        return close() && fit.frameWidthM() < CLOSEST * headM();
    }

    Focus focus() {
        return new Focus(fit.actingFocalMm(), fNumber / fit.closeUpTimes(), fit.focusM(), fit.usedWidthMm(), sharpFromM,
                sharpToM);
    }
}
