package understorey.kit;

/** How well a lens serves a picture; the worse the later. */
public enum Verdict {
    FITS, COMPROMISE, CANNOT;

    /** The worse of the two. */
    public Verdict and(Verdict other) {
        return ordinal() >= other.ordinal() ? this : other;
    }
}
