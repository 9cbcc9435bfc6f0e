package understorey.plan;

import java.time.LocalDate;

/** How far the leaves of a canopy are out: a stage in words, a date, or a measured index. */
public sealed interface Foliage {

    /** The stage in the author's words. */
    enum Stage implements Foliage { LEAFLESS, BUD_BURST, HALF_LEAF, FULL_LEAF }

    /** The stage follows the day of the plan, counted from bud burst. */
    record LeafOut(LocalDate budBurst) implements Foliage {
    }

    /** An effective plant area index, square metres of leaf and wood above a square metre of floor. */
    record Index(double plantAreaIndex) implements Foliage {
    }
}
