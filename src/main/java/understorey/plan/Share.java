package understorey.plan;

/**
 * Who will see the pages; null components mean private and exact.
 */
public record Share(Audience audience, Precision position) {

    /** The author alone, the companions, or everyone. */
    public enum Audience { PRIVATE, PARTY, PUBLIC }

    public enum Precision { EXACT, COARSE, HIDDEN }
}
