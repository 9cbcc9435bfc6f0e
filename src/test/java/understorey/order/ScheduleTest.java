package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import understorey.visit.TravelTimes;

class ScheduleTest {

    private static final int TRIPS = 500;

    private static Task task(int spot, int minutes, int priority, double... quality) {
        double[] day = new double[288];
        for (int i = 0; i < day.length; i++) {
            day[i] = Task.value(quality.length == 1 ? quality[0] : i >= 72 && i < 72 + quality.length ? quality[i - 72] : 0, 1);
        }
        return new Task(spot, minutes, priority, Task.ANY, Set.of(), 0, 0, day);
    }

    private static Task pinned(Task task, int pin) {
        return new Task(task.spot(), task.minutes(), task.priority(), pin, task.after(), task.setUp(), task.lens(), new double[] {1});
    }

    /** From six o'clock on, by daylight; ten minutes between any two of three spots. */
    private static Visit visit(int minutes, Task... tasks) {
        int[][] walks = {{0, 10, 10}, {10, 0, 10}, {10, 10, 0}};
        return new Visit(360, 360 + minutes, 0, new TravelTimes(walks, walks, new boolean[1440]), 2, List.of(tasks));
    }

    private static String told(Schedule schedule) {
        StringBuilder told = new StringBuilder();
        for (Schedule.Take take : schedule.takes()) {
            told.append((char) ('a' + take.task())).append(take.start() - 360).append(' ');
        }
        return told.toString().strip();
    }

    /** Holds a plan against the rules by walking it through, and gives its worth. */
    private static long walked(Visit visit, Schedule schedule) {
        int now = visit.from();
        int last = -1;
        long worth = 0;
        Set<Integer> done = new HashSet<>();
        for (Schedule.Take take : schedule.takes()) {
            Task task = visit.tasks().get(take.task());
            int end = now;
            now = visit.times().arrive(last < 0 ? visit.base() : visit.tasks().get(last).spot(), task.spot(), now) + task.setUp();
            now += last >= 0 && visit.tasks().get(last).lens() != task.lens() ? visit.lensChange() : 0;
            assertTrue(now <= take.start(), "in time");
            assertTrue(task.pinned() ? take.start() == task.pin() : take.start() % 5 == 0, "on the grid or the pin");
            for (int other : done) {
                assertTrue(!visit.tasks().get(other).after().contains(take.task()), "waits");
            }
            assertTrue(done.add(take.task()), "once");
            worth += task.worth(take.start()) - Task.AN_IDLE_MINUTE * (take.start() - task.setUp() - end)
                    + (task.pinned() ? Task.AN_IDLE_MINUTE * (take.start() - visit.from()) : 0)
                    - (last < 0 || visit.tasks().get(last).spot() == task.spot() ? 0 : 20 * Task.AN_IDLE_MINUTE);
            now = take.start() + task.minutes();
            last = take.task();
        }
        int home = last < 0 ? now : visit.times().arrive(visit.tasks().get(last).spot(), visit.base(), now);
        assertTrue(home <= visit.to(), "back in time");
        assertEquals(home, schedule.back());
        return last < 0 ? 0 : worth - Task.AN_IDLE_MINUTE * (Task.steps(home) * Task.STEP - now);
    }

    private static long musts(Visit visit, Schedule schedule) {
        return schedule.takes().stream().filter(take -> visit.tasks().get(take.task()).must()).count();
    }

