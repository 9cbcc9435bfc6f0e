package understorey.share;

/**
 * A text that gives a sensitive place away.
 *
 * @param path key path of the value in the trip's file; empty for the file name
 * @param what kind of leak
 * @param text the words themselves, on one line
 */
public record Leak(String path, What what, String text) {

    /** What gives the place away. */
    public enum What {
        /** Reads as a position, in whatever notation. Never let through. */
        POSITION,
        /** Comes near a name that public pages hide. */
        NAME,
        /** Links away from the page, to content that is not checked. */
        LINK
    }
}
