package understorey.outing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * A good order of more than twelve pictures, for {@link BestOrder} to start from. For a given sequence the pictures to leave out
 * and the starts are found exactly. Sequences tried: the author's own; the twelve weightiest pictures in their best order with
 * the rest put in one by one where they do best; and from either whatever moving one picture to another place or changing two
 * about improves, in up to four rounds through all pictures. So the plan is never worse than the author's own order.
 */
final class LongOrder {

    /** Moves gain little after that many rounds through all pictures. */
    private static final int MOST_ROUNDS = 4;

    /** Sums looked at: some half a second. */
    private static final long MOST_STEPS = 400_000_000;

    private final Joins joins;
    private final Effort work = new Effort(MOST_STEPS);

    private LongOrder(Joins joins) {
        this.joins = joins;
    }

    static Schedule of(Joins joins) {
        return of(joins, BestOrder.MOST);
    }

    /** The same with fewer pictures to be ordered exactly. */
    static Schedule of(Joins joins, int exactly) {
        LongOrder order = new LongOrder(joins);
        Schedule own = order.improved(order.own());
        Schedule grown = better(own, order.improved(order.grown(exactly)));
        return grown == null ? own : grown;
    }

    /** The second plan where it is better, else null. */
    private static Schedule better(Schedule one, Schedule other) {
        return other.worth() > one.worth() || other.worth() == one.worth() && BestOrder.steps(other.back()) < BestOrder.steps(one.back()) ? other : null;
    }

    private List<Integer> own() {
        List<Integer> own = new ArrayList<>();
        for (int stint = 0; stint < joins.size; stint++) {
            own.add(stint);
        }
        return own;
    }

    private List<Integer> grown(int exactly) {
        List<Integer> weighty = own();
        weighty.sort(Comparator.comparing(stint -> -joins.visit.stints().get(stint).priority()));
        List<Integer> chosen = weighty.subList(0, exactly);
        Schedule best = BestOrder.of(new Joins(joins.visit.only(chosen)));
        List<Integer> sequence = new ArrayList<>();
        best.takes().forEach(take -> sequence.add(chosen.get(take.stint())));
        for (int stint : weighty) {
            if (!sequence.contains(stint)) {
                sequence.add(bestPlace(sequence, stint), stint);
            }
        }
        return sequence;
    }

    private Schedule tried(List<Integer> sequence) {
        for (int picture = 0; picture < sequence.size(); picture++) {
            work.spend((long) picture * joins.starts[sequence.get(picture)].length);
        }
        return inOrder(joins, sequence);
    }

    /** Where the picture does best, of the first places when work is spent; it may always stand behind those it waits for and before those that wait for it. */
    private int bestPlace(List<Integer> sequence, int stint) {
        int best = -1;
        Schedule found = null;
        for (int place = 0; place <= sequence.size() && (found == null || !work.spent()); place++) {
            List<Integer> tried = new ArrayList<>(sequence);
            tried.add(place, stint);
            if (keepsWaiting(tried)) {
                Schedule schedule = tried(tried);
                if (found == null || better(found, schedule) != null) {
                    found = schedule;
                    best = place;
                }
            }
        }
        return best;
    }

    private Schedule improved(List<Integer> sequence) {
        Better found = new Better(sequence);
        boolean again = true;
        for (int round = 0; round < MOST_ROUNDS && again; round++) {
            again = false;
            for (int at = 0; at < sequence.size() && !work.spent(); at++) {
                List<Integer> moved = new ArrayList<>(found.sequence);
                int stint = moved.remove(at);
                moved.add(bestPlace(moved, stint), stint);
                again |= found.by(moved);
            }
            for (int one = 0; one < sequence.size(); one++) {
                for (int other = one + 1; other < sequence.size() && !work.spent(); other++) {
                    List<Integer> swapped = new ArrayList<>(found.sequence);
                    Collections.swap(swapped, one, other);
                    again |= keepsWaiting(swapped) && found.by(swapped);
                }
            }
        }
        return found.schedule;
    }

    /** The best sequence so far. */
    private final class Better {
        private List<Integer> sequence;
        private Schedule schedule;

        private Better(List<Integer> sequence) {
            this.sequence = sequence;
            this.schedule = tried(sequence);
        }

        /** Takes another sequence where that is better. */
        private boolean by(List<Integer> other) {
            Schedule tried = tried(other);
            boolean better = better(schedule, tried) != null;
            sequence = better ? other : sequence;
            schedule = better ? tried : schedule;
            return better;
        }
    }

    private boolean keepsWaiting(List<Integer> sequence) {
        for (int i = 0; i < sequence.size(); i++) {
            for (int j = i + 1; j < sequence.size(); j++) {
                if (joins.waitsFor(sequence.get(i), sequence.get(j))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The best that a sequence allows, by leaving pictures out and choosing the starts. */
    static Schedule inOrder(Joins joins, List<Integer> sequence) {
        Sums[] sums = new Sums[sequence.size()];
        long worth = 0;
        int back = joins.visit.from();
        int end = -1;
        for (int p = 0; p < sums.length; p++) {
            int picture = sequence.get(p);
            sums[p] = sums(joins, sequence, sums, p);
            int by = joins.last[picture];
            long sum = by < 0 || sums[p] == null ? Sums.NEVER : sums[p].at(by);
            if (sum == Sums.NEVER || sum < worth) {
                continue;
            }
            int home = joins.visit.back(picture, joins.starts[picture][sums[p].reached(by)]);
            if (sum > worth || home < back) {
                worth = sum;
                back = home;
                end = p;
            }
        }
        return new Schedule(traced(joins, sequence, sums, end), worth, back);
    }

    private static Sums sums(Joins joins, List<Integer> sequence, Sums[] before, int place) {
        int picture = sequence.get(place);
        long[] sums = new long[joins.starts[picture].length];
        Arrays.fill(sums, 0, Math.min(sums.length, joins.first[picture]), Sums.NEVER);
        for (int p = 0; p < place; p++) {
            if (before[p] != null) {
                before[p].raise(sums, joins.joining(sequence.get(p), picture));
            }
        }
        return Sums.rising(sums, joins.worth[picture]);
    }

    private static List<Schedule.Take> traced(Joins joins, List<Integer> sequence, Sums[] sums, int end) {
        List<Schedule.Take> takes = new ArrayList<>();
        int place = end;
        int by = end < 0 ? 0 : joins.last[sequence.get(end)];
        while (place >= 0) {
            int picture = sequence.get(place);
            int start = sums[place].reached(by);
            takes.add(new Schedule.Take(picture, joins.starts[picture][start]));
            long rest = sums[place].at(start) - joins.worth[picture][start];
            int one = place - 1;
            while (rest > 0 && !reaches(joins.joining(sequence.get(one), picture)[start], sums[one], rest)) {
                one--;
            }
            by = rest > 0 ? joins.joining(sequence.get(one), picture)[start] : 0;
            place = rest > 0 ? one : -1;
        }
        Collections.reverse(takes);
        return List.copyOf(takes);
    }

    private static boolean reaches(int by, Sums sums, long rest) {
        return by >= 0 && sums != null && sums.at(by) == rest;
    }
}