    @Test
    void isWorthAsMuchAsTheBestOfAllOrdersAndStarts() {
        SmallTrips trips = new SmallTrips(20270508);
        int several = 0;
        int left = 0;
        for (int i = 0; i < TRIPS; i++) {
            Visit visit = trips.visit(2 + i % 5, 45 + i % 50, 1 + i % 4);
            Schedule schedule = Schedule.best(visit);
            EveryOrder.Best best = EveryOrder.of(visit);
            assertEquals(schedule.worth(), walked(visit, schedule));
            assertEquals(best.musts(), musts(visit, schedule), "musts of trip " + i);
            assertEquals(best.valueThousandths(), Math.floorDiv(schedule.worth() - best.musts() * Task.A_MUST, Task.A_THOUSANDTH), "value of trip " + i);
            assertEquals(best.pictures(), schedule.takes().size(), "pictures of trip " + i);
            assertEquals(best.priorities(), schedule.takes().stream().mapToInt(take -> visit.tasks().get(take.task())
                    .priority()).sum(), "priorities of trip " + i);
            assertEquals((best.back() + 4) / 5, (schedule.back() + 4) / 5, "end of trip " + i);
            several += schedule.takes().size() > 2 ? 1 : 0;
            left += schedule.takes().size() < visit.tasks().size() ? 1 : 0;
        }
        assertTrue(several > TRIPS / 4 && left > TRIPS / 4, several + " trips of three or more pictures, " + left + " that leave some");
    }

    /** Ten minutes are idle in any case: better before the picture that gains by them. */
    @Test
    void movesAWaitBehindAPictureThatHardlyGainsByIt() {
        Visit visit = visit(60, task(0, 10, 3, 0, 0, 0, 0, 0, 0, 1), task(0, 15, 1, 0.9, 0.9, 0.95, 0.95));
        assertEquals("b10 a30", told(Schedule.best(visit)));
        assertEquals("b0 a30", told(LeftShift.startingEarly(visit, Schedule.best(visit))));
        Visit rising = visit(60, task(0, 10, 3, 0, 0, 0, 0, 0, 0, 1), task(0, 15, 1, 0.5, 0.5, 0.95, 0.95));
        assertEquals("b10 a30", told(LeftShift.startingEarly(rising, Schedule.best(rising))));
    }

    /** The order of the best plan stays, and each picture starts at its first start that is good enough. */
    @Property(tries = 500)
    void keepsOnlyWaitsThatPay(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int pictures,
            @ForAll @IntRange(min = 30, max = 240) int minutes) {
        Visit visit = new SmallTrips(seed).visit(pictures, minutes, 4);
        Schedule best = Schedule.best(visit);
        Schedule shifted = LeftShift.startingEarly(visit, best);
        assertEquals(shifted.worth(), walked(visit, shifted));
        assertTrue(shifted.back() <= best.back());
        Schedule.Take last = null;
        for (int i = 0; i < best.takes().size(); i++) {
            Schedule.Take planned = best.takes().get(i);
            Schedule.Take take = shifted.takes().get(i);
            Task task = visit.tasks().get(take.task());
            assertEquals(planned.task(), take.task());
            int ready = last == null ? visit.readyFirst(take.task())
                    : visit.ready(last.task(), take.task(), last.start() + visit.tasks().get(last.task()).minutes());
            for (int start : task.starts(ready, planned.start() + task.minutes())) {
                boolean enough = task.gradedWorth(planned.start()) - task.gradedWorth(start)
                        <= Math.max(start == task.firstStart(ready) ? 0.02 * task.priority() : 0, (last == null ? 0.001 : 0.0025) * Math.min(90, planned.start() - start)) + 1e-9;
                assertTrue(start < take.start() ? !enough : start > take.start() || enough, task + " at " + start);
            }
            last = take;
        }
    }

    /** An hour idle in any case: the second picture is as good before as after. */
    @Test
    void movesAPictureIntoAnEarlierWait() {
        double[] late = new double[14];
        late[12] = 1;
        Visit visit = visit(100, task(0, 10, 3, late), task(0, 10, 2, 0.9, 0.9, 0.9, 0.9, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.95, 0.95, 0.95, 0.95));
        assertEquals("a60 b70", told(Schedule.best(visit)));
        assertEquals("b0 a60", told(shifted(visit)));
    }

    private static Schedule shifted(Visit visit) {
        Transitions transitions = new Transitions(visit);
        return LeftShift.of(transitions, Schedule.best(transitions));
    }

