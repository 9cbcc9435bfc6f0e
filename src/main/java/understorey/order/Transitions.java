package understorey.order;

/** Which start of one picture can follow which start of another, computed once for a visit. */
final class Transitions {

    static final int NONE = -1;

    final Visit visit;
    final int size;
    /** By picture: its possible starts. */
    final int[][] starts;
    /** By picture and start: its worth; the time before a fixed start is the author's and costs nothing. */
    final long[][] worth;
    /** By picture and the next one: what the minutes of taking the one and setting up for the next would cost if idle, less the price of a move. */
    final long[][] busy;
    /** By picture: what the minutes of setting up for it would cost if idle. */
    final long[] setUp;
    /** By picture: its first start if it is the first of the visit. */
    final int[] first;
    /** By picture: its last start with a direct way back in time; −1 for none. */
    final int[] last;
    /** By picture, the next one and the next one's start: the last start of the former that leaves time; −1 for none. */
    private final int[][][] before;

    Transitions(Visit visit) {
        this.visit = visit;
        this.size = visit.tasks().size();
        this.starts = new int[size][];
        this.worth = new long[size][];
        this.first = new int[size];
        this.last = new int[size];
        this.before = new int[size][size][];
        this.busy = new long[size][size];
        this.setUp = new long[size];
        for (int i = 0; i < size; i++) {
            Task task = visit.tasks().get(i);
            starts[i] = task.starts(visit.from(), visit.to());
            worth[i] = new long[starts[i].length];
            int ready = visit.readyFirst(i);
            for (int s = 0; s < starts[i].length; s++) {
                worth[i][s] = task.worth(starts[i][s]) + (task.pinned() ? price(starts[i][s]) : 0);
                first[i] = starts[i][s] < ready ? s + 1 : first[i];
            }
            last[i] = starts[i].length - 1;
            while (last[i] >= 0 && visit.back(i, starts[i][last[i]]) > visit.to()) {
                last[i]--;
            }
        }
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                before[i][j] = i == j ? null : before(i, j);
                Task one = visit.tasks().get(i);
                Task next = visit.tasks().get(j);
                busy[i][j] = (one.minutes() + next.setUp()) * Task.AN_IDLE_MINUTE - (one.spot() == next.spot() ? 0 : Task.A_MOVE);
            }
            setUp[i] = visit.tasks().get(i).setUp() * Task.AN_IDLE_MINUTE;
        }
    }

    /**
     * What all minutes of a visit that ends with a picture would cost if idle, without the picture itself. Being back counts in
     * steps of the grid: a minute is no reason to change the author's order.
     */
    long price(int task, int start) {
        int back = Task.steps(visit.back(task, starts[task][start])) * Task.STEP;
        return price(back - visit.tasks().get(task).minutes());
    }

    private long price(int minute) {
        return (minute - visit.from()) * Task.AN_IDLE_MINUTE;
    }

    private int[] before(int one, int next) {
        int[] before = new int[starts[next].length];
        int minutes = visit.tasks().get(one).minutes();
        int at = NONE;
        for (int s = 0; s < before.length; s++) {
            while (at + 1 < starts[one].length && visit.ready(one, next, starts[one][at + 1] + minutes) <= starts[next][s]) {
                at++;
            }
            before[s] = at;
        }
        return before;
    }

    /** For each start of the next picture, the last start of the one before that leaves time. */
    int[] joining(int one, int next) {
        return before[one][next];
    }

    /** True if a picture must not come before the other. */
    boolean waitsFor(int task, int other) {
        return visit.tasks().get(task).after().contains(other);
    }
}
