package understorey.outing;

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
        Joins joins = new Joins(far ? trips.farApart(visit) : visit);
        Schedule best = BestOrder.of(joins);
        UpperBound bound = UpperBound.of(joins, best.worth());
        long taken = 0;
        long sum = 0;
        for (Schedule.Take take : best.takes()) {
            int start = 0;
            while (joins.starts[take.stint()][start] < take.start()) {
                start++;
            }
            taken |= 1L << take.stint();
            sum += joins.worth[take.stint()][start];
            long most = sum + bound.after(take.stint(), start) + bound.prices(taken) - bound.lost(taken, take.stint(), start);
            assertTrue(most >= best.worth(), most + " for " + best.worth() + " after " + take);
        }
    }

    /** Fourteen pictures that may be taken at any time: some 60 million steps a visit in full, and without prices up to 39 million. */
    @Test
    void sparesMostOfTheSearch() {
        SmallTrips trips = new SmallTrips(1974);
        for (int i = 0; i < 12; i++) {
            Joins joins = new Joins(SmallTrips.free(trips.visit(14, 240, 5)));
            Schedule known = LongOrder.of(joins);
            assertEquals(BestOrder.of(joins, known).worth(), BestOrder.of(joins, known, 5_000_000, 10_000_000).worth(), "visit " + i);
        }
    }
}
