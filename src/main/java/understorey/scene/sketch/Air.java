package understorey.scene.sketch;

/**
 * What the air does to a picture.
 *
 * @param mist   true when mist is likely
 * @param sunlit true when the sun reaches the ground
 * @param drops  true when drops on the flowers are expected
 */
public record Air(boolean mist, boolean sunlit, boolean drops) {

    /** Neither mist nor direct sun nor drops. */
    public static final Air CLEAR = new Air(false, false, false);
}