    /** Never another choice of pictures, never back later, and less lost than shows. */
    @Property(tries = 500)
    void losesNothingThatShowsByEarlierPictures(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int pictures,
            @ForAll @IntRange(min = 30, max = 300) int minutes) {
        Visit visit = new SmallTrips(seed).visit(pictures, minutes, 4);
        Schedule best = Schedule.best(visit);
        Schedule early = shifted(visit);
        assertEquals(early.worth(), walked(visit, early));
        assertTrue(early.back() <= best.back());
        assertEquals(best.takes().stream().map(Schedule.Take::task).sorted().toList(), early.takes().stream().map(Schedule.Take::task).sorted().toList());
        List<Integer> sequence = early.takes().stream().map(Schedule.Take::task).toList();
        long most = best.takes().stream().mapToLong(take -> visit.tasks().get(take.task()).leastGain()).sum();
        assertTrue(best.worth() - LocalSearch.inOrder(new Transitions(visit), sequence).worth() <= most);
    }

    @Test
    void keepsAMustBeforeAnyLight() {
        assertEquals("b5", told(Schedule.best(visit(30, task(0, 25, 2, 1), task(0, 25, 3, 0, 0.1)))));
    }

    @Test
    void waitsForTheLightAndTakesAnExtraMeanwhile() {
        assertEquals("b0 a20", told(Schedule.best(visit(60, task(0, 10, 3, 0, 0, 0, 0, 1), task(0, 15, 1, 0.5)))));
        assertEquals("a20", told(Schedule.best(visit(60, task(0, 10, 3, 0, 0, 0, 0, 1)))));
    }

    @Test
    void isBackEarlierWhereTheLightIsTheSame() {
        assertEquals("b0 a15 c30", told(Schedule.best(visit(90, task(1, 5, 2, 1), task(0, 5, 2, 1), task(2, 5, 2, 1)))));
    }

    @Test
    void keepsTheOrderOfTheFileWhereNothingElseDecides() {
        assertEquals("a0 b5 c10", told(Schedule.best(visit(60, task(0, 5, 2, 1), task(0, 5, 2, 1), task(0, 5, 2, 1)))));
        assertEquals("a0", told(Schedule.best(visit(5, task(0, 5, 2, 1), task(0, 5, 2, 1)))));
    }

    @Test
    void takesPicturesInHopelessLightRatherThanNone() {
        assertEquals("a0 b5", told(Schedule.best(visit(60, task(0, 5, 1, 0), task(0, 5, 1, 0)))));
    }

    /** Three nice ones rather than one that is wanted, and the wanted one rather than one nice one. */
    @Test
    void takesAsManyAsItCanWhereTheLightIsTheSame() {
        assertEquals("b0 c5 d10", told(Schedule.best(visit(15, task(0, 15, 2, 0), task(0, 5, 1, 0), task(0, 5, 1, 0), task(0, 5, 1, 0)))));
        assertEquals("b0 c5", told(Schedule.best(visit(10, task(0, 10, 2, 0), task(0, 5, 1, 0), task(0, 5, 1, 0)))));
        assertEquals("b0", told(Schedule.best(visit(5, task(0, 5, 1, 0), task(0, 5, 2, 0)))));
    }

    @Test
    void leavesOutAPinThatNobodyCanReach() {
        assertEquals("b0", told(Schedule.best(visit(60, pinned(task(1, 5, 3, 1), 367), task(0, 5, 1, 1)))));
        assertEquals("b0 a12", told(Schedule.best(visit(60, pinned(task(1, 5, 3, 1), 372), task(0, 1, 1, 1)))));
    }

    @Test
    void hasAnEmptyPlanForAnEmptyVisit() {
        assertEquals(new Schedule(List.of(), 0, 360), Schedule.best(visit(60)));
        assertEquals(new Schedule(List.of(), 0, 360), Schedule.best(visit(3, task(0, 5, 3, 1))));
        assertEquals(new Schedule(List.of(), 0, 360), Schedule.best(visit(-60, task(0, 5, 3, 1))));
    }

    @Property(tries = 300)
    void losesNothingByOnePictureMore(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int pictures,
            @ForAll @IntRange(min = 30, max = 240) int minutes) {
        onePictureMore(seed, pictures, minutes);
    }

