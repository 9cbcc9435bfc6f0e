package understorey.plan;

/** Another photographer on the trip, with their own bag. */
public record Companion(String name, Bag gear) {
}
