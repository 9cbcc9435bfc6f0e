package understorey.kit;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds the best set of things to carry: of the sets that keep every picture the lightest; then with the fewest changes
 * of lens, the pictures taken in file order; then with the fewest things; then with the thing that comes first in the
 * file. The search is exhaustive; a branch is cut only where it cannot keep a picture, or is too heavy already.
 */
final class BagSearch {

    private final ItemSet bits;
    private final Candidate[][] candidates;
    private final int[] heaviestFirst;
    private final int[] mounted;

    private int best;
    private long bestMg = Long.MAX_VALUE;
    private int bestChanges;

    private BagSearch(ItemSet bits, List<Picture> pictures) {
        this.bits = bits;
        candidates = pictures.stream().map(picture -> Candidate.of(picture, bits)).toArray(Candidate[][]::new);
        mounted = new int[bits.count()];
        heaviestFirst = new int[bits.size()];
        for (int i = 0; i < heaviestFirst.length; i++) {
            int at = i;
            while (at > 0 && bits.weightMg(heaviestFirst[at - 1]) < bits.weightMg(i)) {
                heaviestFirst[at] = heaviestFirst[--at];
            }
            heaviestFirst[at] = i;
        }
    }

    /** The set to carry; at most what the whole bag's own choices take together. */
    static int of(ItemSet bits, List<Picture> pictures) {
        BagSearch search = new BagSearch(bits, pictures);
        int chosen = ItemSet.ALWAYS;
        for (Picture picture : pictures) {
            chosen |= bits.of(picture.chosen());
        }
        search.best = chosen;
        search.judge(chosen, search.weightMg(chosen));
        search.branch(0, ItemSet.ALWAYS, (1 << bits.size()) - 1, bits.alwaysMg());
        return search.best;
    }

    private long weightMg(int set) {
        long sum = bits.alwaysMg();
        for (int i = 0; i < bits.size(); i++) {
            sum += (set & 1 << i) == 0 ? 0 : bits.weightMg(i);
        }
        return sum;
    }

    private void branch(int depth, int carried, int open, long mg) {
        if (mg > bestMg || !couldKeepAll(carried | open)) {
            return;
        }
        if (open == 0) {
            judge(carried, mg);
            return;
        }
        int bit = 1 << heaviestFirst[depth];
        branch(depth + 1, carried, open & ~bit, mg);
        branch(depth + 1, carried | bit, open & ~bit, mg + bits.weightMg(heaviestFirst[depth]));
    }

    private boolean couldKeepAll(int things) {
        for (Candidate[] ways : candidates) {
            if (!couldKeep(ways, things)) {
                return false;
            }
        }
        return true;
    }

    private static boolean couldKeep(Candidate[] ways, int things) {
        for (Candidate way : ways) {
            if (way.couldKeep(things)) {
                return true;
            }
        }
        return false;
    }

    private void judge(int carried, long mg) {
        Arrays.fill(mounted, 0);
        int changes = 0;
        for (Candidate[] ways : candidates) {
            Candidate way = first(ways, carried);
            if (way == null || !way.keeps(carried)) {
                return;
            }
            changes += mounted[way.body()] != 0 && mounted[way.body()] != way.mounted() ? 1 : 0;
            mounted[way.body()] = way.mounted();
        }
        if (better(carried, mg, changes)) {
            best = carried;
            bestMg = mg;
            bestChanges = changes;
        }
    }

    private boolean better(int carried, long mg, int changes) {
        if (mg != bestMg) {
            return mg < bestMg;
        }
        if (changes != bestChanges) {
            return changes < bestChanges;
        }
        int things = Integer.compare(Integer.bitCount(carried), Integer.bitCount(best));
        int apart = carried ^ best;
        return things != 0 ? things < 0 : (carried & apart & -apart) != 0;
    }

    private static @Nullable Candidate first(Candidate[] ways, int carried) {
        for (Candidate way : ways) {
            if (way.within(carried)) {
                return way;
            }
        }
        return null;
    }
}
