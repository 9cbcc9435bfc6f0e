package understorey.kit;

/** How well a lens serves a picture; the worse the later. */
public enum Verdict {
    FITS, COMPROMISE, CANNOT;

    /** Returns the worse one of this verdict and another. */
    public Verdict and(Verdict other) {
        return ordinal() >= other.ordinal() ? this : other;
    }
}
