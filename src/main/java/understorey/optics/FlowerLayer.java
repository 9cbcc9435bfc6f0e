package understorey.optics;

/**
 * Flowers on the ground as a layer: petals at random, evenly from the ground up to the heads, at all angles.
 *
 * <p>Evenly from the ground is an assumption: if all heads are at one height, a camera under them sees them all
 * against the background. Clumps (which leave more ground bare), relief and
 * leaves in front of the flowers are not covered; the index itself is known to a factor of two.
 *
 * @param headsM    height of the flower heads above the ground, above 0
 * @param areaIndex square metres of petal above a square metre of ground, 0 or more
 * @param farM      how far ahead of the camera the flowers go on, along the ground, above 0
 */
public record FlowerLayer(double headsM, double areaIndex, double farM) {

    /** Distance beyond which trunks hide the ground of most woods: common practice, no source. */
    public static final double FAR_M = 60;
    /** Share of its area that a petal shows on average over all angles. */
    public static final double SPHERICAL = 0.5;

    public FlowerLayer {
        if (!(headsM > 0) || !(areaIndex >= 0) || !(farM > 0)) {
            throw new IllegalArgumentException(
                    "no such flowers: " + headsM + " m high, index " + areaIndex + ", as far as " + farM + " m");
        }
    }

    /** Flowers up to the distance of sight in most woods, {@value #FAR_M} m. */
    public static FlowerLayer of(double headsM, double areaIndex) {
        return new FlowerLayer(headsM, areaIndex, FAR_M);
    }

    /**
     * Share of the ground that petals hide from a look: 1 − exp(−P / sin θ), 0 to 1, by the same law as {@link #of}.
     *
     * @param seen P, petal area that a camera sees, square metres per square metre of ground: the index times {@link #SPHERICAL}
     * @param sine of the angle between the look and the ground, above 0
     */
    public static double cover(double seen, double sine) {
        return 1 - bare(1, seen / sine);
    }

    /** These flowers, cut at a height. */
    FlowerLayer notAbove(double mostM) {
        return headsM <= mostM ? this : new FlowerLayer(mostM, areaIndex, farM);
    }

    /** Petal area that a look meets on each metre of its way through the layer, times the projection, 1/m. */
    double densityPerM(double cosSlope) {
        return SPHERICAL * areaIndex / (headsM * cosSlope);
    }

    /**
     * Share of the ground left bare to a look: exp(−G·P), 0 to 1. Nilson 1971 (from memory); Campbell and Norman,
     * <em>An Introduction to Environmental Biophysics</em>, 1998, ch. 15, with the camera in place of the sun.
     *
     * @param projection G, share of its area that a petal shows in that direction: {@link #SPHERICAL} for petals at
     *                   all angles
     * @param passed     P, petal area on the way of the look, square metres per square metre: through the whole layer its
     *                   area index over the sine of the angle to the ground
     */
    static double bare(double projection, double passed) {
        return Math.exp(-projection * passed);
    }
}
