package understorey.light.illuminance;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.Edge;

/**
 * The space under the crowns of a wood, through which a low sun shines in from an edge.
 *
 * @param stemsPerM2 trunks per square metre
 * @param diameterM  of a trunk
 * @param baseM      height of the lowest living branches above the ground
 * @param topM       height of the tree tops
 * @param edges      where the trees end; empty if unknown
 */
public record TrunkSpace(double stemsPerM2, double diameterM, double baseM, double topM, List<Edge> edges) {

    /** Height of the flowers; 0.3 m: an assumption. */
    private static final double FLOWER_M = 0.3;
    /** Altitudes of a sun that comes in from an edge: common practice, no source. */
    private static final double LOWEST_DEG = 1;
    private static final double LOW_DEG = 10;

    /**
     * A kind of wood where nothing is measured.
     *
     * @param topM          height of the tree tops (from memory)
     * @param baseShare     crown base by the height of the tops (from memory)
     * @param diameterShare diameter of a trunk by the height of the tops
     * @param basalM2PerHa  area of all trunks, cut across
     */
    private record Stand(double topM, double baseShare, double diameterShare, double basalM2PerHa) {

        /** Beech at Virton, ICP Level II, 2018: 32 m, 37.2 cm, 27.1 m²/ha. Birch at Järvselja has 19 % more trunk in sight. */
        static final Stand DECIDUOUS = new Stand(25, 0.45, 0.372 / 32, 27.1);
        /**
         * Norway spruce at Järvselja, doi 10.2478/fsmu-2021-0007: 24 m, 22.5 cm, 30.9 m²/ha. Pine there has 19 % less, old spruce
         * at Tharandt 2 % more.
         */
        static final Stand EVERGREEN = new Stand(24, 0.5, 0.225 / 24, 30.9);
        /** Half of each. */
        static final Stand MIXED = new Stand(24.5, 0.475, (DECIDUOUS.diameterShare + EVERGREEN.diameterShare) / 2, 29);

        static Stand of(Canopy.@Nullable Trees trees) {
            return trees == Canopy.Trees.EVERGREEN ? EVERGREEN : trees == Canopy.Trees.MIXED ? MIXED : DECIDUOUS;
        }
    }

    /** The trunks of a canopy; what the author leaves out is by kind and height of the trees. */
    static TrunkSpace of(Canopy canopy, List<Edge> edges) {
        Stand stand = Stand.of(canopy.trees());
        double topM = canopy.heightM() == null ? stand.topM : canopy.heightM();
        double baseM = canopy.baseM() == null ? stand.baseShare * topM : Math.min(canopy.baseM(), topM);
        double diameterM = canopy.stemDiameterM() == null ? stand.diameterShare * topM : canopy.stemDiameterM();
        double stemsPerHa = canopy.stemsPerHa() == null ? 4 * stand.basalM2PerHa / (Math.PI * diameterM * diameterM)
                : canopy.stemsPerHa();
        return new TrunkSpace(stemsPerHa / 10_000, diameterM, baseM, topM, edges);
    }

    /** True for a sun that reaches the flowers if the wood opens towards it, while no edge is known. */
    public boolean needsOpening(double altitudeDeg) {
        return edges.isEmpty() && altitudeDeg >= LOWEST_DEG && altitudeDeg <= LOW_DEG;
    }

    /**
     * Mean share of the sun's disc that the flowers see from under the crowns, 0 to 1; 0 without an edge towards the sun or a
     * sun at or below 0°. A straight edge at a distance x is x / cos Δ away along the sun, with Δ between the sun and the
     * edge's bearing; the nearest edge counts.
     */
    double sunShare(double plantAreaIndex, double azimuthDeg, double altitudeDeg) {
        double edgeM = Double.POSITIVE_INFINITY;
        for (Edge edge : edges) {
            double towards = Math.cos(Math.toRadians(azimuthDeg - edge.bearingDeg()));
            edgeM = towards > 0 ? Math.min(edgeM, edge.distanceM() / towards) : edgeM;
        }
        return altitudeDeg <= 0 || Double.isInfinite(edgeM) ? 0 : sunShareFrom(edgeM, plantAreaIndex, altitudeDeg);
    }

    /**
     * exp(−N d L) · exp(−0.5 PAI f / sin e): the way L in metres past N trunks per m² of diameter d in m, and the share f of
     * the crown layer that the ray crosses up to the edge; e is the altitude, above 0°. The exponential of random trunks: Lang
     * and others, <em>Remote Sensing</em> 13 (2021) 4455; that of random leaves as in {@link CanopyLight}. Trunks at
     * measured places let 0.8 to 1.2 times as many metres through as the defaults. Bushes at the edge are not covered.
     */
    private double sunShareFrom(double edgeM, double plantAreaIndex, double altitudeDeg) {
        double risePerM = Math.tan(Math.toRadians(altitudeDeg));
        double pathM = Math.min(edgeM, deepestM(altitudeDeg));
        double outM = Math.min(topM, FLOWER_M + edgeM * risePerM);
        double crossed = outM <= baseM ? 0 : (outM - baseM) / (topM - baseM);
        return lineOfSight(pathM) * Math.exp(-0.5 * plantAreaIndex * crossed / Math.sin(Math.toRadians(altitudeDeg)));
    }

    /** Way under the crowns of a ray to the flowers, m: beyond it the ray is in the crowns. The altitude is above 0°. */
    double deepestM(double altitudeDeg) {
        return Math.max(0, baseM - FLOWER_M) / Math.tan(Math.toRadians(altitudeDeg));
    }

    /** Chance that no trunk stands in a line of sight of a length in m, 0 to 1: exp(−N d L). */
    double lineOfSight(double lengthM) {
        return Math.exp(-stemsPerM2 * diameterM * lengthM);
    }
}
