package understorey.exposure.motion;

import understorey.light.illuminance.CanopyLight;
import understorey.light.illuminance.PiecewiseLinear;

/**
 * Wind 2 m above the ground, as a share of the wind at 10 m in the open: under trees, near an edge of the wood and in a clearing.
 * Common practice, no source, unless said; off by up to four times with height and wind.
 */
public final class WindUnderTrees {

    /** By the plant area index: open ground, open woodland, a leafless wood, a leafed one and more. */
    private static final PiecewiseLinear INTERIOR = new PiecewiseLinear(
            new double[][] {{0, 0.64}, {0.4, 0.45}, {0.8, 0.25}, {2.5, 0.12}});
    private static final double OPEN_GROUND = INTERIOR.at(0);
    /** At an edge that the wind blows in from. */
    private static final double EDGE = 0.45;
    /** Distance over which the wind of the edge falls to 1/e: Davies-Colley and others, New Zealand Journal of Ecology 24 (2000) 111. */
    private static final double EDGE_FADES_M = 13.3;
    /** A small clearing against the interior: 0.10 to 0.12. */
    private static final double CLEARING_TIMES = 0.1 / 0.12;
    /**
     * Widths of a clearing in tree heights: sheltered up to the one, as windy as open ground from the other (Swanson, Western Snow
     * Conference 1980).
     */
    private static final double SHELTERED_HEIGHTS = 6;
    private static final double OPEN_HEIGHTS = 20;

    private WindUnderTrees() {
    }

    /** The share at a place. Forecasts here have no wind direction, so the wind is assumed to come in at the nearest edge. */
    static double shareAt2M(CanopyLight canopy) {
        double inside = INTERIOR.at(canopy.plantAreaIndex());
        double away = canopy.treeTopDeg() == null ? inside : clearing(inside, 2 / Math.tan(Math.toRadians(canopy.treeTopDeg())));
        return away + Math.max(0, EDGE - away) * Math.exp(-canopy.nearestEdgeM() / EDGE_FADES_M);
    }

    private static double clearing(double inside, double heights) {
        double open = Math.max(0, Math.min(1, (heights - SHELTERED_HEIGHTS) / (OPEN_HEIGHTS - SHELTERED_HEIGHTS)));
        return inside * CLEARING_TIMES * (1 - open) + OPEN_GROUND * open;
    }
}
