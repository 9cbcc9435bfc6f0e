package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.pages.DrawingWords;
import understorey.plan.Compose;
import understorey.plan.FramePlace;
import understorey.plan.Viewpoint;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Point;

class ComposeMarksTest {

    private static Drawing drawn(Compose compose) {
        Samples.Picture picture = Samples.picture("Ground").from(new Viewpoint.Height(1.5)).equivalent(50).tilt(15).sharp(2, 20);
        return ViewfinderSketch.of(Setups.composed(picture, compose)).drawing(DrawingWords.BUILT_IN);
    }

    private static List<Drawing.Mark> marks(Drawing drawing, String style) {
        return ((Drawing.Palette) drawing.marks().get(0)).marks().stream().filter(mark -> mark.style().equals(style)).toList();
    }

    @Test
    void aPlaceIsReadFromTheAuthorsWords() {
        assertEquals(new FramePlace(-1, 1), FramePlace.in("the stream, from the lower left"));
        assertEquals(new FramePlace(1, -1), FramePlace.in("Top right"));
        assertEquals(new FramePlace(-1, 0), FramePlace.in("the fallen ash at the left edge"));
        assertEquals(new FramePlace(0, 1), FramePlace.in("fence along the bottom"));
        assertNull(FramePlace.in("bright sky between the trunks"));
        assertNull(FramePlace.in("the path from left to right"));
    }

    @Test
    void aLineLeadsInFromItsCornerToTheSubject() {
        Drawing drawing = drawn(new Compose(null, null, null, "the stream, lower left", List.of()));
        List<Point> line = ((Drawing.Curves) marks(drawing, "lead-in").get(0)).runs().get(0);
        Point from = line.get(0);
        Point tip = line.get(line.size() - 1);
        assertTrue(from.x() < 0.05 * drawing.width() && from.y() > 0.95 * drawing.height(), from.toString());
        assertEquals(drawing.width() / 2, tip.x(), 0.06 * drawing.width());
        assertTrue(drawing.says().contains("leads in from the lower left"), drawing.says());
    }

    @Test
    void whatToKeepOutIsStruckOutAtItsEdgeAndOnlyThere() {
        Drawing drawing = drawn(new Compose(null, null, null, null, List.of("the ash at the right edge", "bright sky")));
        List<Point> ends = ((Drawing.Hatch) marks(drawing, "keep-out").get(0)).ends();
        assertTrue(ends.size() > 10);
        ends.forEach(end -> assertTrue(end.x() > 0.9 * drawing.width(), end.toString()));
        assertTrue(drawing.says().contains("Struck out: the right edge"), drawing.says());
    }

    @Test
    void wordsWithoutAPlaceAreNotDrawn() {
        Drawing drawing = drawn(new Compose("leaves", "carpet", "trunks", "the thin shadows", List.of("your own shadow")));
        assertTrue(marks(drawing, "lead-in").isEmpty() && marks(drawing, "keep-out").isEmpty());
        assertFalse(drawing.says().contains("leads in") || drawing.says().contains("Struck"), drawing.says());
    }
}
