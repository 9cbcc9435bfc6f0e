package understorey.weather;

/**
 * Force of the wind at 10 m in the open, mean over 10 minutes, by the limits of the World Meteorological
 * Organization. It does not describe the wind among flowers.
 */
public enum Beaufort {
    CALM(0),
    LIGHT_AIR(0.3),
    LIGHT_BREEZE(1.6),
    GENTLE_BREEZE(3.4),
    MODERATE_BREEZE(5.5),
    FRESH_BREEZE(8.0),
    STRONG_BREEZE(10.8),
    NEAR_GALE(13.9),
    GALE(17.2),
    STRONG_GALE(20.8),
    STORM(24.5),
    VIOLENT_STORM(28.5),
    HURRICANE(32.7);

    private static final Beaufort[] FORCES = values();

    private final double fromMs;

    Beaufort(double fromMs) {
        this.fromMs = fromMs;
    }

    /**
     * The force of a wind of 0 m/s or more. Limits are printed to a tenth, so round a speed to a tenth first; between two
     * printed ranges the lower force holds.
     */
    public static Beaufort of(double windMs) {
        int force = FORCES.length - 1;
        while (force > 0 && windMs < FORCES[force].fromMs) {
            force--;
        }
        return FORCES[force];
    }

    /** 0 to 12. */
    public int force() {
        return ordinal();
    }
}
