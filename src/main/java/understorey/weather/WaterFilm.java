package understorey.weather;

/** Film of water on leaves and petals, mm deep, that dries in the air. */
final class WaterFilm {

    /** What leaves hold before they drip, an order of magnitude; from memory. */
    static final double MOST_MM = 0.2;
    /** A dewy night leaves 0.1 to 0.3 mm; from memory. */
    static final double DEW_MM = 0.1;
    /** Share of the 10 m wind among the stems of a wood: NWCG Firefighter Math 8.2, fully sheltered dense stand, for flame height and a 6 m wind. */
    private static final double SHELTERED = 0.1;

    private double mm;
    private double laidMm;

    /** Adds rain, up to what leaves hold; the share counts from here. */
    void rain(double rainMm) {
        lay(Math.min(MOST_MM, mm + rainMm));
    }

    /** Adds dew, unless the film is deeper already. */
    void dew() {
        lay(Math.max(mm, DEW_MM));
    }

    private void lay(double depthMm) {
        mm = depthMm;
        laidMm = depthMm;
    }

    /** Takes away a depth; the film is never below 0. */
    void lose(double depthMm) {
        mm = Math.max(0, mm - depthMm);
    }

    void clear() {
        mm = 0;
    }

    boolean wet() {
        return mm > 0;
    }

    double mm() {
        return mm;
    }

    /** Depth when it was last wetted. */
    double laidMm() {
        return laidMm;
    }

    /** Part of the film that was last laid, 0 to 1. */
    double share() {
        return mm > 0 ? mm / laidMm : 0;
    }

    /**
     * Depth that the air takes in a day, mm: Penman 1948, Proc. R. Soc. A 193: 120, aerodynamic part, 0.26 (1 + 0.54 u)
     * (es − e) with u in m/s and vapour pressures in hPa; from memory. Of open water with no sun on it: right to a
     * factor of two for leaves.
     *
     * @param wind10Ms mean at 10 m, of which a tenth reaches the flowers
     */
    static double evaporationMmPerDay(double temperatureC, double dewPointC, double wind10Ms) {
        double lacking = Humidity.saturationHpa(temperatureC) - Humidity.saturationHpa(dewPointC);
        return 0.26 * (1 + 0.54 * SHELTERED * wind10Ms) * Math.max(0, lacking);
    }
}
