package understorey.share;

/**
 * A text that gives a place away.
 *
 * @param path key path of the value in the trip's file; empty for the file's own name
 * @param what it is
 * @param text the words themselves, on one line
 */
public record Leak(String path, What what, String text) {

    /** What gives the place away. */
    public enum What {
        /** Reads as a position, in whatever notation. Never let through. */
        POSITION,
        /** Comes near a name that public pages hide. */
        NAME,
        /** Leads away from the page, to where nobody can judge. */
        LINK
    }
}
