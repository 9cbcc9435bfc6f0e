package understorey.plan;

/** Depth of field that the author asks for. */
public sealed interface Sharp {

    /** Distances from near to far, metres; far is {@link Double#POSITIVE_INFINITY} for the horizon. */
    record Range(double nearM, double farM) implements Sharp {
    }

    /** Depth within the subject, metres, around the plane of focus. */
    record Depth(double depthM) implements Sharp {
    }
}
