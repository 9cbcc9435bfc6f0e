package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * The trees above a place.
 *
 * @param trees         kind of trees
 * @param foliage       leaves
 * @param heightM       height of the tree tops above the ground
 * @param baseM         height of the lowest living branches above the ground
 * @param stemsPerHa    trunks per hectare
 * @param stemDiameterM of a trunk, at breast height
 */
public record Canopy(@Nullable Trees trees, @Nullable Foliage foliage, @Nullable Double heightM, @Nullable Double baseM,
                     @Nullable Double stemsPerHa, @Nullable Double stemDiameterM) {

    /** Open ground: {@code canopy: none}. */
    public static final Canopy NONE = new Canopy(null, new Foliage.Index(0), null);

    /** A canopy whose trunks are not known. */
    public Canopy(@Nullable Trees trees, @Nullable Foliage foliage, @Nullable Double heightM) {
        this(trees, foliage, heightM, null, null, null);
    }

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
                heightM != null ? heightM : base.heightM,
                baseM != null ? baseM : base.baseM,
                stemsPerHa != null ? stemsPerHa : base.stemsPerHa,
                stemDiameterM != null ? stemDiameterM : base.stemDiameterM);
    }

    /** True for open ground. */
    public boolean isNone() {
        return foliage instanceof Foliage.Index index && index.plantAreaIndex() == 0;
    }
}
