package understorey.optics;

/** Light lost close up, because the lens is further from the sensor. */
public final class Bellows {

    private Bellows() {
    }

    /**
     * Exposure factor (v/f)² = (1 + m)²: US Army course SS0512. For m of 0 or more and pupils of equal size;
     * a pupil magnification P makes it (1 + m/P)² (from memory). A meter behind the lens has counted it already.
     */
    public static double factor(double magnification) {
        return (1 + magnification) * (1 + magnification);
    }

    /** Light lost close up, stops: log2 of the {@link #factor}, 0 at infinity and 2 at life size. */
    public static double stops(double magnification) {
        return Math.log(factor(magnification)) / Math.log(2);
    }
}
