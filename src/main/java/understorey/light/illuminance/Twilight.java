package understorey.light.illuminance;

/** Light of the sun, and of the sky that it lights, on level ground under a clear sky. */
public final class Twilight {

    private static final double LOWEST_DEG = -18;

    /** A stretch of altitudes from {@code fromDeg} up, and the cubic that holds in it. */
    private record Piece(double fromDeg, double l0, double l1, double l2, double l3) {
        double lux(double altitudeDeg) {
            double x = altitudeDeg / 90;
            return Math.pow(10, l0 + x * (l1 + x * (l2 + x * l3)));
        }
    }

    private static final Piece[] PIECES = {
        new Piece(20, 3.74, 3.97, -4.07, 1.47),
        new Piece(5, 3.05, 13.28, -45.98, 64.33),
        new Piece(-0.8, 2.88, 22.26, -207.64, 1034.30),
        new Piece(-5, 2.88, 21.81, -258.11, -858.36),
        new Piece(-12, 2.70, 12.17, -431.69, -1899.83),
        new Piece(LOWEST_DEG, 13.84, 262.72, 1447.42, 2797.93),
    };

    private Twilight() {
    }

    /**
     * Illuminance, lux, at an altitude of the sun's centre of −18° to 90°; below that the value at −18°, since
     * starlight and airglow are then brighter and are the caller's to add. The published pieces do not quite
     * meet: steps of up to 1 % at −12°, −5°, −0.8°, 5° and 20°. Seidelmann (ed.), <em>Explanatory Supplement to
     * the Astronomical Almanac</em>; Urban and Seidelmann, 3rd ed. 2013, p. 518.
     */
    public static double lux(double altitudeDeg) {
        double h = Math.max(altitudeDeg, LOWEST_DEG);
        for (Piece piece : PIECES) {
            if (h >= piece.fromDeg) {
                return piece.lux(h);
            }
        }
        throw new IllegalArgumentException("no altitude: " + altitudeDeg);
    }
}
