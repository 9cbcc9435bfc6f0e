package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Companion;
import understorey.plan.Support;

/**
 * One picture, and every way in which the whole bag takes it.
 *
 * @param trials   every camera, in the order of the bag
 * @param ways     best first; of the cameras that the author decided on, where the bag has any of them
 * @param standard set by the first of them; null for a picture that the whole bag cannot take: no part of it could
 */
record Picture(Bag bag, Intent intent, List<LensFit> trials, List<Way> ways, @Nullable Standard standard) {

    static Picture of(Bag bag, List<Camera> cameras, Intent intent) {
        List<LensFit> trials = cameras.stream().map(camera -> LensTrial.of(bag, camera, intent)).toList();
        List<LensFit> chosen = trials.stream().filter(LensFit::chosen).toList();
        List<Way> ways = Way.of(bag, chosen.isEmpty() ? trials : chosen);
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
     * Every camera on the picture with the things of the kept bag: first the carried ones, then those that stay at home.
     * Where the whole bag cannot take the picture, none counts as left at home.
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
        carried.sort(LensFit.BEST_FIRST);
        if (!carried.isEmpty() && carried.get(0).chosen()) {
            carried.set(0, carried.get(0).judged(trials));
        }
        home.sort(LensFit.BEST_FIRST);
        home.replaceAll(fit -> fit.leftAtHome(Objects.requireNonNull(Things.firstNotAmong(things, fit.camera().parts())),
                carried.get(0)));
        return ShotFit.of(this, carried, home, companions);
    }

    /** What the bag has to hold the camera, the first choice first. */
    List<Holding> holdings(Way way) {
        return way.trial().holdings(bag);
    }

    /** Whether a way needs the thing, or could be held by it. */
    boolean couldUse(Object thing, Way way) {
        return Things.among(way.parts(), thing) || holdings(way).stream().anyMatch(holding -> holding.support() == thing);
    }

    /** Everything that some way to keep the picture calls for; anything else would only weigh. */
    List<Object> useful() {
        List<Object> useful = new ArrayList<>();
        for (Way way : ways) {
            if (!toKeep().metBy(way)) {
                continue;
            }
            useful.addAll(way.parts());
            if (!toKeep().heldBy(null, way.trial().wantedHeightM())) {
                holdings(way).stream().filter(holding -> toKeep().heldBy(holding.support(), holding.heightM()))
                        .map(Holding::support).forEach(useful::add);
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
