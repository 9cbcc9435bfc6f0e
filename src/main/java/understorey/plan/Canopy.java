package understorey.plan;

/**
 * The trees above a place.
 *
 * @param trees   what kind; null when the author did not say
 * @param foliage how far in leaf; null when the author did not say
 * @param heightM of the tree tops above the floor; null when the author did not say
 */
public record Canopy(Trees trees, Foliage foliage, Double heightM) {

    /** Open ground: {@code canopy: none}. */
    public static final Canopy NONE = new Canopy(null, new Foliage.Index(0), null);

    /** What the trees keep over the winter. */
    public enum Trees { DECIDUOUS, EVERGREEN, MIXED }

    /** This canopy where it says something, {@code base} where it does not. */
    public Canopy over(Canopy base) {
        if (base == null || this.isNone()) {
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
