package understorey.plan;

/** Someone who comes along with a bag of their own. */
public record Companion(String name, Bag gear) {
}
