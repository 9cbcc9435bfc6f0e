package understorey.light.illuminance;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.Foliage;

/**
 * Plant area index of a canopy: leaf and wood above the ground that stop light.
 *
 * <p>Index values by stage are effective ones, lower than leaf area alone (4.0 to 5.1 in European beech and sycamore,
 * Journal of Forestry Research 2020): leaves stand in clumps and scatter light, so that a leafed wood comes out at
 * the EV 8 to 10 that people meter (common practice, no source). Leaf fall in autumn is not covered: the author can give the stage.
 */
public final class PlantArea {

    private static final double LEAFLESS = 0.8;
    private static final double BUD_BURST = 1.2;
    private static final double HALF_LEAF = 2.1;
    private static final double FULL_LEAF = 3.2;
    private static final int LEAF_OUT_DAYS = 28;

    private PlantArea() {
    }

    /**
     * Effective plant area index on a date, square metres per square metre of ground; 0 for open ground. Trees
     * without a given foliage are in full leaf, the darker and safer guess. With a day of bud burst it grows
     * evenly from the winter's index to full leaf over 28 days: leaf area increases fastest in the first month
     * after bud burst (Journal of Forestry Research 2020, abstract). Evergreens keep full leaf then, and of a
     * mixed wood half the trees do. Between two stages it grows evenly.
     */
    public static double effectiveIndex(@Nullable Canopy canopy, LocalDate date) {
        if (canopy == null) {
            return 0;
        }
        if (canopy.foliage() instanceof Foliage.Index index) {
            return index.plantAreaIndex();
        }
        if (canopy.foliage() instanceof Foliage.LeafOut leafOut) {
            double winter = winterIndex(canopy.trees());
            double days = ChronoUnit.DAYS.between(leafOut.budBurst(), date);
            return winter + Math.max(0, Math.min(1, days / LEAF_OUT_DAYS)) * (FULL_LEAF - winter);
        }
        if (canopy.foliage() instanceof Foliage.Growing growing) {
            double leaves = grown(growing, date);
            return canopy.trees() == Canopy.Trees.MIXED ? (leaves + FULL_LEAF) / 2 : leaves;
        }
        return canopy.foliage() instanceof Foliage.Stage stage ? stageIndex(stage) : FULL_LEAF;
    }

    private static double grown(Foliage.Growing growing, LocalDate date) {
        double days = ChronoUnit.DAYS.between(growing.first(), date);
        double share = Math.max(0, Math.min(1, days / Math.max(1, ChronoUnit.DAYS.between(growing.first(), growing.last()))));
        return stageIndex(growing.from()) + share * (stageIndex(growing.to()) - stageIndex(growing.from()));
    }

    /** Effective plant area index of a stage. */
    public static double stageIndex(Foliage.Stage stage) {
        return switch (stage) {
            case LEAFLESS -> LEAFLESS;
            case BUD_BURST -> BUD_BURST;
            case HALF_LEAF -> HALF_LEAF;
            case FULL_LEAF -> FULL_LEAF;
        };
    }

    private static double winterIndex(Canopy.@Nullable Trees trees) {
        if (trees == Canopy.Trees.EVERGREEN) {
            return FULL_LEAF;
        }
        return trees == Canopy.Trees.MIXED ? (LEAFLESS + FULL_LEAF) / 2 : LEAFLESS;
    }
}
