package understorey.pages.svg;

import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.scene.Drawing;

/** The glyphs that the sketches of a page have defined so far, so that each is defined once. */
public final class Glyphs {

    /** A glyph takes its colours from the palette around it. */
    private record Painted(@Nullable String palette, @Nullable String own, Drawing.Glyph glyph) {
    }

    private final Map<Painted, String> ids = new HashMap<>();

    /** The id of an equal glyph that the page has already; null, and from then on {@code id}, for the first. */
    @Nullable String defined(Drawing.@Nullable Palette palette, Drawing.Glyph glyph, String id) {
        return ids.putIfAbsent(new Painted(palette == null ? null : palette.style(), palette == null ? null : palette.own(), glyph), id);
    }
}
