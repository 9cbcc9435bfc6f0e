package understorey.exposure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.SetAdvice;
import understorey.exposure.scale.StopScale;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.plan.CameraSettings;
import understorey.plan.Filter;
import understorey.plan.Sharp;

/**
 * What takes light from a picture that is too bright for the fastest shutter speed, or for the one that the author sets. A close-up
 * keeps its aperture, because a smaller one shows more of the background, and puts on the weakest filter that does; a view stops
 * down first. Where neither does, nor both do, the frame stays too bright.
 *
 * @param fNumber   as marked, stopped down where that is the way
 * @param filters   to put on, nearest the lens first
 * @param lossStops that those take
 * @param why       null if the light is not too bright
 */
record Dimming(double fNumber, List<Filter> filters, double lossStops, @Nullable Advice why, Verdict verdict) {

    /** The shortest time of most shutters, s: common practice, no source. */
    static final double SHORTEST_S = 1 / 8000.0;
    /** A RAW frame a stop too bright may keep its petals: common practice, no source. */
    private static final double SAVED_STOPS = 1;
    private static final double ROUNDING = 1e-9;

    /**
     * What a time asks for.
     *
     * @param fits     filters that go on the lens to take light
     * @param seconds  that the aperture would take as it is, at the lowest ISO
     * @param longestS that hands and stems allow
     */
    static Dimming of(LensFit fit, List<Darkening> fits, double fNumber, double seconds, double longestS) {
        CameraSettings set = fit.intent().shot().set();
        double shortestS = set.shutterS() == null ? SHORTEST_S : set.shutterS();
        if (fit.camera().lens().builtIn() || !tooShort(seconds, shortestS)) {
            return none(fNumber);
        }
        boolean closeUp = fit.intent().sharp() instanceof Sharp.Depth;
        boolean fixed = set.fNumber() != null || fit.camera().lens().oneAperture();
        Dimming filtered = filtered(fits, fNumber, seconds, shortestS, longestS);
        Dimming stopped = fixed ? null : stopped(fit, fNumber, seconds, shortestS, closeUp);
        if (filtered != null && (closeUp || stopped == null)) {
            return filtered;
        }
        if (stopped != null) {
            return stopped;
        }
        double smallest = fixed ? fNumber : Math.max(fNumber, smallest(fit));
        double smallestS = seconds * smallest * smallest / (fNumber * fNumber);
        Dimming both = filtered(fits, smallest, smallestS, shortestS, longestS);
        return both != null ? both : tooBright(smallest, smallestS, shortestS);
    }

    private static @Nullable Dimming filtered(List<Darkening> fits, double fNumber, double seconds, double shortestS, double longestS) {
        Darkening weakest = null;
        for (Darkening one : fits) {
            double dimmedS = seconds * Math.pow(2, one.lossStops());
            if (!tooShort(dimmedS, shortestS) && dimmedS <= longestS && (weakest == null || one.lossStops() < weakest.lossStops())) {
                weakest = one;
            }
        }
        if (weakest == null) {
            return null;
        }
        Filter filter = weakest.filters().get(weakest.filters().size() - 1);
        Advice why = weakest.filters().size() == 1
                ? new ApertureAdvice.DimmedByFilter(filter.name(), weakest.lossStops(), shortestS)
                : new ApertureAdvice.DimmedByFilterAndRing(filter.name(), weakest.filters().get(0).name(),
                        weakest.lossStops(), shortestS);
        return new Dimming(fNumber, weakest.filters(), weakest.lossStops(), why, Verdict.FITS);
    }

    /** The first smaller aperture that does, within what diffraction leaves of use; null for none. */
    private static @Nullable Dimming stopped(LensFit fit, double fNumber, double seconds, double shortestS, boolean closeUp) {
        double marked = fNumber;
        while (marked < smallest(fit) && tooShort(seconds * marked * marked / (fNumber * fNumber), shortestS)) {
            marked = StopScale.thirdSmaller(marked);
        }
        if (tooShort(seconds * marked * marked / (fNumber * fNumber), shortestS)) {
            return null;
        }
        Advice why = shortestS > SHORTEST_S ? new SetAdvice.ApertureForShutterSet(marked, shortestS)
                : closeUp ? new ApertureAdvice.StoppedDownShows(marked, fNumber, SHORTEST_S, stops(seconds, SHORTEST_S))
                : new ApertureAdvice.StoppedDown(marked, fNumber, SHORTEST_S);
        return new Dimming(marked, List.of(), 0, why, Verdict.FITS);
    }

    private static double smallest(LensFit fit) {
        return StopScale.snapFNumber(fit.fNumberUseful());
    }

    private static Dimming none(double fNumber) {
        return new Dimming(fNumber, List.of(), 0, null, Verdict.FITS);
    }

    private static Dimming tooBright(double smallest, double seconds, double shortestS) {
        double stops = stops(seconds, shortestS);
        return new Dimming(smallest, List.of(), 0, new ApertureAdvice.TooBright(shortestS, smallest, stops),
                stops > SAVED_STOPS ? Verdict.CANNOT : Verdict.COMPROMISE);
    }

    private static boolean tooShort(double seconds, double shortestS) {
        return seconds * Choice.TOLERANCE < shortestS * (1 - ROUNDING);
    }

    private static double stops(double seconds, double shortestS) {
        return StopScale.log2(shortestS / seconds);
    }
}
