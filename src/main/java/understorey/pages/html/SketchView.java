package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import understorey.brief.PlannedShot;
import understorey.kit.LensFit;
import understorey.pages.svg.Glyphs;
import understorey.pages.svg.Svg;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Orientation;
import understorey.scene.Drawing;

/**
 * The sketch of a picture and what is written around it.
 *
 * @param again    the sketch once more on the same page, without its marks
 * @param bearings of the left edge, the middle and the right edge; empty if it faces nowhere in particular
 * @param scale    distances at the right edge
 */
public record SketchView(TemplateHTMLOutputModel svg, TemplateHTMLOutputModel again, String says, List<String> bearings, boolean portrait,
                         @Nullable ScaleView scale) {

    /** Null for a picture that no camera takes; glyphs that the page has are left out. */
    static @Nullable SketchView of(PlannedShot shot, Sentences sentences, Glyphs page) {
        if (shot.sketch() == null) {
            return null;
        }
        Drawing drawing = shot.sketch().drawing(sentences);
        String id = "sketch" + shot.timed().number();
        return new SketchView(Templates.html(Svg.shared(drawing, id, page)), Templates.html(Svg.again(drawing, id)), drawing.says(),
                bearings(shot.timed().intent().shot().facingDeg(), shot.timed().fit().best()),
                shot.timed().intent().orientation() == Orientation.PORTRAIT, ifKnown(shot.scale(), scale -> ScaleView.of(scale, sentences)));
    }

    private static List<String> bearings(@Nullable Double facing, @Nullable LensFit fit) {
        if (facing == null || fit == null) {
            return List.of();
        }
        double half = fit.view().horizontalDeg() / 2;
        return DoubleStream.of(facing - half, facing, facing + half).map(deg -> (deg + 360) % 360)
                .mapToObj(deg -> Words.compass(deg) + " " + Words.bearing(deg)).toList();
    }
}
