package understorey.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A good order of more than twelve pictures, for {@link BranchAndBound} to start from. For a given sequence, the pictures to leave
 * out and the starts are exact. Two sequences are improved: the author's own, and the best order of the twelve weightiest
 * pictures with the others inserted one by one where they do best. Improving moves one picture or swaps two, in up to four
 * rounds through all pictures. So the plan is never worse than the author's own order.
 */
final class LocalSearch {

    /** More rounds through all pictures gain little. */
    private static final int MOST_ROUNDS = 4;

    /** States looked at: about half a second. */
    private static final long MOST_STEPS = 400_000_000;

    private final Transitions transitions;
    private final Budget work = new Budget(MOST_STEPS);

    private LocalSearch(Transitions transitions) {
        this.transitions = transitions;
    }

    static Schedule of(Transitions transitions) {
        return of(transitions, BranchAndBound.MOST);
    }

    /** A good order, with a given number of pictures ordered exactly. */
    static Schedule of(Transitions transitions, int exactly) {
        LocalSearch order = new LocalSearch(transitions);
        Schedule own = order.improved(order.own());
        Schedule grown = order.improved(order.grown(exactly));
        return better(grown, own) ? grown : own;
    }

    /** Whether a plan is worth more than another, or as much and is back earlier. */
    private static boolean better(Schedule one, Schedule other) {
        return one.worth() > other.worth()
                || one.worth() == other.worth() && Task.steps(one.back()) < Task.steps(other.back());
    }

    private List<Integer> own() {
        List<Integer> own = new ArrayList<>();
        for (int task = 0; task < transitions.size; task++) {
            own.add(task);
        }
        return own;
    }

    private List<Integer> grown(int exactly) {
        List<Integer> weighty = own();
        weighty.sort(Comparator.comparing(task -> -transitions.visit.tasks().get(task).priority()));
        List<Integer> chosen = weighty.subList(0, exactly);
        Schedule best = BranchAndBound.of(new Transitions(transitions.visit.only(chosen)));
        List<Integer> sequence = new ArrayList<>();
        best.takes().forEach(take -> sequence.add(chosen.get(take.task())));
        for (int task : weighty) {
            if (!sequence.contains(task)) {
                sequence.add(bestPlace(sequence, task), task);
            }
        }
        return sequence;
    }

    private Schedule tried(List<Integer> sequence) {
        for (int picture = 0; picture < sequence.size(); picture++) {
            work.spend((long) picture * transitions.starts[sequence.get(picture)].length);
        }
        return inOrder(transitions, sequence);
    }

    /** The best place for a picture, among the first places if the budget is spent; some place always keeps the waiting order. */
    private int bestPlace(List<Integer> sequence, int task) {
        int best = -1;
        Schedule found = null;
        for (int place = 0; place <= sequence.size() && (found == null || !work.spent()); place++) {
            List<Integer> tried = new ArrayList<>(sequence);
            tried.add(place, task);
            if (keepsWaiting(tried)) {
                Schedule schedule = tried(tried);
                if (found == null || better(schedule, found)) {
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
                int task = moved.remove(at);
                moved.add(bestPlace(moved, task), task);
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

        /** Takes another sequence if it is better. */
        private boolean by(List<Integer> other) {
            Schedule tried = tried(other);
            boolean better = better(tried, schedule);
            sequence = better ? other : sequence;
            schedule = better ? tried : schedule;
            return better;
        }
    }

    private boolean keepsWaiting(List<Integer> sequence) {
        for (int i = 0; i < sequence.size(); i++) {
            for (int j = i + 1; j < sequence.size(); j++) {
                if (transitions.waitsFor(sequence.get(i), sequence.get(j))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The best plan of a sequence: the pictures to leave out, and the starts. */
    static Schedule inOrder(Transitions transitions, List<Integer> sequence) {
        @Nullable BestByStart[] sums = new BestByStart[sequence.size()];
        long worth = 0;
        int back = transitions.visit.from();
        int place = Transitions.NONE;
        int end = Transitions.NONE;
        for (int p = 0; p < sums.length; p++) {
            int picture = sequence.get(p);
            BestByStart found = sums(transitions, sequence, sums, p);
            sums[p] = found;
            int ended = found == null ? Transitions.NONE : found.ended(transitions, picture, transitions.last[picture]);
            if (found == null || ended < 0 || found.at(ended) - transitions.price(picture, ended) < worth) {
                continue;
            }
            long sum = found.at(ended) - transitions.price(picture, ended);
            int home = transitions.visit.back(picture, transitions.starts[picture][ended]);
            if (sum > worth || home < back) {
                worth = sum;
                back = home;
                place = p;
                end = ended;
            }
        }
        return new Schedule(traced(transitions, sequence, sums, place, end), worth, back);
    }

    private static @Nullable BestByStart sums(Transitions transitions, List<Integer> sequence, @Nullable BestByStart[] before,
                                              int place) {
        int picture = sequence.get(place);
        long[] sums = new long[transitions.starts[picture].length];
        Arrays.fill(sums, transitions.setUp[picture]);
        Arrays.fill(sums, 0, Math.min(sums.length, transitions.first[picture]), BestByStart.NEVER);
        for (int p = 0; p < place; p++) {
            if (before[p] != null) {
                before[p].raise(sums, transitions.joining(sequence.get(p), picture), transitions.busy[sequence.get(p)][picture]);
            }
        }
        return BestByStart.rising(sums, transitions.worth[picture]);
    }

    /** The pictures of the best plan that ends at a place of the sequence with a start, found backwards. */
    private static List<Schedule.Take> traced(Transitions transitions, List<Integer> sequence, @Nullable BestByStart[] sums,
                                              int last, int end) {
        List<Schedule.Take> takes = new ArrayList<>();
        int place = last;
        int by = end;
        while (place >= 0) {
            int picture = sequence.get(place);
            int start = sums[place].reached(by);
            takes.add(new Schedule.Take(picture, transitions.starts[picture][start]));
            long rest = sums[place].at(start) - transitions.worth[picture][start];
            int one = rest == transitions.setUp[picture] ? Transitions.NONE : place - 1;
            while (one >= 0 && !reaches(transitions, sequence.get(one), picture, start, sums[one], rest)) {
                one--;
            }
            by = one < 0 ? 0 : transitions.joining(sequence.get(one), picture)[start];
            place = one;
        }
        Collections.reverse(takes);
        return List.copyOf(takes);
    }

    private static boolean reaches(Transitions transitions, int one, int next, int start, @Nullable BestByStart sums, long rest) {
        int by = transitions.joining(one, next)[start];
        return by >= 0 && sums != null && sums.at(by) + transitions.busy[one][next] == rest;
    }
}
