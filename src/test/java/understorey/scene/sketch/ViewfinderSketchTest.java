package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.kit.LensFit;
import understorey.optics.Projection;
import understorey.pages.DrawingWords;
import understorey.plan.Role;
import understorey.plan.Slope;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Drawing;

class ViewfinderSketchTest {

    private static Samples.Picture floor(double heightM, double mm, double tiltDeg) {
        return Samples.picture("Floor").from(new Viewpoint.Height(heightM)).equivalent(mm).tilt(tiltDeg).sharp(2, 20);
    }

    private static Setup head() {
        return Setups.inTheWood(Samples.picture("Head").role(Role.CLOSING), 0);
    }

    /** Heads and leaves may be cut by the edge; none is wholly beyond. */
    @Property(tries = 60)
    void noHeadLiesOutsideTheFrame(@ForAll @DoubleRange(min = 0.05, max = 2) double heightM,
            @ForAll @DoubleRange(min = 18, max = 150) double mm, @ForAll @DoubleRange(min = -60, max = 90) double tiltDeg,
            @ForAll @DoubleRange(min = -30, max = 30) double slopeDeg) {
        Setup setup = Setups.inTheWood(floor(heightM, mm, tiltDeg), slopeDeg);
        if (setup == null) {
            return;
        }
        Drawing drawing = ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN);
        for (Mark mark : marks(drawing)) {
            double beyond = mark instanceof Drawing.Spots spots ? spots.diameter() / 2 : mark instanceof Drawing.Stamps stamps ? stamps.width() : 0;
            if (mark instanceof Drawing.Spots || mark instanceof Drawing.Stamps) {
                for (Point point : places(mark)) {
                    assertTrue(point.x() >= -beyond - 1 && point.x() <= drawing.width() + beyond + 1 && point.y() >= -beyond - 1
                            && point.y() <= drawing.height() + beyond + 1, mark.style() + " " + point);
                }
            }
        }
    }

    /** Those in its palette, without its glyphs. */
    private static List<Mark> marks(Drawing drawing) {
        Drawing.Palette palette = (Drawing.Palette) drawing.marks().get(0);
        return palette.marks().stream().filter(mark -> !(mark instanceof Drawing.Glyph)).toList();
    }

    private static List<Point> places(Mark mark) {
        return mark instanceof Drawing.Spots spots ? spots.at() : mark instanceof Drawing.Stamps stamps ? stamps.at()
                : mark instanceof Drawing.Curves curves ? curves.runs().stream().flatMap(List::stream).toList() : List.of();
    }

    @Test
    void theSamePictureGivesTheSameSketchAndAnotherNameAnother() {
        Setup setup = Setups.inTheWood(floor(1.5, 50, 20), 0);
        assertEquals(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN),
                ViewfinderSketch.of(Setups.inTheWood(floor(1.5, 50, 20), 0)).drawing(DrawingWords.BUILT_IN));
        Samples.Picture other = Samples.picture("Other").from(new Viewpoint.Height(1.5)).equivalent(50).tilt(20).sharp(2, 20);
        assertNotEquals(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN).marks(),
                ViewfinderSketch.of(Setups.inTheWood(other, 0)).drawing(DrawingWords.BUILT_IN).marks());
    }

    /** By hand: 50 mm on 24 mm of height, tilted 10° down: 50 · tan 10° = 8.816 mm above the middle, of 12 mm: 26.5 %. */
    @Test
    void theHorizonOfLevelGroundStandsWhereTheTiltPutsIt() {
        LensFit fit = Setups.fit(floor(1.5, 50, 10));
        double focalMm = 12 / Math.tan(Math.toRadians(fit.view().verticalDeg() / 2));
        assertEquals(50, focalMm, 1.5);
        Setup setup = Setups.of(floor(1.5, 50, 10), null, null, null);
        double horizonY = ((Drawing.Box) mark(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), "ground")).y();
        assertEquals(160 * (1 - focalMm * Math.tan(Math.toRadians(10)) / 12), horizonY, 0.1);
        assertEquals(42.5, horizonY, 4);
    }

    /** Ground that falls away at the angle at which the lens looks down vanishes in the middle of the frame. */
    @Test
    void theHorizonOfABankFollowsIt() {
        Setup setup = Setups.of(floor(1.5, 50, 8), new Slope(8, 90), null, null);
        assertEquals(160, ((Drawing.Box) mark(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), "ground")).y(), 0.1);
    }

    @Test
    void groundAndWhatStandsOnItAreProjectedAsDirectionsAre() {
        LensFit fit = Setups.fit(floor(1.2, 35, 12));
        Perspective perspective = new Perspective(fit.view(), 1.2, 12, 0);
        Projection projection = Projection.of(0, 12, fit.view());
        for (double[] at : new double[][] {{0, 5, 0}, {1, 4, 0.3}, {-2, 9, 2}, {3, 20, 0}}) {
            double depth = perspective.depthM(at[1], at[2]);
            Projection.Place place = projection.place(Math.toDegrees(Math.atan2(at[0], at[1])),
                    Math.toDegrees(Math.atan2(at[2] - 1.2, Math.hypot(at[0], at[1]))));
            assertEquals(240 * (1 + place.x()), perspective.x(at[0], depth), 1e-6);
            assertEquals(160 * (1 - place.y()), perspective.y(at[1], at[2], depth), 1e-6);
        }
    }

    /** A head of 51 mm where the frame is 1 m wide is 51 thousandths of 480 px. */
    @Test
    void aHeadIsAsLargeInTheFrameAsItsWidthAndDistanceMakeIt() {
        Setup setup = Setups.inTheWood(floor(1.5, 50, 20), 0);
        Perspective perspective = Perspective.of(setup);
        double depth = setup.fit().distanceM() / setup.fit().frameWidthM();
        double px = setup.headM() * perspective.pxPerM(depth);
        assertEquals(setup.headM() * 480, px, 0.03 * px);
    }

    /** The frame is six tenths full of the head by default: common practice. Fourteen flowers on a half globe leave a little at its edges. */
    @Test
    void aCloseUpShowsTheHeadAtItsTrueSizeBeforeSoftDiscs() {
        Setup setup = head();
        List<Mark> marks = marks(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN));
        double headPx = setup.headM() / setup.fit().frameWidthM() * 480;
        List<Point> petals = marks.stream().filter(mark -> mark.style().equals("petal-edged") || mark.style().equals("petal-rear"))
                .flatMap(mark -> places(mark).stream()).toList();
        double left = petals.stream().mapToDouble(Point::x).min().orElseThrow();
        double right = petals.stream().mapToDouble(Point::x).max().orElseThrow();
        assertEquals(headPx, right - left, 0.15 * headPx);
        assertTrue(marks.stream().anyMatch(mark -> mark instanceof Drawing.Stamps stamps && stamps.strength() < 0.7 && stamps.width() > 15));
    }

    /** A density below one per square metre is shown as it is; an unknown one is not shown. */
    @Test
    void tellsTheDensityOfFlowersTruly() {
        Setup setup = Setups.inTheWood(floor(1.5, 50, 10), 0);
        assertFalse(setup.stemsKnown());
        String unknown = ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN).says();
        assertTrue(unknown.contains("Flowers: unknown density"), unknown);
        assertFalse(unknown.contains("stems per m²"), unknown);
        Setup carpet = Setups.inTheWood(floor(1.5, 50, 10).of(SubjectCatalogue.builtIn().find("ramsons")), 0);
        assertTrue(ViewfinderSketch.of(carpet, 0.3).drawing(DrawingWords.BUILT_IN).says().contains("Flowers: 0.3\u00a0stems per m²"));
        assertTrue(ViewfinderSketch.of(carpet, 0.01).drawing(DrawingWords.BUILT_IN).says().contains("Flowers: under 0.1\u00a0stems per m²"));
        assertFalse(ViewfinderSketch.of(carpet, 0).drawing(DrawingWords.BUILT_IN).says().contains("Flowers"));
        assertTrue(ViewfinderSketch.of(carpet).drawing(DrawingWords.BUILT_IN).says().contains("Flowers: 100\u00a0stems per m²"));
    }

    @Test
    void theSunIsDrawnOnlyWhereItStandsClearInTheFrame() {
        Samples.Picture level = floor(1.2, 50, 0);
        Drawing drawing = ViewfinderSketch.of(Setups.of(level, null, null, Setups.sun(90, 5))).drawing(DrawingWords.BUILT_IN);
        Drawing.Dot ring = (Drawing.Dot) mark(drawing, "sun-ring");
        assertEquals(240, ring.at().x(), 0.5);
        assertTrue(ring.at().y() < 160 && ring.at().y() > 80, ring.toString());
        assertTrue(drawing.says().contains("The sun is in the frame"));
        assertFalse(hasSun(Setups.of(level, null, null, null)));
        assertFalse(hasSun(Setups.of(level, null, null, Setups.sun(150, 5))));
        assertFalse(hasSun(Setups.of(level, null, null, Setups.sun(270, 5))));
    }

    private static boolean hasSun(Setup setup) {
        return marks(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN)).stream().anyMatch(mark -> mark.style().startsWith("sun"));
    }

    @Test
    void trunksStandInAWoodAndNotInTheOpen() {
        assertTrue(marks(ViewfinderSketch.of(Setups.inTheWood(floor(1.2, 50, 0), 0)).drawing(DrawingWords.BUILT_IN)).stream()
                .anyMatch(mark -> mark.style().startsWith("trunk")));
        assertTrue(marks(ViewfinderSketch.of(Setups.of(floor(1.2, 50, 0), null, null, null)).drawing(DrawingWords.BUILT_IN)).stream()
                .noneMatch(mark -> mark.style().contains("trunk")));
    }

    private static Mark mark(Drawing drawing, String style) {
        return marks(drawing).stream().filter(mark -> mark.style().equals(style)).findFirst().orElseThrow();
    }
}
