package understorey.exposure;

import understorey.kit.LensFit;
import understorey.plan.Sharp;

/**
 * The apertures of one picture, as marked: where to begin, and how far it may be opened for a shorter time before the
 * depth asked is lost.
 *
 * @param first  where to begin
 * @param widest the smallest f-number that still holds what was asked; {@code first} where nothing may be given
 * @param why    it begins there
 */
record Aperture(double first, double widest, ExposureReason why) {

    /**
     * A view begins where defocus and diffraction balance, since its ends gain by it and nothing else is lost; a
     * close-up where its depth is just held, so that the background melts as far as it can. Where no useful
     * aperture holds the depth, at the last that is of use.
     */
    static Aperture of(LensFit fit) {
        if (fit.camera().lens().oneAperture()) {
            return only(fit.fNumberWidest(), ExposureReason.APERTURE_FIXED);
        }
        double open = StopScale.nextFNumberUp(fit.fNumberWidest());
        double limit = Math.max(StopScale.snapFNumber(fit.fNumberUseful()), open);
        if (!fit.holdsDepth()) {
            return only(limit, ExposureReason.APERTURE_AT_LIMIT);
        }
        boolean wideOpen = fit.fNumberNeeded() <= fit.fNumberWidest();
        double asked = wideOpen ? open : Math.min(StopScale.nextFNumberUp(fit.fNumberNeeded()), limit);
        ExposureReason why = wideOpen ? ExposureReason.APERTURE_WIDE_OPEN : ExposureReason.APERTURE_FOR_DEPTH;
        if (fit.intent().sharp() instanceof Sharp.Depth) {
            return only(asked, why);
        }
        double balanced = Math.min(limit, Math.max(asked, StopScale.snapFNumber(fit.fNumberBalanced())));
        return new Aperture(balanced, asked, balanced > asked ? ExposureReason.APERTURE_BALANCED : why);
    }

    /** For each frame of a stack: as far down as leaves the plane of focus itself sharp. */
    static Aperture ofStack(LensFit fit) {
        return only(Math.max(StopScale.nextFNumberUp(fit.fNumberWidest()),
                StopScale.snapFNumber(fit.fNumberUnsoftened())), ExposureReason.APERTURE_FOR_STACK);
    }

    private static Aperture only(double fNumber, ExposureReason why) {
        return new Aperture(fNumber, fNumber, why);
    }
}
