package understorey.pages.html;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.scene.sketch.DistanceScale;

/**
 * Distances at the right edge of a sketch, in percent of its height.
 *
 * @param sharpTop    of the bar where the ground is sharp; null without one
 * @param sharpHeight of that bar
 */
public record ScaleView(List<Tick> ticks, @Nullable String sharpTop, @Nullable String sharpHeight) {

    /** A distance. */
    public record Tick(String top, String text, boolean focus) {
    }

    static ScaleView of(DistanceScale scale, Sentences sentences) {
        double height = scale.sharpFoot() - scale.sharpTop();
        return new ScaleView(scale.ticks().stream().map(tick -> new Tick(Words.width(tick.top()), sentences.of(tick.what()), tick.focus())).toList(),
                height > 0 ? Words.width(scale.sharpTop()) : null, height > 0 ? Words.width(height) : null);
    }
}
