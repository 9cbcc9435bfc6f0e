package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class UpperBoundTest {

    /** After each picture of a best plan the bound leaves at least what the rest of that plan gains. */
    @Property(tries = 300)
    void isNeverBelowWhatABestPlanGains(@ForAll long seed, @ForAll @IntRange(min = 2, max = 9) int pictures,
            @ForAll @IntRange(min = 30, max = 240) int minutes, @ForAll boolean far) {
        SmallTrips trips = new SmallTrips(seed);
        Visit visit = trips.visit(pictures, minutes, 4);
        Transitions transitions = new Transitions(far ? trips.farApart(visit) : visit);
        Schedule best = BranchAndBound.of(transitions);
        UpperBound bound = UpperBound.of(transitions, best.worth());
        long taken = 0;
        long sum = 0;
        int last = Transitions.NONE;
        for (Schedule.Take take : best.takes()) {
            int start = 0;
            while (transitions.starts[take.task()][start] < take.start()) {
                start++;
            }
            taken |= 1L << take.task();
            sum += transitions.worth[take.task()][start]
                    + (last < 0 ? transitions.setUp[take.task()] : transitions.busy[last][take.task()]);
            last = take.task();
            long most = sum + bound.after(take.task(), start) + bound.prices(taken) - bound.lost(taken, take.task(), start);
            assertTrue(most >= best.worth(), most + " for " + best.worth() + " after " + take);
        }
    }

    /** Fourteen pictures that may be taken at any time: some 60 million steps a visit in full, and without prices up to 39 million. */
    @Test
    void sparesMostOfTheSearch() {
        SmallTrips trips = new SmallTrips(1974);
        for (int i = 0; i < 12; i++) {
            Transitions transitions = new Transitions(SmallTrips.free(trips.visit(14, 240, 5)));
            Schedule known = LocalSearch.of(transitions);
            assertEquals(BranchAndBound.of(transitions, known).worth(),
                    BranchAndBound.of(transitions, known, 5_000_000, 10_000_000).worth(), "visit " + i);
        }
    }
}
