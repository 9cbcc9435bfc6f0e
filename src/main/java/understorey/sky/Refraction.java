package understorey.sky;

/** Atmospheric refraction: how far the air lifts an object in the sky. */
final class Refraction {

    /** Lowest altitude at which the formula is used; its pole at −5.11° is near. */
    private static final double LOWEST_DEG = -1;

    private Refraction() {
    }

    /**
     * Lift in degrees at a true altitude in degrees, −90 to 90, for 1010 hPa and 10 °C: 29′ at the horizon,
     * nothing at the zenith. Good to 0.1′ above 0°; near the horizon the weather alone changes it by 0.05°.
     * Below −1°, where nothing is seen, it fades linearly to the nadir, so that the apparent altitude never
     * jumps. Sæmundsson 1986, in Meeus, <em>Astronomical Algorithms</em>, 2nd ed., eq. 16.4.
     */
    static double liftDeg(double trueAltitudeDeg) {
        double h = Math.max(trueAltitudeDeg, LOWEST_DEG);
        double lift = Math.max(0, 1.02 / Math.tan(Math.toRadians(h + 10.3 / (h + 5.11))) / 60);
        return trueAltitudeDeg >= LOWEST_DEG ? lift : lift * (trueAltitudeDeg + 90) / (LOWEST_DEG + 90);
    }
}
