package understorey.share;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Position;

/**
 * A grid of a map, by the transverse Mercator projection (Snyder, Map Projections: A Working Manual, USGS Professional
 * Paper 1395, 1987, formulas 8-9 and 8-10). Datums are taken for one, and conical and oblique grids for the
 * transverse one that touches them in the middle of their country: good to some kilometres, enough to tell near from far.
 *
 * @param meridianDeg central meridian
 * @param originDeg   latitude of the origin
 * @param scale       on the central meridian
 * @param eastM       false easting
 * @param northM      false northing
 */
record MapGrid(double meridianDeg, double originDeg, double scale, double eastM, double northM) {

    static final MapGrid BRITISH = new MapGrid(-2, 49, 0.9996012717, 400_000, -100_000);
    static final MapGrid IRISH = new MapGrid(-8, 53.5, 1.000035, 200_000, 250_000);

    /** Semi-major axis, m, and squared eccentricity of GRS 80. */
    private static final double A = 6_378_137;
    private static final double E2 = 0.00669438;
    private static final double UTM_SCALE = 0.9996;
    private static final double WIDEST_DEG = 30;
    private static final int ZONES_EACH_WAY = 3;

    /** Britain, Ireland (two), Netherlands, Switzerland (two), France (two), Poland, Sweden, New Zealand, Austria, Portugal,
     * Belgium: parameters from memory. */
    private static final List<MapGrid> NATIONAL = List.of(BRITISH, IRISH,
            new MapGrid(-8, 53.5, 0.99982, 600_000, 750_000),
            new MapGrid(5.387639, 52.156161, 0.9999079, 155_000, 463_000),
            new MapGrid(7.439583, 46.952406, 1, 600_000, 200_000),
            new MapGrid(7.439583, 46.952406, 1, 2_600_000, 1_200_000),
            new MapGrid(3, 46.5, 1, 700_000, 6_600_000),
            new MapGrid(2.337229, 46.8, 1, 600_000, 2_200_000),
            new MapGrid(19, 0, 0.9993, 500_000, -5_300_000),
            new MapGrid(15.808278, 0, 1.00000561, 1_500_064, -668),
            new MapGrid(173, 0, 0.9996, 1_600_000, 10_000_000),
            new MapGrid(13.333333, 47.5, 1, 400_000, 400_000),
            new MapGrid(-8.133108, 39.668258, 1, 0, 0),
            new MapGrid(4.367487, 50.797815, 1, 150_000, 165_372));

    /** Those in use where a position lies. */
    static List<MapGrid> around(Position at) {
        List<MapGrid> grids = new ArrayList<>(NATIONAL);
        double zone = Math.floor(at.longitude() / 6) * 6 + 3;
        double narrow = Math.round(at.longitude() / 3) * 3;
        for (int i = -ZONES_EACH_WAY; i <= ZONES_EACH_WAY; i++) {
            grids.add(new MapGrid(zone + 6 * i, 0, UTM_SCALE, 500_000, 0));
            grids.add(new MapGrid(zone + 6 * i, 0, UTM_SCALE, 500_000, 10_000_000));
            grids.add(new MapGrid(narrow + 3 * i, 0, 1, 1_000_000 * (narrow / 3 + i) + 500_000, 0));
        }
        return grids;
    }

    /** Easting and northing in the zone of the military grid. */
    static double[] military(Position at) {
        return new MapGrid(Math.floor(at.longitude() / 6) * 6 + 3, 0, UTM_SCALE, 500_000, at.latitude() < 0 ? 10_000_000 : 0).of(at);
    }

    /** Easting and northing of a position, m; not a number where nobody uses the grid. */
    double[] of(Position at) {
        double away = Math.IEEEremainder(at.longitude() - meridianDeg, 360);
        if (Math.abs(away) > WIDEST_DEG) {
            return new double[] {Double.NaN, Double.NaN};
        }
        double lat = Math.toRadians(at.latitude());
        double second = E2 / (1 - E2);
        double n = A / Math.sqrt(1 - E2 * Math.pow(Math.sin(lat), 2));
        double t = Math.pow(Math.tan(lat), 2);
        double c = second * Math.pow(Math.cos(lat), 2);
        double a = Math.toRadians(away) * Math.cos(lat);
        double east = scale * n * (a + (1 - t + c) * Math.pow(a, 3) / 6
                + (5 - 18 * t + t * t + 72 * c - 58 * second) * Math.pow(a, 5) / 120);
        double north = scale * (meridianM(lat) - meridianM(Math.toRadians(originDeg)) + n * Math.tan(lat)
                * (a * a / 2 + (5 - t + 9 * c + 4 * c * c) * Math.pow(a, 4) / 24));
        return new double[] {east + eastM, north + northM};
    }

    /** Easting and northing on the spherical Mercator plane of web maps, m (Snyder 7-1 and 7-2 with the radius of GRS 80). */
    static double[] web(Position at) {
        return new double[] {A * Math.toRadians(at.longitude()),
            A * Math.log(Math.tan(Math.PI / 4 + Math.toRadians(at.latitude()) / 2))};
    }

    /** Along the meridian from the equator, m (Snyder 3-21, to the fourth power of the eccentricity). */
    private static double meridianM(double lat) {
        return A * ((1 - E2 / 4 - 3 * E2 * E2 / 64) * lat - (3 * E2 / 8 + 3 * E2 * E2 / 32) * Math.sin(2 * lat)
                + 15 * E2 * E2 / 256 * Math.sin(4 * lat));
    }
}
