package understorey.exposure;

/**
 * What the wind does to the flowers of a picture.
 *
 * @param windMs   at flower height
 * @param longestS shutter speed at which they still look sharp: in a lull for {@code IN_GUSTS} where ISO was raised for
 *                 it, else at the worst moment of a gust
 */
public record MotionBlur(Degree degree, double windMs, double longestS) {

    /** How often they blur, the gravest last. */
    public enum Degree {
        /** In a gust; a lull keeps them sharp, as does a higher ISO. */
        IN_GUSTS,
        /** Without a lull at every aperture and ISO. */
        UNLESS_IN_LULL,
        /** In a lull too. */
        ALWAYS
    }
}
