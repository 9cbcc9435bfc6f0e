package understorey.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.HelpAdvice;
import understorey.kit.camera.Shortfall;
import understorey.plan.Bag;
import understorey.plan.Filter;
import understorey.plan.Sharp;

/** Remedies for what a lens falls short of: another thing, another spot, a crop or a smaller print. */
final class Remedies {

    /** Longer tubes and stronger lenses are not made, or not worth having: common practice, no source. */
    private static final double LONGEST_TUBE_MM = 100;
    private static final double STRONGEST_DIOPTRES = 20;
    /** By so much less a crop an attachment is worth naming. */
    private static final double WORTH_ATTACHING = 1.1;

    private final LensFit best;
    private final List<LensFit> tried;
    private final Bag bag;
    private final List<Advice> helps = new ArrayList<>();

    private Remedies(LensFit best, List<LensFit> tried, Bag bag) {
        this.best = best;
        this.tried = tried;
        this.bag = bag;
    }

    /**
     * Each help once, in the order of what it makes good.
     *
     * @param best  null if there is no camera
     * @param tried every lens, with and without what the bag has to bring it closer
     */
    static List<Advice> of(@Nullable LensFit best, List<LensFit> tried, Bag bag) {
        if (best == null) {
            return List.of(new HelpAdvice.NoCamera());
        }
        Remedies helps = new Remedies(best, tried, bag);
        best.shortfalls().forEach(helps::makeGood);
        return helps.helps;
    }

    private void makeGood(Shortfall shortfall) {
        if (shortfall instanceof Shortfall.TooShort tooShort) {
            wanting(new HelpAdvice.HelpLonger(best.equivalentMm()));
            wanting(new HelpAdvice.HelpSpotNearer(tooShort.times()));
        } else if (shortfall instanceof Shortfall.TooLong tooLong) {
            wanting(new HelpAdvice.HelpWider(tooLong.askedMm()));
            wanting(new HelpAdvice.HelpSpotFarther(tooLong.times()));
        } else if (shortfall instanceof Shortfall.NotCloseEnough) {
            closer();
        } else if (shortfall instanceof Shortfall.TooNear tooNear) {
            stepBack(tooNear);
        } else if (shortfall instanceof Shortfall.TooDeep) {
            clear();
        } else if (shortfall instanceof Shortfall.TooFewPixels few) {
            print(few);
        } else if (shortfall instanceof Shortfall.NoRing ring) {
            add(new HelpAdvice.HelpStepUpRing(ring.lensThreadMm(),
                    Objects.requireNonNull(ring.polariser().threadMm(), "a polariser has a thread"), ring.polariser().name()));
        } else if (shortfall instanceof Shortfall.NoPolariser polariser) {
            add(new HelpAdvice.HelpPolariser(polariser.threadMm()));
        } else if (shortfall instanceof Shortfall.NoSupport) {
            support(new HelpAdvice.HelpSupport(best.heightM()));
        } else if (shortfall instanceof Shortfall.Overloaded) {
            support(new HelpAdvice.HelpStrongerSupport(best.camera().weightG() / 1000, best.heightM()));
        }
    }

    /** A lens that serves as it is needs no other, though its focal length be a little off. */
    private void wanting(Advice help) {
        if (best.verdict() != Verdict.FITS) {
            add(help);
        }
    }

    private void support(Advice help) {
        if (best.support() == null) {
            add(help);
        }
    }

    private void add(Advice help) {
        if (!helps.contains(help)) {
            helps.add(help);
        }
    }

    /** A tube of f·(m − m₀), or a close-up lens of power (m − m₀)/((1 + m₀)·f), makes up what is missing. */
    private void closer() {
        rings();
        LensFit attached = attached();
        Filter attachment = attached == null ? null : attached.camera().attachment();
        if (attached != null && attachment != null) {
            wanting(new HelpAdvice.HelpAttach(attachment.name(), attached.cropTimes()));
            return;
        }
        double missing = best.magnification() * (best.cropTimes() - 1);
        double tubeMm = best.focalMm() * missing;
        if (!best.camera().lens().builtIn() && tubeMm <= LONGEST_TUBE_MM) {
            wanting(new HelpAdvice.HelpTube(tubeMm));
        }
        double dioptres = missing / ((1 + best.magnification()) * best.focalMm() / 1000);
        if (dioptres <= STRONGEST_DIOPTRES) {
            wanting(new HelpAdvice.HelpCloseUpLens(dioptres));
        }
    }

    /** The best lens with an attachment of the bag that needs less crop; null where there is none. */
    private @Nullable LensFit attached() {
        return tried.stream().filter(fit -> fit.camera().lens() == best.camera().lens() && fit.camera().attachment() != null
                        && fit.cropTimes() * WORTH_ATTACHING < best.cropTimes())
                .min(Comparator.comparingDouble(LensFit::cropTimes)).orElse(null);
    }

    /** A close-up lens in the bag that only its thread keeps off. */
    private void rings() {
        Double thread = best.camera().lens().threadMm();
        for (Filter filter : bag.filters()) {
            if (filter.kind() == Filter.Kind.CLOSE_UP_LENS && filter.threadMm() != null && thread != null
                    && filter.threadMm() > thread && best.camera().attachment() == null) {
                wanting(new HelpAdvice.HelpStepUpRing(thread, filter.threadMm(), filter.name()));
            }
        }
    }

    /** A frame keeps its size when it is taken from farther off and cropped in proportion. */
    private void stepBack(Shortfall.TooNear near) {
        if (best.intent().frame() != null) {
            wanting(new HelpAdvice.HelpCrop(near.closestM(), Math.max(1, near.closestM() / near.askedM())));
        }
    }

    /**
     * From where the sharpness would do: the f-number that a range wants goes with 1/near − 1/far, so that
     * 1/near′ = 1/far + (1/near − 1/far)·useful/needed. Thin lens, for limits well beyond the focal length: 2 % at
     * twenty focal lengths.
     */
    private void clear() {
        if (best.intent().sharp() instanceof Sharp.Range range) {
            double far = 1 / range.farM();
            wanting(new HelpAdvice.HelpSpotClear(1 / (far + (1 / range.nearM() - far) * best.fNumberUseful() / best.fNumberNeeded())));
        }
    }

    /** Width goes with the root of the pixels. */
    private void print(Shortfall.TooFewPixels few) {
        Double widthM = best.intent().shot().printWidthM();
        if (widthM != null) {
            wanting(new HelpAdvice.HelpSmallerPrint(widthM * Math.sqrt(few.leftMpx() / few.neededMpx())));
        }
    }
}
