package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.plan.Companion;

/**
 * Every camera of a bag on one picture: the author's choice first, else the best.
 *
 * @param tried first the cameras that are carried, then those that stay at home
 * @param helps what would make good what the best lens falls short of, and a support where nothing in the bag
 *              holds the camera; empty when neither is wanting
 */
public record ShotFit(Intent intent, List<LensFit> tried, List<Advice> helps) {

    /** Joins the cameras that are carried with those that stay at home, and looks for what would help. */
    static ShotFit of(Picture picture, List<LensFit> carried, List<LensFit> home, List<Companion> companions) {
        List<LensFit> tried = new ArrayList<>(carried);
        tried.addAll(home);
        LensFit best = tried.isEmpty() ? null : tried.get(0);
        List<Advice> helps = new ArrayList<>(Remedies.of(best, tried, picture.bag()));
        helps.addAll(Borrowing.of(picture.intent(), picture.bag(), best, companions));
        return new ShotFit(picture.intent(), List.copyOf(tried), List.copyOf(helps));
    }

    /** True if a lens of the bag can take it in some light. */
    public boolean possible() {
        LensFit best = best();
        return best != null && best.verdict() != Verdict.CANNOT;
    }

    /** The lens to use; null if there is none. */
    public @Nullable LensFit best() {
        return tried.isEmpty() ? null : tried.get(0);
    }
}
