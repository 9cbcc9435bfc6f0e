package understorey.plan;

/** What must be sharp. */
public sealed interface Sharp {

    /** From near to far, metres; far is {@link Double#POSITIVE_INFINITY} for the horizon. */
    record Range(double nearM, double farM) implements Sharp {
    }

    /** So much of the subject, metres, around the plane of focus. */
    record Depth(double depthM) implements Sharp {
    }
}
