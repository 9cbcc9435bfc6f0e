package understorey.scene.sketch;

import java.util.Locale;

/** A glyph of a sketch. */
enum Motif {
    /** A head petal by petal, from angles above the level, degrees. */
    STEEP_BELOW(-55), BELOW(-24), LEVEL(4), ABOVE(28), STEEP_ABOVE(62),
    /** A head that is not open, or over. */
    BUD(28), FADED(28),
    /** A head as dots, and as one dot. */
    DOTS(28), DOT(28),
    /** Many far heads. */
    DRIFT(0),
    TUFT(0), TUFT_LEFT(0), SWARD(0),
    /** Bare or leafy ends of branches. */
    FAR_TWIGS(0), FAR_SPRAY(0), TWIGS(0), SPRAY(0);

    final String id = name().toLowerCase(Locale.ROOT);
    final int aboveDeg;

    Motif(int aboveDeg) {
        this.aboveDeg = aboveDeg;
    }

    /** The head petal by petal, from about that angle. */
    static Motif from(double aboveDeg) {
        Motif nearest = STEEP_BELOW;
        for (Motif motif : values()) {
            if (motif.compareTo(STEEP_ABOVE) <= 0 && Math.abs(motif.aboveDeg - aboveDeg) < Math.abs(nearest.aboveDeg - aboveDeg)) {
                nearest = motif;
            }
        }
        return nearest;
    }
}