    /** Twelve in full and thirteen by a bound, and beyond. */
    @Property(tries = 60)
    void losesNothingByOnePictureMoreThanAreOrderedInFull(@ForAll long seed, @ForAll @IntRange(min = 12, max = 15) int pictures,
            @ForAll @IntRange(min = 60, max = 240) int minutes) {
        onePictureMore(seed, pictures, minutes);
    }

    private static void onePictureMore(long seed, int pictures, int minutes) {
        Visit more = new SmallTrips(seed).visit(pictures + 1, minutes, 4);
        Task last = more.tasks().get(pictures);
        Task optional = new Task(last.spot(), last.minutes(), 1 + last.priority() % 2, Task.ANY, Set.of(), last.setUp(), last.lens(),
                last.pinned() ? new double[288] : last.value());
        List<Task> tasks = new ArrayList<>(more.tasks());
        tasks.set(pictures, optional);
        Schedule with = Schedule.best(more.with(tasks));
        Schedule without = Schedule.best(more.with(tasks.subList(0, pictures)));
        assertEquals(with.worth(), walked(more.with(tasks), with));
        assertTrue(with.worth() >= without.worth());
        assertTrue(musts(more.with(tasks), with) >= musts(more.with(tasks), without));
    }

    /** Whatever plan was known before: none, or a good one. */
    @Property(tries = 200)
    void findsTheBestWithABoundToo(@ForAll long seed, @ForAll @IntRange(min = 1, max = 9) int pictures,
            @ForAll @IntRange(min = 30, max = 240) int minutes) {
        SmallTrips trips = new SmallTrips(seed);
        Visit visit = trips.visit(pictures, minutes, 4);
        bounded(new Transitions(visit));
        bounded(new Transitions(trips.farApart(visit)));
    }

    private static void bounded(Transitions transitions) {
        Schedule none = new Schedule(List.of(), 0, transitions.visit.from());
        long best = BranchAndBound.of(transitions).worth();
        assertEquals(best, BranchAndBound.of(transitions, none).worth());
        assertEquals(best, walked(transitions.visit, BranchAndBound.of(transitions, LocalSearch.of(transitions, transitions.size / 2))));
    }

    @Property(tries = 100)
    void losesNothingWhenTheSearchIsCutShort(@ForAll long seed, @ForAll @IntRange(min = 1, max = 30_000) int steps, @ForAll @IntRange(min = 1, max = 30_000) int bytes) {
        Transitions transitions = new Transitions(new SmallTrips(seed).visit(9, 200, 4));
        Schedule known = LocalSearch.of(transitions, 3);
        Schedule found = BranchAndBound.of(transitions, known, steps, bytes);
        assertTrue(found.worth() >= known.worth());
        assertEquals(found.worth(), walked(transitions.visit, found));
    }

    @Property(tries = 40)
    void isNeverWorseThanTheAuthorsOwnOrderHoweverMany(@ForAll long seed, @ForAll @IntRange(min = 13, max = 18) int pictures,
            @ForAll @IntRange(min = 60, max = 300) int minutes) {
        Visit visit = new SmallTrips(seed).visit(pictures, minutes, 5);
        Schedule best = Schedule.best(visit);
        assertEquals(best.worth(), walked(visit, best));
        List<Integer> own = new ArrayList<>();
        for (int i = 0; i < pictures; i++) {
            own.add(i);
        }
        assertTrue(best.worth() >= LocalSearch.inOrder(new Transitions(visit), own).worth());
        assertEquals(best, Schedule.best(visit));
    }

    /** Four of eight in their best order and the rest put in: what twelve of sixteen would do, where the best is known. */
    @Test
    void findsTheBestMostlyWhereItDoesNotSearchForItAll() {
        SmallTrips trips = new SmallTrips(1892);
        int same = 0;
        for (int i = 0; i < 100; i++) {
            Transitions transitions = new Transitions(trips.visit(8, 150, 4));
            Schedule exact = BranchAndBound.of(transitions);
            Schedule moved = LocalSearch.of(transitions, 4);
            assertTrue(moved.worth() <= exact.worth());
            assertEquals(moved.worth(), walked(transitions.visit, moved));
            same += moved.worth() == exact.worth() ? 1 : 0;
        }
        assertTrue(same >= 80, same + " of 100");
    }
}
