package understorey.optics;

/**
 * How far light is polarised that a smooth surface mirrors or a clear sky scatters, and what a polariser can take of
 * it. The polariser is an ideal one, turned as well as can be; what it takes of all light is counted apart.
 */
public final class Polarisation {

    /** Index of refraction of water: IUPAC Gold Book, BT07336. A leaf's wax has 1.45 to 1.5 (from memory). */
    public static final double WATER_INDEX = 1.333;
    /** Highest degree in a real clear sky, in the band 90° from the sun: encyclopedia, at second hand. */
    private static final double MOST_IN_SKY = 0.8;

    private Polarisation() {
    }

    /**
     * Angle from the normal, degrees, at which mirrored light is wholly polarised: atan n, for light that comes
     * through air on an index n of 1 or more. IUPAC Gold Book, BT07336.
     */
    public static double brewsterDeg(double index) {
        return Math.toDegrees(Math.atan(index));
    }

    /**
     * Share of light mirrored that swings at right angles to the plane of incidence, Rs, for an angle from the normal
     * of 0 to 90° in air and an index of 1 or more. Fresnel's equation for intensities; a smooth, clear surface.
     */
    public static double reflectanceS(double incidenceDeg, double index) {
        double cosine = Math.cos(Math.toRadians(incidenceDeg));
        double inside = index * insideCosine(incidenceDeg, index);
        return square((cosine - inside) / (cosine + inside));
    }

    /** Share of light mirrored that swings in the plane of incidence, Rp; otherwise as {@link #reflectanceS}. */
    public static double reflectanceP(double incidenceDeg, double index) {
        double cosine = index * Math.cos(Math.toRadians(incidenceDeg));
        double inside = insideCosine(incidenceDeg, index);
        return square((cosine - inside) / (cosine + inside));
    }

    /**
     * Share of the sheen that a polariser can take away from a level, wet surface seen at a grazing angle of 0 to
     * 90°, when the light that it mirrors is not polarised: Rs / (Rs + Rp). Half is what it takes of any light, at
     * grazing angles of 0° and 90°; all of it goes at 90° less the Brewster angle, 37° for water.
     */
    public static double sheenShare(double grazingDeg, double index) {
        double s = reflectanceS(90 - grazingDeg, index);
        return s / (s + reflectanceP(90 - grazingDeg, index));
    }

    /**
     * Degree of polarisation of a clear sky, 0 to 0.8, at an angle from the sun of 0 to 180°: Pmax sin²g / (1 + cos²g),
     * Rayleigh's law for one scattering, with Pmax 0.8. Haze and cloud lower it by an amount that no formula gives.
     */
    public static double skyDegree(double fromSunDeg) {
        double cosine = Math.cos(Math.toRadians(fromSunDeg));
        return MOST_IN_SKY * (1 - cosine * cosine) / (1 + cosine * cosine);
    }

    /**
     * Stops by which a polariser darkens that sky beyond what it takes of all light: −log2(1 − P), 0 to 2.3. Of light
     * polarised to a degree P it passes (1 − P)/2 at least, of other light one half.
     */
    public static double skyStops(double fromSunDeg) {
        return -Math.log(1 - skyDegree(fromSunDeg)) / Math.log(2);
    }

    /** Snell's law: the cosine of the angle at which light goes on inside. */
    private static double insideCosine(double incidenceDeg, double index) {
        return Math.sqrt(1 - square(Math.sin(Math.toRadians(incidenceDeg)) / index));
    }

    private static double square(double value) {
        return value * value;
    }
}
