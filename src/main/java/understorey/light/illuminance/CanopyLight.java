package understorey.light.illuminance;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.Edge;

/**
 * Light through a canopy: random leaves at spherical angles, of which every direction sees half (G = 0.5).
 * Campbell and Norman, <em>An Introduction to Environmental Biophysics</em>, 1998, ch. 15, after Monsi and Saeki
 * 1953. In a clearing a ray passes only the part of the canopy between the edge and the tree tops:
 * leaves are assumed to fill the wood evenly from the ground up.
 *
 * @param plantAreaIndex effective one, 0 or more: it already holds clumping and scattered light
 * @param treeTopDeg     altitude of the tree tops around a clearing, seen from its middle; null under closed trees
 * @param trunks         the space under the crowns; null on open ground
 */
public record CanopyLight(double plantAreaIndex, @Nullable Double treeTopDeg, @Nullable TrunkSpace trunks) {

    /** Open ground. */
    public static final CanopyLight NONE = new CanopyLight(0, null, null);
    /** Strips of Simpson's rule, an even number: it agrees with published tables to 1e-5. */
    private static final int STRIPS = 100;

    /**
     * The canopy of a place on a date; null is open ground.
     *
     * @param clearingRadiusM to the edge of the trees; null if they are overhead
     * @param edges           where the wood ends; empty if unknown
     */
    public static CanopyLight of(@Nullable Canopy canopy, @Nullable Double clearingRadiusM, List<Edge> edges, LocalDate date) {
        double index = PlantArea.effectiveIndex(canopy, date);
        if (canopy == null || index == 0) {
            return NONE;
        }
        return new CanopyLight(index, clearingRadiusM == null || canopy.heightM() == null ? null
                : Double.valueOf(treeTopDeg(canopy.heightM(), clearingRadiusM)), TrunkSpace.of(canopy, edges));
    }

    /** Share of the ground that a sun at this azimuth reaches: through the leaves, or from an edge under them if that is more. */
    public double sunShare(double azimuthDeg, double altitudeDeg) {
        double gap = gapFraction(altitudeDeg);
        return trunks == null ? gap : Math.max(gap, trunks.sunShare(plantAreaIndex, azimuthDeg, altitudeDeg));
    }

    /** Distance to the nearest known edge of the wood, m; positive infinity if none is known. */
    public double nearestEdgeM() {
        return trunks == null ? Double.POSITIVE_INFINITY
                : trunks.edges().stream().mapToDouble(Edge::distanceM).min().orElse(Double.POSITIVE_INFINITY);
    }

    /** Altitude of tree tops of a height at a distance, degrees, seen from the ground. */
    static double treeTopDeg(double heightM, double distanceM) {
        return Math.toDegrees(Math.atan2(heightM, distanceM));
    }

    /**
     * Share of the ground that the sun reaches at an altitude in degrees: exp(−0.5 PAI / sin h), with the part of the
     * way that leads through leaves; 1 above the tree tops around a clearing; 0 for a sun at or below 0°.
     */
    public double gapFraction(double altitudeDeg) {
        if (plantAreaIndex == 0) {
            return 1;
        }
        return altitudeDeg <= 0 ? 0 : through(Math.sin(Math.toRadians(altitudeDeg)));
    }

    private double through(double sine) {
        double way = 1;
        if (treeTopDeg != null) {
            double tangent = sine / Math.sqrt(1 - sine * sine);
            way = Math.max(0, 1 - tangent / Math.tan(Math.toRadians(treeTopDeg)));
        }
        return way == 0 ? 1 : Math.exp(-0.5 * plantAreaIndex * way / sine);
    }

    /**
     * Share of the light of an evenly bright sky that reaches level ground: the gap fraction taken over the sky with its
     * cosine. Over a level horizon and without a clearing that is twice the exponential integral E3 of 0.5 PAI.
     *
     * @param landDeg height of the skyline, the same all around
     */
    public double uniformSky(double landDeg) {
        return overSky(landDeg, 2, 0);
    }

    /**
     * Share of the light of the standard overcast sky that reaches level ground. That sky is three times as bright at the
     * zenith as at the horizon (CIE S 011/E:2003).
     *
     * @param landDeg height of the skyline, the same all around
     */
    public double overcastSky(double landDeg) {
        return overSky(landDeg, 6 / 7.0, 12 / 7.0);
    }

    /** The sky's brightness is {@code even + rising} times the sine; cut at the tree tops, where the curve bends. */
    private double overSky(double landDeg, double even, double rising) {
        double land = Math.sin(Math.toRadians(landDeg));
        double tops = treeTopDeg == null ? land : Math.max(land, Math.sin(Math.toRadians(treeTopDeg)));
        return simpson(land, tops, even, rising) + simpson(tops, 1, even, rising);
    }

    private double simpson(double from, double to, double even, double rising) {
        double strip = (to - from) / STRIPS;
        double sum = 0;
        for (int i = 0; i <= STRIPS; i++) {
            double sine = from + i * strip;
            double seen = plantAreaIndex == 0 ? 1 : sine == 0 ? 0 : through(Math.min(1, sine));
            sum += (i == 0 || i == STRIPS ? 1 : i % 2 == 1 ? 4 : 2) * seen * sine * (even + rising * sine);
        }
        return sum * strip / 3;
    }
}
