package understorey.kit;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Bag;

/**
 * The things to choose from, each a bit, in file order. Up to twenty of them the choice is free. Of a bag in which more
 * are of use, only what the whole bag's own choices take is looked at, and of that the twenty heaviest: the rest of
 * it is taken as a whole, so that the outcome never weighs more than those choices together.
 */
final class ItemSet {

    /** Twenty things make a million sets. */
    static final int MOST = 20;
    /** The bit of everything that is taken anyhow. */
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
                Object lightest = lightest();
                free.removeIf(thing -> thing == lightest);
                always.add(lightest);
            }
        }
    }

    private void take(List<Object> things) {
        free.clear();
        for (Object thing : all) {
            if (Things.among(things, thing)) {
                free.add(thing);
            }
        }
    }

    private Object lightest() {
        Object lightest = free.get(0);
        for (Object thing : free) {
            if (weightMg(thing) < weightMg(lightest)) {
                lightest = thing;
            }
        }
        return lightest;
    }

    /** Whole milligrams, so that sums are exact in any order; what nobody weighed counts nothing. */
    static long weightMg(Object thing) {
        Double grams = Things.weightG(thing);
        return grams == null ? 0 : Math.round(grams * 1000);
    }

    /** How many bits are free. */
    int size() {
        return free.size();
    }

    long weightMg(int bit) {
        return weightMg(free.get(bit));
    }

    long alwaysMg() {
        long sum = 0;
        for (Object thing : always) {
            sum += weightMg(thing);
        }
        return sum;
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

    /** 0 when it has none. */
    int of(Object thing) {
        for (int i = 0; i < free.size(); i++) {
            if (free.get(i) == thing) {
                return 1 << i;
            }
        }
        return Things.among(always, thing) ? ALWAYS : 0;
    }

    /** Its place in the bag. */
    int number(Object thing) {
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i) == thing) {
                return i;
            }
        }
        return all.size();
    }

    /** Of all things in the bag. */
    int count() {
        return all.size();
    }

    /** The things of a set of bits, in file order. */
    List<Object> things(int set) {
        List<Object> things = new ArrayList<>();
        for (Object thing : all) {
            if ((of(thing) & set) != 0) {
                things.add(thing);
            }
        }
        return things;
    }
}
