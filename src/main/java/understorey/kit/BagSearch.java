package understorey.kit;

import java.util.Arrays;
import java.util.List;

/**
 * Finds the best set of things to carry: it keeps the most pictures, by priority and then by count; of such sets the
 * lightest; then with the fewest changes of lens, the pictures taken in file order; then with the fewest things; then
 * with the thing that comes first in the file. The search is exhaustive; a branch is cut only where what it could
 * still keep, or what it already weighs, rules it out.
 */
final class BagSearch {

    /** A picture of one priority counts more than any number of the next lower. */
    private static final int DIGITS = 20;

    private final ItemSet bits;
    private final Candidate[][] candidates;
    private final long[] worth;
    private final long mostMg;
    private final int[] heaviestFirst;
    private final int[] mounted;

    private int best;
    private long bestWorth = -1;
    private long bestMg;
    private int bestChanges;

    private BagSearch(ItemSet bits, List<Picture> pictures, long mostMg) {
        this.bits = bits;
        this.mostMg = mostMg;
        candidates = new Candidate[pictures.size()][];
        worth = new long[pictures.size()];
        for (int i = 0; i < worth.length; i++) {
            candidates[i] = Candidate.of(pictures.get(i), bits);
            worth[i] = 1L << DIGITS * (pictures.get(i).intent().priority() - 1);
        }
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

    /**
     * The set to carry.
     *
     * @param mostMg it may not weigh more; where even what is always taken weighs more, nothing is carried
     */
    static int of(ItemSet bits, List<Picture> pictures, long mostMg) {
        BagSearch search = new BagSearch(bits, pictures, mostMg);
        int chosen = ItemSet.ALWAYS;
        for (Picture picture : pictures) {
            chosen |= bits.of(picture.chosen());
        }
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
        if (mg > mostMg) {
            return;
        }
        long hope = hope(carried | open);
        if (hope < bestWorth || hope == bestWorth && mg > bestMg) {
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

    /** No part of these things keeps more. */
    private long hope(int things) {
        long sum = 0;
        for (int i = 0; i < worth.length; i++) {
            for (Candidate candidate : candidates[i]) {
                if (candidate.couldKeep(things)) {
                    sum += worth[i];
                    break;
                }
            }
        }
        return sum;
    }

    private void judge(int carried, long mg) {
        if (mg > mostMg) {
            return;
        }
        Arrays.fill(mounted, 0);
        long sum = 0;
        int changes = 0;
        for (int i = 0; i < worth.length; i++) {
            Candidate way = first(candidates[i], carried);
            if (way == null || !way.keeps(carried)) {
                continue;
            }
            sum += worth[i];
            changes += mounted[way.body()] != 0 && mounted[way.body()] != way.mounted() ? 1 : 0;
            mounted[way.body()] = way.mounted();
        }
        if (better(carried, sum, mg, changes)) {
            best = carried;
            bestWorth = sum;
            bestMg = mg;
            bestChanges = changes;
        }
    }

    private boolean better(int carried, long sum, long mg, int changes) {
        if (sum != bestWorth) {
            return sum > bestWorth;
        }
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

    private static Candidate first(Candidate[] ways, int carried) {
        for (Candidate way : ways) {
            if (way.within(carried)) {
                return way;
            }
        }
        return null;
    }
}
