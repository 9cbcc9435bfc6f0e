package understorey.exposure;

import org.jspecify.annotations.Nullable;
import understorey.kit.LensFit;
import understorey.plan.Sharp;

/**
 * How far the background of a close-up melts: discs that points of light behind the flower spread to, as shares of the
 * picture's width.
 *
 * @param near of a point a metre behind the plane of focus
 * @param far  of a point at the horizon
 */
public record Background(double near, double far) {

    static final double BEHIND_M = 1;
    /** From three hundredths of the width on, stems and leaves behind lose their outlines: common practice, no source. */
    private static final double MELTS = 0.03;

    /** The background at an f-number as marked; null for a view, and from above, where the ground is the background. */
    static @Nullable Background of(LensFit fit, double fNumber) {
        if (!(fit.intent().sharp() instanceof Sharp.Depth) || fit.looksDown()) {
            return null;
        }
        double widthMm = fit.usedWidthMm();
        return new Background(fit.blurDiscMm(fNumber, (fit.focusM() + BEHIND_M) * 1000) / widthMm,
                fit.blurDiscMm(fNumber, Double.POSITIVE_INFINITY) / widthMm);
    }

    /** True if another aperture changes the share that is shown, in whole per cent. */
    boolean differsFrom(Background other) {
        return Math.max(1, Math.round(100 * near)) != Math.max(1, Math.round(100 * other.near));
    }

    /** True if what is a metre behind the flower is out of focus. */
    public boolean melts() {
        return near >= MELTS;
    }
}
