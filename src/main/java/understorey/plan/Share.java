package understorey.plan;

/**
 * Who will see the pages; null components mean private and exact.
 */
public record Share(Audience audience, Precision position) {

    /** For the author alone, for companions, for anyone. */
    public enum Audience { PRIVATE, PARTY, PUBLIC }

    public enum Precision { EXACT, COARSE, HIDDEN }
}
