package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.HelpAdvice;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Companion;

/**
 * Looks for what a companion could lend for a picture that the author's whole bag does not take as asked.
 *
 * @param best lens of the author's bag; null if there is none
 */
record Borrowing(Intent intent, Bag own, @Nullable LensFit best, Companion companion) {

    /**
     * A reason for each companion who helps.
     *
     * @param best lens of the author's bag; null if there is none
     */
    static List<Advice> of(Intent intent, Bag own, @Nullable LensFit best, List<Companion> companions) {
        List<Advice> offers = new ArrayList<>();
        for (Companion companion : companions) {
            Borrowing borrowing = new Borrowing(intent, own, best, companion);
            Advice offer = best == null || best.verdict() != Verdict.FITS ? borrowing.camera() : null;
            offer = offer == null && best != null && best.support() == null ? borrowing.support(best) : offer;
            if (offer != null) {
                offers.add(offer);
            }
        }
        return offers;
    }

    /** The fewest things that make the picture better, the best lens among equals; null if none do. */
    private @Nullable Advice camera() {
        Bag theirs = companion.gear();
        Bag both = new Bag(own.name(), null, joined(own.bodies(), theirs.bodies()), joined(own.lenses(), theirs.lenses()),
                own.supports(), joined(own.filters(), theirs.filters()), own.remoteRelease(), List.of(), 0, List.of());
        LensFit better = null;
        List<Object> lent = List.of();
        for (Camera camera : Camera.of(both)) {
            LensFit fit = LensTrial.of(both, camera, intent);
            Verdict verdict = better != null ? better.verdict() : best == null ? Verdict.CANNOT : best.verdict();
            int verdicts = fit.verdict().compareTo(verdict);
            List<Object> wanted = theirs(fit);
            if (verdicts < 0 || verdicts == 0 && better != null && (wanted.size() < lent.size()
                    || wanted.size() == lent.size() && fit.penalty() < better.penalty())) {
                better = fit;
                lent = wanted;
            }
        }
        return better == null ? null : offer(better, lent);
    }

    private Advice offer(LensFit fit, List<Object> lent) {
        boolean whole = Things.firstNotAmong(lent, fit.camera().parts()) == null;
        String item = lent.stream().map(Things::name).collect(Collectors.joining(", "));
        return whole ? new HelpAdvice.BorrowCamera(companion.name(), item) : new HelpAdvice.Borrow(companion.name(), item);
    }

    private List<Object> theirs(LensFit fit) {
        List<Object> things = Things.of(companion.gear());
        return fit.things().stream().filter(thing -> Things.among(things, thing)).toList();
    }

    private @Nullable Advice support(LensFit best) {
        return best.holdings(companion.gear()).stream().map(Holding::support).filter(Holding::steady).findFirst()
                .map(support -> new HelpAdvice.Borrow(companion.name(), support.name())).orElse(null);
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }
}
