package understorey.scene.sketch;

/**
 * What the air does to a picture.
 *
 * @param mist   true when mist is likely
 * @param sunlit true when the sun reaches the ground
 */
public record Air(boolean mist, boolean sunlit) {

    /** Neither mist nor direct sun. */
    public static final Air CLEAR = new Air(false, false);
}
