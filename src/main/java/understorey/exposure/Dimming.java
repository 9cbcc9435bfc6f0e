package understorey.exposure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.plan.Filter;
import understorey.plan.Sharp;

/**
 * What takes light from a picture that no shutter is short enough for. A close-up keeps its aperture, since a smaller
 * one shows more of the background, and puts on the weakest neutral density filter that does; a view stops down
 * first. Where neither does, the frame stays too bright.
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

    /**
     * What a time asks for.
     *
     * @param fits     neutral density filters that go on the lens
     * @param seconds  that the aperture would take as it is, at the lowest ISO
     * @param longestS that hands and stems allow
     */
    static Dimming of(LensFit fit, List<Darkening> fits, double fNumber, double seconds, double longestS) {
        boolean set = fit.intent().shot().set().fNumber() != null;
        if (fit.camera().lens().builtIn() || !tooShort(seconds)) {
            return none(fNumber);
        }
        boolean closeUp = fit.intent().sharp() instanceof Sharp.Depth;
        Dimming filtered = filtered(fits, fNumber, seconds, longestS);
        Dimming stopped = set ? null : stopped(fit, fNumber, seconds, closeUp);
        if (filtered != null && (closeUp || stopped == null)) {
            return filtered;
        }
        return stopped != null ? stopped : tooBright(set ? fNumber : Math.max(fNumber, smallest(fit)), fNumber, seconds);
    }

    private static @Nullable Dimming filtered(List<Darkening> fits, double fNumber, double seconds, double longestS) {
        Darkening weakest = null;
        for (Darkening one : fits) {
            double dimmedS = seconds * Math.pow(2, one.lossStops());
            if (!tooShort(dimmedS) && dimmedS <= longestS && (weakest == null || one.lossStops() < weakest.lossStops())) {
                weakest = one;
            }
        }
        if (weakest == null) {
            return null;
        }
        Filter filter = weakest.filters().get(weakest.filters().size() - 1);
        Advice why = weakest.filters().size() == 1
                ? new ApertureAdvice.DimmedByFilter(filter.name(), weakest.lossStops(), SHORTEST_S)
                : new ApertureAdvice.DimmedByFilterAndRing(filter.name(), weakest.filters().get(0).name(),
                        weakest.lossStops(), SHORTEST_S);
        return new Dimming(fNumber, weakest.filters(), weakest.lossStops(), why, Verdict.FITS);
    }

    /** The first smaller aperture that does, within what diffraction leaves of use; null for none. */
    private static @Nullable Dimming stopped(LensFit fit, double fNumber, double seconds, boolean closeUp) {
        double marked = fNumber;
        while (marked < smallest(fit) && tooShort(seconds * marked * marked / (fNumber * fNumber))) {
            marked = StopScale.thirdSmaller(marked);
        }
        if (tooShort(seconds * marked * marked / (fNumber * fNumber))) {
            return null;
        }
        Advice why = closeUp ? new ApertureAdvice.StoppedDownShows(marked, fNumber, SHORTEST_S, stops(seconds))
                : new ApertureAdvice.StoppedDown(marked, fNumber, SHORTEST_S);
        return new Dimming(marked, List.of(), 0, why, Verdict.FITS);
    }

    static double smallest(LensFit fit) {
        return StopScale.snapFNumber(fit.fNumberUseful());
    }

    static Dimming none(double fNumber) {
        return new Dimming(fNumber, List.of(), 0, null, Verdict.FITS);
    }

    private static Dimming tooBright(double smallest, double fNumber, double seconds) {
        double stops = stops(seconds * smallest * smallest / (fNumber * fNumber));
        return new Dimming(smallest, List.of(), 0, new ApertureAdvice.TooBright(SHORTEST_S, smallest, stops),
                stops > SAVED_STOPS ? Verdict.CANNOT : Verdict.COMPROMISE);
    }

    private static boolean tooShort(double seconds) {
        return StopScale.snapShutterS(seconds) < SHORTEST_S * 0.99;
    }

    private static double stops(double seconds) {
        return StopScale.log2(SHORTEST_S / seconds);
    }
}
