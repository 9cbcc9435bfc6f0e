package understorey.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FittingTest {

    private static final int SHORTEST = 5;

    @Test
    void agreesWithEveryOrderOnWhetherAllFit() {
        SmallTrips trips = new SmallTrips(1984);
        int fitting = 0;
        for (int i = 0; i < 300; i++) {
            Visit visit = trips.visit(1 + i % 4, 40 + i % 50, 3);
            boolean fits = Fitting.allFit(visit);
            assertEquals(EveryOrder.of(visit).most() == visit.tasks().size(), fits, "trip " + i);
            fitting += fits ? 1 : 0;
        }
        assertTrue(fitting > 50 && fitting < 250, fitting + " of 300 fit");
    }

    /** Where neither musts nor light decide, as many as possible of what matters are taken. */
    @Test
    void takesWhatMattersMostOfAllOrdersThatAreEqualInMustsAndLight() {
        SmallTrips trips = new SmallTrips(1815);
        for (int i = 0; i < 300; i++) {
            Visit visit = trips.visit(2 + i % 4, 45 + i % 50, 3);
            int priorities = 0;
            for (Schedule.Take take : Schedule.best(visit).takes()) {
                priorities += visit.tasks().get(take.task()).priority();
            }
            assertEquals(EveryOrder.of(visit).priorities(), priorities, "trip " + i);
        }
    }

    /** Minute by minute, not by halving. */
    @Test
    void findsTheSmallestChangeThatMakesRoom() {
        SmallTrips trips = new SmallTrips(2018);
        int roomy = 0;
        for (int i = 0; i < 120; i++) {
            Visit visit = trips.visit(3, 40, 3);
            if (!Fitting.allFit(visit)) {
                Fitting.Room room = Fitting.room(visit, visit.from() - 60, visit.to() + 60, SHORTEST);
                Integer earlier = null;
                Integer later = null;
                for (int minutes = 60; minutes > 0; minutes--) {
                    earlier = Fitting.allFit(visit.between(visit.from() - minutes, visit.to())) ? Integer.valueOf(minutes) : earlier;
                    later = Fitting.allFit(visit.between(visit.from(), visit.to() + minutes)) ? Integer.valueOf(minutes) : later;
                }
                assertEquals(earlier, room.earlier());
                assertEquals(later, room.later());
                assertEquals(shorter(visit), room.shorter());
                roomy += later == null ? 0 : 1;
            }
        }
        assertTrue(roomy > 20, roomy + " of 120 need a longer visit");
    }

    private static Integer shorter(Visit visit) {
        for (int less = 1; less < 60; less++) {
            for (int i = 0; i < visit.tasks().size(); i++) {
                List<Task> tasks = new ArrayList<>(visit.tasks());
                tasks.set(i, tasks.get(i).shorterBy(less));
                if (visit.tasks().get(i).minutes() - less >= SHORTEST && Fitting.allFit(visit.with(tasks))) {
                    return less;
                }
            }
        }
        return null;
    }

    @Test
    void offersNoRoomWhereNoneIsToBeHad() {
        Visit visit = new SmallTrips(7).visit(4, 10, 2);
        Fitting.Room room = Fitting.room(visit, visit.from(), visit.to(), 30);
        assertNull(room.earlier());
        assertNull(room.later());
        assertNull(room.shorter());
        assertNull(room.task());
    }
}
