package understorey.plan;

import java.time.LocalDate;

/** Leaves of a canopy: a stage in words, a date of leaf-out, a growth between two stages, or a measured index. */
public sealed interface Foliage {

    /** Stage of the leaves, in words. */
    enum Stage implements Foliage { LEAFLESS, BUD_BURST, HALF_LEAF, FULL_LEAF }

    /** Date of bud burst, from which the stage on the day of the plan follows. */
    record LeafOut(LocalDate budBurst) implements Foliage {
    }

    /** Leaves that grow from one stage to another, as assumed while a flower is out. */
    record Growing(LocalDate first, Stage from, LocalDate last, Stage to) implements Foliage {
    }

    /** Effective plant area index: square metres of leaf and wood per square metre of ground. */
    record Index(double plantAreaIndex) implements Foliage {
    }
}
