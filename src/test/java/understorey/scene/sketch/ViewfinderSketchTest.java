package understorey.scene.sketch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
import understorey.reading.SubjectCatalogue;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;

class ViewfinderSketchTest {

    /** A drawing that would grow too large leaves flowers out, and says so. */
    private static final Pattern DRAWN = Pattern.compile("\\((\\d+).% of them drawn");

    private static Samples.Picture floor(double heightM, double mm, double tiltDeg) {
        return Samples.picture("Floor").from(new Viewpoint.Height(heightM)).equivalent(mm).tilt(tiltDeg).sharp(2, 20);
    }

    private static Setup head() {
        return Setups.inTheWood(Samples.picture("Head").role(Role.CLOSING), 0);
    }

    /** Heads may be cut by the edge: the sheet ends there, and none stands wholly beyond. */
    @Property(tries = 60)
    void nothingLiesOutsideTheFrame(@ForAll @DoubleRange(min = 0.05, max = 2) double heightM,
            @ForAll @DoubleRange(min = 18, max = 150) double mm, @ForAll @DoubleRange(min = -60, max = 90) double tiltDeg,
            @ForAll @DoubleRange(min = -30, max = 30) double slopeDeg) {
        Setup setup = Setups.inTheWood(floor(heightM, mm, tiltDeg), slopeDeg);
        if (setup == null) {
            return;
        }
        Drawing drawing = ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN);
        for (Mark mark : drawing.marks()) {
            double beyond = radius(mark) + 0.1;
            for (Point point : places(mark)) {
                assertTrue(point.x() >= -beyond && point.x() <= drawing.width() + beyond
                        && point.y() >= -beyond && point.y() <= drawing.height() + beyond, mark.style() + " " + point);
            }
        }
    }

    /** Of what stands round each place; an eye goes with its petals. */
    private static double radius(Mark mark) {
        if (mark instanceof Drawing.Spots spots) {
            return mark.style().startsWith("eye") ? 3 * spots.diameter() : spots.diameter() / 2;
        }
        return mark instanceof Drawing.Stamps stamps ? stamps.outline().stream()
                .mapToDouble(corner -> Math.hypot(corner.x(), corner.y())).max().orElseThrow() : 0;
    }

    private static List<Point> places(Mark mark) {
        if (mark instanceof Drawing.Hatch hatch) {
            return hatch.ends();
        }
        if (mark instanceof Drawing.Area area) {
            return area.points();
        }
        if (mark instanceof Drawing.Spots spots) {
            return spots.at();
        }
        if (mark instanceof Drawing.Stamps stamps) {
            return stamps.at();
        }
        if (mark instanceof Drawing.Dot dot) {
            return List.of(dot.at());
        }
        Drawing.Box box = (Drawing.Box) mark;
        return List.of(new Point(box.x(), box.y()), new Point(box.x() + box.width(), box.y() + box.height()));
    }

    @Test
    void theSamePictureGivesTheSameSketchAndAnotherNameAnother() {
        Setup setup = Setups.inTheWood(floor(1.5, 50, 20), 0);
        assertEquals(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), ViewfinderSketch.of(Setups.inTheWood(floor(1.5, 50, 20), 0)).drawing(DrawingWords.BUILT_IN));
        Samples.Picture other = Samples.picture("Other").from(new Viewpoint.Height(1.5)).equivalent(50).tilt(20).sharp(2, 20);
        assertNotEquals(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN).marks(), ViewfinderSketch.of(Setups.inTheWood(other, 0)).drawing(DrawingWords.BUILT_IN).marks());
    }

    /** By hand: 50 mm on 24 mm of height, tilted 10° down: 50 · tan 10° = 8.816 mm above the middle, of 12 mm: 26.5 %. */
    @Test
    void theHorizonOfLevelGroundStandsWhereTheTiltPutsIt() {
        LensFit fit = Setups.fit(floor(1.5, 50, 10));
        double focalMm = 12 / Math.tan(Math.toRadians(fit.view().verticalDeg() / 2));
        assertEquals(50, focalMm, 1.5);
        Setup setup = Setups.of(floor(1.5, 50, 10), null, null, null);
        Drawing.Hatch horizon = (Drawing.Hatch) mark(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), "horizon");
        assertEquals(160 * (1 - focalMm * Math.tan(Math.toRadians(10)) / 12), horizon.ends().get(0).y(), 0.1);
        assertEquals(42.5, horizon.ends().get(0).y(), 4);
    }

    /** Ground that falls away at the angle at which the lens looks down vanishes in the middle of the frame. */
    @Test
    void theHorizonOfABankFollowsIt() {
        Setup setup = Setups.of(floor(1.5, 50, 8), new Slope(8, 90), null, null);
        assertEquals(160, ((Drawing.Hatch) mark(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), "horizon")).ends().get(0).y(), 0.1);
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

    /** A head of 51 mm where the frame is 1 m wide is 51 thousandths of 480 px; drawn in steps of 15 %. */
    @Test
    void aHeadIsAsLargeInTheFrameAsItsWidthAndDistanceMakeIt() {
        Setup setup = Setups.inTheWood(floor(1.5, 50, 20), 0);
        Perspective perspective = Perspective.of(setup);
        double depth = setup.fit().distanceM() / setup.fit().frameWidthM();
        double px = setup.headM() * perspective.pxPerM(depth);
        assertEquals(setup.headM() * 480, px, 0.03 * px);
        double drawn = Heads.size(Heads.step(px));
        assertTrue(drawn / px < Math.sqrt(Heads.STEP) + 1e-9 && px / drawn < Math.sqrt(Heads.STEP) + 1e-9);
        double across = 2 * Heads.rosette(drawn, 6).stream().mapToDouble(at -> Math.hypot(at.x(), at.y())).max().orElse(0);
        assertEquals(drawn, across, 0.2);
    }

    /** The frame is six tenths full of the head by default: common practice. */
    @Test
    void aCloseUpShowsTheHeadAtItsTrueSizeBeforeSoftDiscs() {
        Setup setup = head();
        Drawing drawing = ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN);
        double headPx = setup.headM() / setup.fit().frameWidthM() * drawing.width();
        Drawing.Stamps flowers = null;
        for (Mark mark : drawing.marks()) {
            flowers = mark instanceof Drawing.Stamps stamps && stamps.style().equals("head") ? stamps : flowers;
        }
        double left = flowers.at().stream().mapToDouble(Point::x).min().orElseThrow();
        double right = flowers.at().stream().mapToDouble(Point::x).max().orElseThrow();
        double flower = 2 * flowers.outline().stream().mapToDouble(at -> Math.hypot(at.x(), at.y())).max().orElseThrow();
        assertEquals(headPx, right - left + flower, 0.06 * headPx);
        assertTrue(drawing.marks().stream().anyMatch(mark -> mark.style().equals("disc")));
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
        assertTrue(ViewfinderSketch.of(carpet, 0.3).drawing(DrawingWords.BUILT_IN).says().contains("Flowers: 0.3 stems per m²"));
        assertTrue(ViewfinderSketch.of(carpet, 0.01).drawing(DrawingWords.BUILT_IN).says().contains("Flowers: under 0.1 stems per m²"));
        assertFalse(ViewfinderSketch.of(carpet, 0).drawing(DrawingWords.BUILT_IN).says().contains("lowers"));
        assertTrue(ViewfinderSketch.of(carpet).drawing(DrawingWords.BUILT_IN).says().contains("Flowers: 100 stems per m²"));
    }

    /** Heads of one flower each: of others a sketch shows the flowers of a few large ones, and many as one. */
    @Test
    void moreStemsNeverGiveFewerFlowers() {
        for (double mm : new double[] {20, 50, 135}) {
            Setup setup = Setups.inTheWood(floor(1.2, mm, 10).of(Samples.subject("anemone", 0.1, 0.3, 30.0, 1, null)), 0);
            double before = 0;
            for (double stems : new double[] {0, 2, 30, 100, 250}) {
                Drawing drawing = ViewfinderSketch.of(setup, stems).drawing(DrawingWords.BUILT_IN);
                Matcher drawn = DRAWN.matcher(drawing.says());
                double share = drawn.find() ? (Integer.parseInt(drawn.group(1)) + 0.5) / 100 : 1;
                double flowers = flowers(drawing) / share;
                assertTrue(flowers >= before, mm + " mm, " + stems + ": " + flowers + " after " + before);
                before = flowers;
            }
            assertTrue(before > 200, mm + " mm: " + before);
        }
    }

    private static long flowers(Drawing drawing) {
        return drawing.marks().stream().filter(mark -> !mark.style().startsWith("eye")).mapToLong(mark ->
                mark instanceof Drawing.Spots spots ? spots.at().size()
                : mark instanceof Drawing.Stamps stamps ? stamps.at().size() : 0).sum();
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
        return ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN).marks().stream().anyMatch(mark -> mark.style().startsWith("sun"));
    }

    @Test
    void trunksStandInAWoodAndNotInTheOpen() {
        assertTrue(ViewfinderSketch.of(Setups.inTheWood(floor(1.2, 50, 0), 0)).drawing(DrawingWords.BUILT_IN).marks().stream()
                .anyMatch(mark -> mark.style().startsWith("trunk")));
        assertTrue(ViewfinderSketch.of(Setups.of(floor(1.2, 50, 0), null, null, null)).drawing(DrawingWords.BUILT_IN).marks().stream()
                .noneMatch(mark -> mark.style().contains("trunk")));
    }

    @Test
    void whatIsSoftHasFainterInk() {
        Setup setup = Setups.inTheWood(floor(1.5, 50, 20), 0);
        assertEquals(Tone.SHARP, Tone.of(setup.focus(), setup.sharpFromM()));
        assertEquals(Tone.SOFT, Tone.of(setup.focus(), setup.sharpFromM() * 0.99));
        Setup close = head();
        assertEquals(Tone.FAINT, Tone.of(close.focus(), 10));
    }

    private static Mark mark(Drawing drawing, String style) {
        return drawing.marks().stream().filter(mark -> mark.style().equals(style)).findFirst().orElseThrow();
    }
}
