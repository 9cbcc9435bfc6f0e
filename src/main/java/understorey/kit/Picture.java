package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Companion;
import understorey.plan.Support;

/**
 * One picture, and every way in which the whole bag takes it.
 *
 * @param trials   every camera, in the order of the bag
 * @param ways     best first
 * @param standard set by the first of them; null for a picture that the whole bag cannot take: no part of it could
 */
record Picture(Bag bag, Intent intent, List<LensFit> trials, List<Way> ways, @Nullable Standard standard) {

    static Picture of(Bag bag, List<Camera> cameras, Intent intent) {
        List<LensFit> trials = new ArrayList<>();
        for (Camera camera : cameras) {
            trials.add(LensTrial.of(bag, camera, intent));
        }
        List<Way> ways = Way.of(bag, trials);
        boolean cannot = ways.isEmpty() || ways.get(0).verdict() == Verdict.CANNOT;
        return new Picture(bag, intent, trials, ways, cannot ? null : new Standard(ways.get(0).trial()));
    }

    /** The standard of a picture that the whole bag takes. */
    Standard toKeep() {
        return Objects.requireNonNull(standard, "the bag cannot take the picture");
    }

    boolean takeable() {
        return standard != null;
    }

    /**
     * The lenses that are carried, with what is carried of the rest, best first; then those that stay at home. Where
     * none is carried for a picture that the whole bag takes, each stays at home as one that cannot; where the whole
     * bag cannot take it, nothing is told of what stays.
     *
     * @param things of the kept bag
     */
    ShotFit carrying(Bag kept, List<Object> things, List<Companion> companions) {
        List<LensFit> carried = new ArrayList<>();
        List<LensFit> home = new ArrayList<>();
        for (LensFit trial : trials) {
            if (takeable() && Things.firstNotAmong(things, trial.camera().parts()) != null) {
                home.add(trial);
            } else {
                carried.add(!takeable() || Things.firstNotAmong(things, trial.things()) == null ? trial
                        : LensTrial.of(bag, kept, trial.camera(), intent));
            }
        }
        for (int i = 0; i < home.size(); i++) {
            LensFit fit = home.get(i);
            Object missing = Objects.requireNonNull(Things.firstNotAmong(things, fit.camera().parts()), "carried");
            home.set(i, fit.leftAtHome(missing, carried.isEmpty() ? Verdict.CANNOT : fit.verdict()));
        }
        return ShotFit.of(this, carried, home, companions);
    }

    /** What the bag has to hold the camera, the first choice first. */
    List<Holding> holdings(Way way) {
        return Holding.all(bag, way.trial().camera(), intent);
    }

    /** Whether a way needs the thing, or could be held by it. */
    boolean couldUse(Object thing, Way way) {
        if (Things.among(way.parts(), thing)) {
            return true;
        }
        for (Holding holding : holdings(way)) {
            if (holding.support() == thing) {
                return true;
            }
        }
        return false;
    }

    /** Everything that some way to keep the picture calls for; anything else would only weigh. */
    List<Object> useful() {
        List<Object> useful = new ArrayList<>();
        for (Way way : ways) {
            if (!toKeep().metBy(way)) {
                continue;
            }
            useful.addAll(way.parts());
            if (!toKeep().handsWillDo()) {
                for (Holding holding : holdings(way)) {
                    if (holding.support() != null && toKeep().heldBy(holding.support(), holding.heightM())) {
                        useful.add(holding.support());
                    }
                }
            }
        }
        return useful;
    }

    /** What the whole bag's own choice takes. */
    List<Object> chosen() {
        List<Object> chosen = new ArrayList<>(ways.get(0).parts());
        Support support = toKeep().whole().support();
        if (support != null) {
            chosen.add(support);
        }
        return chosen;
    }
}
