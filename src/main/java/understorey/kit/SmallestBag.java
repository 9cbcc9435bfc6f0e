package understorey.kit;

import java.util.List;
import understorey.advice.Advice;
import understorey.kit.camera.Camera;
import understorey.kit.camera.Things;
import understorey.plan.Bag;
import understorey.plan.Companion;

/**
 * Lightest part of a bag that takes every picture as well as the whole bag does. It is chosen from bodies, lenses,
 * supports and filters; extras, release, cards and batteries are the author's and stay.
 *
 * <p>Every picture that the whole bag takes is kept, by the camera that the author decided on or by one that an expert calls
 * equal to the best: no worse a verdict, at most half a stop further short, the polariser on, held as steadily and as high.
 * Of the bags that do so it is the lightest, then the one with the fewest lens changes in file order, then with the fewest
 * things, then with the thing that comes first in the file. A thing without a weight counts as 0. In a bag with more than
 * twenty useful things, a lighter choice may be missed.
 *
 * @param whole as the author packed it
 * @param kept  to carry
 * @param fits  a picture each, in file order: first the lenses that are carried, then those that stay at home
 * @param left  what stays at home, in file order
 */
public record SmallestBag(Bag whole, Bag kept, List<ShotFit> fits, List<Left> left) {

    /** A body, lens, support or filter that stays at home. */
    public record Left(Object thing, Advice why) {
    }

    /**
     * The smallest bag.
     *
     * @param companions from whom to borrow what takes a picture better than the whole bag does
     */
    public static SmallestBag of(Bag bag, List<Companion> companions, List<Intent> intents) {
        List<Camera> cameras = Camera.of(bag);
        List<Picture> pictures = intents.stream().map(intent -> Picture.of(bag, cameras, intent)).toList();
        List<Picture> takeable = pictures.stream().filter(Picture::takeable).toList();
        ItemSet bits = new ItemSet(bag, takeable);
        List<Object> things = bits.things(BagSearch.of(bits, takeable));
        Bag kept = Things.only(bag, things);
        List<ShotFit> fits = pictures.stream().map(picture -> picture.carrying(kept, things, companions)).toList();
        return new SmallestBag(bag, kept, fits, Leaving.of(bag, things, takeable, fits));
    }
}
