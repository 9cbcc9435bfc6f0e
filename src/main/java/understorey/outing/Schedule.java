package understorey.outing;

import java.util.List;

/**
 * Pictures and when they start.
 *
 * @param takes in order of time
 * @param worth the sum of {@link Stint#worth}
 * @param back  the minute of being back on the base
 */
record Schedule(List<Take> takes, long worth, int back) {

    /** One picture, by its index, and the minute at which it starts. */
    record Take(int stint, int start) {
    }

    /** The best there is: see {@link BestOrder}. */
    static Schedule best(Visit visit) {
        Joins joins = new Joins(visit);
        return visit.stints().size() <= BestOrder.MOST ? BestOrder.of(joins) : BestOrder.of(joins, LongOrder.of(joins));
    }

    boolean takes(int stint) {
        for (Take take : takes) {
            if (take.stint() == stint) {
                return true;
            }
        }
        return false;
    }
}
