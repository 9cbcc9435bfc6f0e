package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.plan.Bag;
import understorey.plan.Companion;

/**
 * The lightest part of a bag that takes every picture as well as the whole bag does. Bodies, lenses, supports and
 * filters are chosen from; extras, release, cards and batteries are the author's and stay.
 *
 * <p>A picture is kept when the best that the smaller bag does for it matches the best of the whole bag: no worse a
 * verdict (a compromise no more than half a stop worse), the polariser on, held as steadily and as high. Without a limit
 * on the weight every picture that the whole bag takes is kept. Within a limit the must-haves come first, then the
 * most of the rest, by priority. Of equal bags the lightest, then the one with the fewest changes of lens in file
 * order, then with the fewest things, then with the thing that comes first in the file. What nobody weighed counts
 * nothing.
 *
 * @param whole as the author packed it
 * @param kept  to carry
 * @param fits  a picture each, in file order: first the lenses that are carried, then those that stay at home
 * @param lost  pictures that the whole bag takes and this one, for its weight's sake, takes worse or not at all
 * @param left  what stays at home, in file order
 * @param exact false for a bag of more than twenty things of use, where something lighter may have been missed
 */
public record SmallestBag(Bag whole, Bag kept, List<ShotFit> fits, List<Intent> lost, List<Left> left,
                          boolean exact) {

    /** A thing that stays at home; the weight is null when not given. */
    public record Left(String name, Double weightG, Advice why) {
    }

    /** The smallest bag, whatever it weighs. */
    public static SmallestBag of(Bag bag, List<Companion> companions, List<Intent> intents) {
        return within(Double.POSITIVE_INFINITY, bag, companions, intents);
    }

    /**
     * The smallest bag that weighs no more than so many grams, extras not counted.
     *
     * @param companions from whom to borrow what takes a picture better than the whole bag does
     */
    public static SmallestBag within(double mostG, Bag bag, List<Companion> companions, List<Intent> intents) {
        List<Picture> pictures = new ArrayList<>();
        List<Picture> takeable = new ArrayList<>();
        List<Camera> cameras = Camera.of(bag);
        for (Intent intent : intents) {
            Picture picture = Picture.of(bag, cameras, intent);
            pictures.add(picture);
            if (picture.takeable()) {
                takeable.add(picture);
            }
        }
        ItemSet bits = new ItemSet(bag, takeable);
        List<Object> things = bits.things(BagSearch.of(bits, takeable, (long) (mostG * 1000)));
        Bag kept = Things.only(bag, things);
        List<ShotFit> fits = new ArrayList<>();
        List<Intent> lost = new ArrayList<>();
        for (Picture picture : pictures) {
            ShotFit fit = picture.carrying(kept, things, companions);
            fits.add(fit);
            if (picture.takeable() && !picture.keptBy(fit.best())) {
                lost.add(picture.intent());
            }
        }
        return new SmallestBag(bag, kept, List.copyOf(fits), List.copyOf(lost),
                Leaving.of(bag, things, takeable, fits, lost), bits.exact());
    }
}
