package understorey.exposure;

import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.SetAdvice;
import understorey.exposure.scale.StopScale;
import understorey.kit.LensFit;
import understorey.plan.Sharp;

/**
 * The apertures of one picture, as marked: where to begin, and how far it may be opened for a shorter time before the
 * depth asked is lost.
 *
 * @param first  where to begin
 * @param widest the smallest f-number that still holds what was asked; {@code first} where nothing may be given
 * @param open   the smallest f-number that there is leave for: past a depth that nobody asked for, that of the lens
 * @param why    it begins there
 */
record Aperture(double first, double widest, double open, Advice why) {

    /**
     * A view begins where defocus and diffraction balance, since its ends gain by it and nothing else is lost, and so does a
     * scene, which no aperture parts from its background; where the depth is held wide open, two stops from there, where a lens
     * is sharpest (common practice, no source). A close-up begins where its depth is just held, so that the background melts as far as it can. Where no useful
     * aperture holds the depth, at the last that is of use.
     */
    static Aperture of(LensFit fit) {
        if (fit.camera().lens().oneAperture()) {
            return only(fit.fNumberWidest(), new ApertureAdvice.ApertureFixed(fit.fNumberWidest()));
        }
        double open = StopScale.nextFNumberUp(fit.fNumberWidest());
        double limit = Math.max(StopScale.snapFNumber(fit.fNumberUseful()), open);
        if (!fit.holdsDepth()) {
            double yielding = fit.intent().sharp() instanceof Sharp.Depth ? Math.max(open, yielding(limit)) : open;
            return new Aperture(limit, limit, fit.depthIsProposed() ? yielding : limit, new ApertureAdvice.ApertureAtLimit(limit));
        }
        boolean wideOpen = fit.fNumberNeeded() <= fit.fNumberWidest();
        double asked = wideOpen ? open : Math.min(StopScale.nextFNumberUp(fit.fNumberNeeded()), limit);
        Advice why = wideOpen ? new ApertureAdvice.ApertureWideOpen(asked)
                : FlowerDepth.of(fit, asked) == null ? new ApertureAdvice.ApertureForDepth(asked) : new ApertureAdvice.ApertureForPart(asked);
        if (fit.intent().sharp() instanceof Sharp.Depth && !fit.isScene()) {
            return new Aperture(asked, asked, fit.depthIsProposed() ? Math.max(open, yielding(asked)) : asked, why);
        }
        double crisp = wideOpen ? StopScale.snapFNumber(2 * open) : asked;
        double balanced = Math.min(limit, Math.max(crisp, StopScale.snapFNumber(fit.fNumberBalanced())));
        return new Aperture(balanced, asked, fit.depthIsProposed() ? open : asked,
                balanced <= asked ? why : balanced <= crisp ? new ApertureAdvice.ApertureStoppedDown(balanced) : new ApertureAdvice.ApertureBalanced(balanced, asked));
    }

    /** Two stops less of a depth of field that was only suggested leave a picture what it is: common practice, no source. */
    double yielding() {
        return Math.max(open, yielding(widest));
    }

    private static double yielding(double fNumber) {
        return StopScale.snapFNumber(fNumber / 2);
    }

    /** As the author sets it, whatever the lens has. */
    static Aperture asSet(double fNumber) {
        return only(fNumber, new SetAdvice.ApertureSet(fNumber));
    }

    /** For each frame of a stack: as far down as leaves the plane of focus itself sharp. */
    static Aperture ofStack(LensFit fit) {
        double fNumber = Math.max(StopScale.nextFNumberUp(fit.fNumberWidest()), StopScale.snapFNumber(fit.fNumberUnsoftened()));
        return only(fNumber, new ApertureAdvice.ApertureForStack(fNumber));
    }

    private static Aperture only(double fNumber, Advice why) {
        return new Aperture(fNumber, fNumber, fNumber, why);
    }
}
