package understorey.light.illuminance;

/**
 * Exposure value at ISO 100 of light falling on a subject. ISO 2720:1974, incident-light equation with the
 * calibration constant C = 250 of a flat receptor (240 to 400 recommended), so that 2.5 lux is EV 0.
 */
public final class ExposureValue {

    private static final double INCIDENT_CONSTANT = 250;
    private static final double ISO = 100;

    private ExposureValue() {
    }

    /** Exposure value at ISO 100 of an illuminance above 0, lux. */
    public static double ev100(double lux) {
        return Math.log(lux * ISO / INCIDENT_CONSTANT) / Math.log(2);
    }
}
