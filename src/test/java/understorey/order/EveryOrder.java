package understorey.order;

/** Every order of every choice of pictures at every start: slow, and too simple to be wrong. */
final class EveryOrder {

    private final Visit visit;
    private int musts;
    private long value = -1;
    private int pictures;
    private int priorities;
    private int back;
    private int most;

    private EveryOrder(Visit visit) {
        this.visit = visit;
    }

    /** What the best plan is worth, and how many pictures any plan can hold. */
    record Best(int musts, long valueThousandths, int pictures, int priorities, int back, int most) {
    }

    static Best of(Visit visit) {
        EveryOrder every = new EveryOrder(visit);
        every.go(0, -1, visit.from(), 0, 0, 0);
        return new Best(every.musts, every.value, every.pictures, every.priorities, every.back, every.most);
    }

    private void go(int taken, int last, int now, int mustsDone, long valueDone, int prioritiesDone) {
        int home = last < 0 ? now : visit.times().arrive(visit.tasks().get(last).spot(), visit.base(), now);
        if (home <= visit.to()) {
            compare(mustsDone, last < 0 ? 0 : valueDone - (Task.steps(home) * 5 - now), Integer.bitCount(taken), prioritiesDone, home);
            most = Math.max(most, Integer.bitCount(taken));
        }
        for (int next = 0; next < visit.tasks().size(); next++) {
            if ((taken >> next & 1) == 0 && mayFollow(taken, next)) {
                Task task = visit.tasks().get(next);
                int there = visit.times().arrive(last < 0 ? visit.base() : visit.tasks().get(last).spot(), task.spot(), now)
                        + task.setUp() + (last >= 0 && visit.tasks().get(last).lens() != task.lens() ? visit.lensChange() : 0);
                for (int start = there; start + task.minutes() <= visit.to(); start++) {
                    if (task.pinned() ? start == task.pin() : start % 5 == 0 && task.value()[start / 5] >= 0) {
                        go(taken | 1 << next, next, start + task.minutes(), mustsDone + (task.priority() == 3 ? 1 : 0),
                                valueDone + Math.round(1000 * task.gradedWorth(start)) - (start - task.setUp() - now)
                                        - (last < 0 || visit.tasks().get(last).spot() == task.spot() ? 0 : 20)
                                        + (task.pinned() ? (start - visit.from()) : 0), prioritiesDone + task.priority());
                    }
                }
            }
        }
    }

    /** A picture may not come once one that waits for it is taken, be it by way of others. */
    private boolean mayFollow(int taken, int next) {
        for (int i = 0; i < visit.tasks().size(); i++) {
            if ((taken >> i & 1) == 1 && visit.tasks().get(i).after().contains(next)) {
                return false;
            }
        }
        return true;
    }

    private void compare(int mustsDone, long valueDone, int picturesDone, int prioritiesDone, int home) {
        int better = Integer.compare(mustsDone, musts);
        better = better != 0 ? better : Long.compare(valueDone, value);
        better = better != 0 ? better : Integer.compare(picturesDone, pictures);
        better = better != 0 ? better : Integer.compare(prioritiesDone, priorities);
        if (better > 0 || better == 0 && home < back) {
            musts = mustsDone;
            value = valueDone;
            pictures = picturesDone;
            priorities = prioritiesDone;
            back = home;
        }
    }
}
