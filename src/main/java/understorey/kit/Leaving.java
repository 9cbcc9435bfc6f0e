package understorey.kit;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import understorey.advice.Advice;
import understorey.advice.BagAdvice;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Lens;
import understorey.plan.Support;

/**
 * Finds why each thing that is not carried stays at home.
 *
 * @param pictures that the whole bag takes
 * @param fits     of all pictures, with what is carried
 */
record Leaving(Bag bag, List<Picture> pictures, List<ShotFit> fits) {

    /**
     * What stays at home, in file order.
     *
     * @param carried  things
     * @param pictures that the whole bag takes
     * @param fits     of all pictures, with what is carried
     */
    static List<SmallestBag.Left> of(Bag bag, List<Object> carried, List<Picture> pictures, List<ShotFit> fits) {
        Leaving leaving = new Leaving(bag, pictures, fits);
        return Things.of(bag).stream().filter(thing -> !Things.among(carried, thing))
                .map(thing -> new SmallestBag.Left(thing, leaving.why(thing))).toList();
    }

    private Advice why(Object thing) {
        if (thing instanceof Lens lens && lens.mount() != null && !mounts(lens)) {
            return new BagAdvice.LeftNoBody(lens.mount());
        }
        for (Picture picture : pictures) {
            if (Things.among(picture.chosen(), thing)) {
                String shot = picture.intent().shot().name();
                return new BagAdvice.LeftSpared(shot, instead(thing, picture));
            }
        }
        return spare(thing);
    }

    /** What the thing could do, at its best, for a picture that another does without it. */
    private Advice spare(Object thing) {
        Way best = null;
        Picture served = null;
        for (Picture picture : pictures) {
            for (Way way : picture.ways()) {
                if (way.verdict() != Verdict.CANNOT && (best == null || way.verdict().compareTo(best.verdict()) < 0)
                        && picture.couldUse(thing, way)) {
                    best = way;
                    served = picture;
                }
            }
        }
        return served == null || best == null ? unasked(thing) : spare(thing, served, best);
    }

    private Advice spare(Object thing, Picture picture, Way way) {
        String shot = picture.intent().shot().name();
        String taker = taker(thing, picture);
        LensFit taken = best(picture);
        if (way.verdict() != Verdict.FITS) {
            return new BagAdvice.LeftCompromise(shot, taker);
        }
        boolean equal = thing instanceof Support || way.penalty() <= taken.penalty() + LensFit.EQUAL_STOPS;
        return equal ? new BagAdvice.LeftAsWell(shot, taker) : new BagAdvice.LeftOutclassed(shot, taker);
    }

    /** A thing that could take a picture for which the author decided on another camera, or none at all. */
    private Advice unasked(Object thing) {
        return pictures.stream().filter(picture -> best(picture).chosen() && picture.trials().stream()
                        .anyMatch(trial -> trial.verdict() != Verdict.CANNOT && Things.among(trial.camera().parts(), thing)))
                .findFirst().<Advice>map(picture -> new BagAdvice.LeftByChoice(picture.intent().shot().name(), taker(thing, picture)))
                .orElseGet(BagAdvice.LeftUnasked::new);
    }

    /** What is carried in the thing's place: a support, or the hands; a lens, or the body that it is built into. */
    private String taker(Object thing, Picture picture) {
        LensFit best = best(picture);
        if (thing instanceof Support) {
            return best.support() == null ? "your hands" : best.support().name();
        }
        return thing instanceof Body ? best.camera().name()
                : best.camera().lens().builtIn() ? best.camera().body().name() : best.camera().lens().name();
    }

    private LensFit best(Picture picture) {
        return fits.stream().filter(fit -> fit.intent() == picture.intent()).map(ShotFit::best).filter(Objects::nonNull).findFirst()
                .orElseThrow();
    }

    private boolean mounts(Lens lens) {
        return bag.bodies().stream().anyMatch(body -> Objects.equals(lens.mount(), body.mount()));
    }

    /** Names of what is carried for the picture instead of the whole bag's choice; the lens where nothing else differs. */
    private String instead(Object thing, Picture picture) {
        LensFit best = best(picture);
        String names = best.things().stream().filter(other -> thing instanceof Support == other instanceof Support
                && !Things.among(picture.chosen(), other)).map(Things::name).collect(Collectors.joining(" + "));
        return names.isEmpty() ? taker(best.camera(), picture) : names;
    }
}
