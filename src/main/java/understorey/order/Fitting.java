package understorey.order;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds whether some pictures all fit into a visit, and the smallest change that makes them fit. Light does not count here,
 * so for each set only the earliest end matters.
 */
final class Fitting {

    private static final int NEVER = Integer.MAX_VALUE;

    private Fitting() {
    }

    /** True if all pictures of a visit, at most {@link BranchAndBound#MOST}, can be taken in it. */
    static boolean allFit(Visit visit) {
        int size = visit.tasks().size();
        int[] end = new int[size << size];
        Arrays.fill(end, NEVER);
        for (int taken = 0; taken < 1 << size; taken++) {
            for (int next = 0; next < size; next++) {
                if ((taken >> next & 1) == 0 && followersLeft(visit, taken, next)) {
                    end[(taken | 1 << next) * size + next] = end(visit, taken, next, end);
                }
            }
        }
        for (int i = 0; i < size; i++) {
            int done = end[((1 << size) - 1) * size + i];
            if (done != NEVER && visit.times().arrive(visit.tasks().get(i).spot(), visit.base(), done) <= visit.to()) {
                return true;
            }
        }
        return size == 0;
    }

    private static boolean followersLeft(Visit visit, int taken, int next) {
        for (int rest = taken; rest != 0; rest &= rest - 1) {
            if (visit.tasks().get(Integer.numberOfTrailingZeros(rest)).after().contains(next)) {
                return false;
            }
        }
        return true;
    }

    private static int end(Visit visit, int taken, int next, int[] end) {
        int size = visit.tasks().size();
        int ready = taken == 0 ? visit.readyFirst(next) : NEVER;
        for (int rest = taken; rest != 0; rest &= rest - 1) {
            int one = Integer.numberOfTrailingZeros(rest);
            int done = end[taken * size + one];
            ready = done == NEVER ? ready : Math.min(ready, visit.ready(one, next, done));
        }
        return ready == NEVER ? NEVER : end(visit, visit.tasks().get(next), ready);
    }

    private static int end(Visit visit, Task task, int ready) {
        int start = task.firstStart(ready);
        boolean fits = start >= 0 && start + task.minutes() <= visit.to();
        return fits ? start + task.minutes() : NEVER;
    }

    /**
     * The smallest changes, each alone, that let all pictures of a visit fit; null if no change of that kind does.
     *
     * @param earlier minutes to arrive earlier
     * @param later   minutes to leave later
     * @param shorter minutes to spend less on one picture
     * @param task    that picture; the first in the author's order that needs the smallest change
     */
    record Room(@Nullable Integer earlier, @Nullable Integer later, @Nullable Integer shorter, @Nullable Integer task) {
    }

    /**
     * The changes that make room for all pictures of a visit.
     *
     * @param earliest minute of arriving
     * @param latest   minute of leaving
     * @param shortest minutes that a picture needs at least
     */
    static Room room(Visit visit, int earliest, int latest, int shortest) {
        Integer earlier = least(visit.from() - earliest, less -> visit.between(visit.from() - less, visit.to()));
        Integer later = least(latest - visit.to(), more -> visit.between(visit.from(), visit.to() + more));
        Integer shorter = null;
        Integer which = null;
        for (int i = 0; i < visit.tasks().size(); i++) {
            int task = i;
            int most = visit.tasks().get(i).minutes() - shortest;
            Integer less = least(shorter == null ? most : Math.min(most, shorter - 1), minutes -> shortened(visit, task, minutes));
            if (less != null) {
                shorter = less;
                which = i;
            }
        }
        return new Room(earlier, later, shorter, which);
    }

    private static Visit shortened(Visit visit, int task, int minutes) {
        List<Task> tasks = new ArrayList<>(visit.tasks());
        tasks.set(task, tasks.get(task).shorterBy(minutes));
        return visit.with(List.copyOf(tasks));
    }

    private interface Change {
        Visit by(int minutes);
    }

    /** The smallest change that fits, by bisection: what fits with some minutes fits with more. */
    private static @Nullable Integer least(int most, Change change) {
        if (most < 1 || !allFit(change.by(most))) {
            return null;
        }
        int enough = most;
        int tooFew = 0;
        while (enough - tooFew > 1) {
            int middle = (enough + tooFew) / 2;
            if (allFit(change.by(middle))) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return enough;
    }
}
