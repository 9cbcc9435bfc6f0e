package understorey.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import understorey.kit.camera.Things;
import understorey.plan.Bag;

/**
 * Things to choose from, each a bit, in file order. The choice is free among up to twenty things. Where more are useful,
 * only what the whole bag's own choices take is looked at, and of that the twenty heaviest. The rest is always taken, so
 * the outcome never weighs more than those choices together.
 */
final class ItemSet {

    /** Most things that are searched: they make a million sets. */
    static final int MOST = 20;
    /** Bit of everything that is always taken. */
    static final int ALWAYS = 1 << MOST;

    private final List<Object> all;
    private final List<Object> free = new ArrayList<>();
    private final List<Object> always = new ArrayList<>();

    ItemSet(Bag bag, List<Picture> pictures) {
        all = Things.of(bag);
        List<Object> useful = new ArrayList<>();
        List<Object> chosen = new ArrayList<>();
        for (Picture picture : pictures) {
            useful.addAll(picture.useful());
            chosen.addAll(picture.chosen());
        }
        take(useful);
        if (free.size() > MOST) {
            take(chosen);
            while (free.size() > MOST) {
                Object lightest = Collections.min(free, Comparator.comparingLong(ItemSet::weightMg));
                free.removeIf(thing -> thing == lightest);
                always.add(lightest);
            }
        }
    }

    private void take(List<Object> things) {
        free.clear();
        all.stream().filter(thing -> Things.among(things, thing)).forEach(free::add);
    }

    /** Weight in whole milligrams, so that sums are exact in any order; 0 for an unknown weight. */
    static long weightMg(Object thing) {
        Double grams = Things.weightG(thing);
        return grams == null ? 0 : Math.round(grams * 1000);
    }

    /** Number of free bits. */
    int size() {
        return free.size();
    }

    long weightMg(int bit) {
        return weightMg(free.get(bit));
    }

    long alwaysMg() {
        return always.stream().mapToLong(ItemSet::weightMg).sum();
    }

    /** All bits together; 0 when one of the things has none. */
    int of(List<Object> things) {
        int bits = 0;
        for (Object thing : things) {
            int bit = of(thing);
            if (bit == 0) {
                return 0;
            }
            bits |= bit;
        }
        return bits;
    }

    /** Bit of a thing; 0 where it has none. */
    int of(Object thing) {
        for (int i = 0; i < free.size(); i++) {
            if (free.get(i) == thing) {
                return 1 << i;
            }
        }
        return Things.among(always, thing) ? ALWAYS : 0;
    }

    /** Place of a thing in the bag, from 0. */
    int number(Object thing) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) == thing) {
                return i;
            }
        }
        return all.size();
    }

    /** Number of things in the bag. */
    int count() {
        return all.size();
    }

    /** The things of a set of bits, in file order. */
    List<Object> things(int set) {
        return all.stream().filter(thing -> (of(thing) & set) != 0).toList();
    }
}
