package understorey.weather;

/** Likelihood in words: the rules behind it give no percentage. */
public enum Likelihood {
    NONE, LOW, MEDIUM, HIGH
}
