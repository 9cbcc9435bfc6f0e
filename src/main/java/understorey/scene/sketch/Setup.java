package understorey.scene.sketch;

import org.jspecify.annotations.Nullable;
import understorey.kit.CoverTrade;
import understorey.kit.LensFit;
import understorey.plan.Canopy;
import understorey.plan.FieldGuide;
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
 * @param stage           of the flowers
 * @param around          trees and land behind
 */
public record Setup(LensFit fit, double fNumber, double sharpFromM, double sharpToM, @Nullable Slope slope,
                    @Nullable Canopy canopy, @Nullable Double clearingRadiusM, @Nullable SunAt sun, Air air, Stage stage,
                    Surroundings around) {

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

    /** True where the frame is too small for the whole head, and one of its flowers is drawn. */
    boolean partOfHead() {
        return subject().headWidthMm() != null && !subject().headWidthMm().equals(fit.flowerWidthMm());
    }

    double headM() {
        Double widthMm = fit.flowerWidthMm();
        return widthMm == null ? UNKNOWN_HEAD_M : widthMm / 1000;
    }

    double lowM() {
        return plantM(subject().heightLowM());
    }

    double highM() {
        return plantM(subject().heightHighM());
    }

    private double plantM(@Nullable Double limitM) {
        return limitM == null || subject().heightM() == null ? UNKNOWN_PLANT_M : limitM;
    }

    /** True when the camera is no higher than the highest flowers. */
    boolean amongFlowers() {
        return fit.heightM() <= highM();
    }

    /** Null for a fungus. */
    FieldGuide.@Nullable LeafForm leafForm() {
        FieldGuide guide = subject().guide();
        return guide == null ? FieldGuide.LeafForm.BLADE : guide.leaves() == null ? null : guide.leaves().form();
    }

    /** Height of the leaves; half that of the flowers where it is not known. */
    double leavesM() {
        FieldGuide guide = subject().guide();
        return guide == null || guide.leaves() == null ? (lowM() + highM()) / 4 : guide.leaves().heightM();
    }

    boolean fungus() {
        FieldGuide guide = subject().guide();
        return guide != null && guide.form() == FieldGuide.Form.CAP;
    }

    boolean stemsKnown() {
        return subject().stemsPerM2() != null;
    }

    /** Of a good stand; an assumption where it is not known. */
    double stemsPerM2() {
        Subject.Stems stems = subject().stemsPerM2();
        return stems == null ? UNKNOWN_STEMS : stems.typical();
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
