package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * The trees above a place.
 *
 * @param trees   kind of trees
 * @param foliage leaves
 * @param heightM height of the tree tops above the ground
 */
public record Canopy(@Nullable Trees trees, @Nullable Foliage foliage, @Nullable Double heightM) {

    /** Open ground: {@code canopy: none}. */
    public static final Canopy NONE = new Canopy(null, new Foliage.Index(0), null);

    /** Kind of trees: whether they keep their leaves in winter. */
    public enum Trees { DECIDUOUS, EVERGREEN, MIXED }

    /** This canopy, with missing values from {@code base}. */
    public Canopy over(Canopy base) {
        if (isNone()) {
            return this;
        }
        return new Canopy(
                trees != null ? trees : base.trees,
                foliage != null ? foliage : base.isNone() ? null : base.foliage,
                heightM != null ? heightM : base.heightM);
    }

    /** True for open ground. */
    public boolean isNone() {
        return foliage instanceof Foliage.Index index && index.plantAreaIndex() == 0;
    }
}
