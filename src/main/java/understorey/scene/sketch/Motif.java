package understorey.scene.sketch;

import java.util.Locale;

/** A glyph of a sketch. */
enum Motif {
    /** A head petal by petal, a head as dots, and a head as one dot. */
    PETALS, DOTS, DOT,
    /** Many far heads. */
    DRIFT,
    TUFT, TUFT_LEFT;

    final String id = name().toLowerCase(Locale.ROOT);
}
