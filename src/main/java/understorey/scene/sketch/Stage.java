package understorey.scene.sketch;

/**
 * How far the flowers of a stand are, as shares of its heads.
 *
 * @param buds  not open yet
 * @param faded over
 */
public record Stage(double buds, double faded) {

    /** Every head open. */
    public static final Stage FULL = new Stage(0, 0);

    /** From the ripeness of a stand: −1 when all are buds, 0 in full flower, 1 when all are over. */
    public static Stage of(double ripeness) {
        return new Stage(Math.min(1, Math.max(0, -ripeness)), Math.min(1, Math.max(0, ripeness)));
    }

    double open() {
        return 1 - buds - faded;
    }
}
