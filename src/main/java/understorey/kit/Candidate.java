package understorey.kit;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import understorey.kit.camera.Camera;
import understorey.plan.Filter;
import understorey.plan.Support;

/**
 * A way as bits: the things that it needs and what could hold it, each a bit of the set of things carried.
 *
 * @param needs     every bit of these
 * @param good      the picture is kept by it, if it is held well
 * @param holders   one bit each, the first choice first
 * @param well      whether that holder holds it well
 * @param handsWell whether the hands do
 * @param body      number of the body
 * @param mounted   number of what is mounted on it, lens and tube together; 0 for what is built in
 */
record Candidate(int needs, boolean good, int[] holders, boolean[] well, boolean handsWell, int body, int mounted) {

    /** The picture's candidates, the best first; those that need what has no bit are left out. */
    static Candidate[] of(Picture picture, ItemSet bits) {
        List<Way> ways = picture.ways();
        Candidate[] candidates = new Candidate[ways.size()];
        int count = 0;
        for (Way way : ways) {
            int needs = bits.of(way.parts());
            if (needs != 0) {
                candidates[count++] = of(picture, way, needs, bits);
            }
        }
        return Arrays.copyOf(candidates, count);
    }

    private static Candidate of(Picture picture, Way way, int needs, ItemSet bits) {
        List<Holding> all = picture.holdings(way);
        Standard standard = picture.toKeep();
        int[] holders = new int[all.size()];
        boolean[] well = new boolean[all.size()];
        for (int i = 0; i < holders.length; i++) {
            Support support = Objects.requireNonNull(all.get(i).support(), "by hand");
            holders[i] = bits.of(support);
            well[i] = standard.heldBy(support, all.get(i).heightM());
        }
        Camera camera = way.trial().camera();
        Filter attachment = camera.attachment();
        return new Candidate(needs, standard.metBy(way), holders, well,
                standard.heldBy(null, way.trial().wantedHeightM()),
                bits.number(camera.body()), camera.lens().builtIn() ? 0
                        : 1 + bits.number(camera.lens()) + (attachment == null || camera.tubeMm() == 0 ? 0
                                : bits.count() * (1 + bits.number(attachment))));
    }

    boolean within(int carried) {
        return (needs & ~carried) == 0;
    }

    /** Whether the picture is kept by it, held by the first choice of what is carried. */
    boolean keeps(int carried) {
        for (int i = 0; i < holders.length; i++) {
            if ((holders[i] & carried) != 0) {
                return good && well[i];
            }
        }
        return good && handsWell;
    }

    /** Whether some part of those things could keep the picture by it. */
    boolean couldKeep(int things) {
        if (!good || !within(things)) {
            return false;
        }
        for (int i = 0; i < holders.length; i++) {
            if ((holders[i] & things) != 0 && well[i]) {
                return true;
            }
        }
        return handsWell;
    }
}
