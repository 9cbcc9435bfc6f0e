package understorey.exposure.motion;

/**
 * What the wind does to the flowers of a picture.
 *
 * @param windMs   at flower height: the gust for {@code IN_GUSTS}, else the mean wind
 * @param longestS shutter speed at which they still look sharp in that wind
 */
public record MotionBlur(Degree degree, double windMs, double longestS) {

    /** How often they blur, the gravest last. */
    public enum Degree {
        /** In a gust; the mean wind leaves them sharp. */
        IN_GUSTS,
        /** In the mean wind too, at every aperture and ISO; a lull leaves them sharp. */
        UNLESS_IN_LULL,
        /** In a lull too. */
        ALWAYS
    }
}
