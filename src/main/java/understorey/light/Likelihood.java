package understorey.light;

/** How likely something is, in words: the rules behind it carry no percentage. */
public enum Likelihood {
    NONE, LOW, MEDIUM, HIGH
}
