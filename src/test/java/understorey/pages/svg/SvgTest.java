package understorey.pages.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import understorey.brief.Brief;
import understorey.pages.Briefs;
import understorey.pages.DrawingWords;
import understorey.pages.templates.Templates;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Point;
import understorey.scene.chart.Charts;

class SvgTest {

    @Test
    void everyDrawingIsWellFormedAndSaysWhatItShows() throws Exception {
        for (Brief brief : Briefs.all()) {
            for (Drawing drawing : List.of(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN))) {
                Element svg = parsed(Svg.of(drawing, "day"));
                assertEquals("svg", svg.getTagName());
                assertEquals(drawing.title(), only(svg, "title").getTextContent());
                assertEquals(drawing.says(), only(svg, "desc").getTextContent());
                assertTrue(drawing.says().endsWith("."), drawing.says());
                assertEquals("img", svg.getAttribute("role"));
                assertEquals("day-t day-d", svg.getAttribute("aria-labelledby"));
                assertEquals("day-t", only(svg, "title").getAttribute("id"));
                assertEquals("day-d", only(svg, "desc").getAttribute("id"));
                assertEquals(drawing.marks().size() + 2, svg.getElementsByTagName("*").getLength());
            }
        }
    }

    @Test
    void everyDrawingIsSmallAndTheSameEachTime() {
        for (Brief brief : Briefs.all()) {
            for (Drawing drawing : List.of(brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN))) {
                String svg = Svg.of(drawing, "day");
                assertTrue(svg.getBytes(StandardCharsets.UTF_8).length < 20_000, brief.trip().title());
                assertEquals(svg, Svg.of(drawing, "day"));
                assertFalse(svg.contains("NaN") || svg.contains("Infinity") || svg.contains("E-"), svg);
            }
        }
    }

    @Test
    void aDrawingStaysSmallOnTheMostCrowdedDay() {
        for (List<Drawing> skylines : List.of(Charts.skylines(), Charts.skylinesAmongTrees())) {
            for (Drawing drawing : skylines) {
                assertTrue(bytes(drawing) < 14_000, bytes(drawing) + " bytes: " + drawing.says());
            }
        }
    }

    private static int bytes(Drawing drawing) {
        return Svg.of(drawing, "spot-10-drawing").getBytes(StandardCharsets.UTF_8).length;
    }

    /** A look that no rule of the style gives is drawn black. */
    @Test
    void everyStyleOfAMarkHasARule() {
        String css = new Templates(null).text("marks.css");
        Set<String> styles = new HashSet<>();
        for (Brief brief : Briefs.all()) {
            brief.places().get(0).skyline().drawing(DrawingWords.BUILT_IN).marks().forEach(mark -> styles.add(mark.style()));
        }
        Charts.skylinesAmongTrees().forEach(drawing -> drawing.marks().forEach(mark -> styles.add(mark.style())));
        styles.remove("words");
        assertTrue(styles.size() > 12, styles.toString());
        styles.forEach(style -> assertTrue(css.contains("svg ." + style + " "), style));
    }

    @Test
    void marksBecomeElements() throws Exception {
        Drawing drawing = new Drawing(100, 50.25, "a < b", "\"c\" & d.", List.of(
                new Drawing.Line("l", List.of(new Point(1, 2), new Point(-3.04, 4.06))),
                new Drawing.Area("a", List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1))),
                new Drawing.Box("b", 1, 2, 3.5, 4), new Drawing.Dot("d", new Point(5, 6), 4),
                new Drawing.Label("w", Anchor.MIDDLE, new Point(7, 8), "<script>"),
                new Drawing.Label("words", Anchor.START, new Point(1, 1), "plain"), new Drawing.Upright("u", new Point(9, 10), "up"),
                new Drawing.Hatch("h", List.of(new Point(0, 1), new Point(5, 1), new Point(2, 0), new Point(2, 9),
                        new Point(0, 0), new Point(3, 3)))));
        Element svg = parsed(Svg.of(drawing, "x"));
        assertEquals("0 0 100 50.3", svg.getAttribute("viewBox"));
        assertEquals("M1 2L-3 4.1", ((Element) svg.getElementsByTagName("path").item(0)).getAttribute("d"));
        assertEquals("M0 0L1 0L1 1Z", ((Element) svg.getElementsByTagName("path").item(1)).getAttribute("d"));
        assertEquals("3.5", only(svg, "rect").getAttribute("width"));
        assertEquals("4", only(svg, "circle").getAttribute("r"));
        assertEquals("M0 1H5M2 0V9M0 0l3 3", ((Element) svg.getElementsByTagName("path").item(2)).getAttribute("d"));
        NodeList texts = svg.getElementsByTagName("text");
        assertEquals("middle", ((Element) texts.item(0)).getAttribute("text-anchor"));
        assertEquals("<script>", texts.item(0).getTextContent());
        assertEquals("", ((Element) texts.item(1)).getAttribute("text-anchor") + ((Element) texts.item(1)).getAttribute("class"));
        assertEquals("translate(9 10)rotate(-90)", ((Element) texts.item(2)).getAttribute("transform"));
        assertEquals("end", ((Element) texts.item(2)).getAttribute("text-anchor"));
    }

    @Test
    void paintedMarksBecomeGradientsMarkersAndShortPaths() throws Exception {
        Drawing drawing = new Drawing(40, 30, "t", "s.", List.of(new Drawing.Palette("p", "#f0e0d0", "#c0b0a0", List.of(
                new Drawing.Wash("w", 0, 20, List.of(new Drawing.Stop(0, 0.25), new Drawing.Stop(1, 1))),
                new Drawing.Glow("g", new Point(5, 6), 12),
                new Drawing.Glyph("star", List.of(new Drawing.Spots("d", 3, List.of(new Point(0, 0), new Point(1, -2))))),
                new Drawing.Stamps("star", 7.5, 0.4, List.of(new Point(10, 10), new Point(8, 13), new Point(9, 12))),
                new Drawing.Curves("c", 2, List.of(List.of(new Point(1, 1), new Point(2, 4), new Point(5, 5), new Point(7, 5), new Point(6, 2)),
                        List.of(new Point(0, 0), new Point(-1, 1), new Point(3, 3))))))));
        Element svg = parsed(Svg.of(drawing, "x"));
        NodeList groups = svg.getElementsByTagName("g");
        assertEquals("--own:#f0e0d0;--dim:#c0b0a0", ((Element) groups.item(0)).getAttribute("style"));
        assertEquals("marker:url(#x-star)", ((Element) groups.item(1)).getAttribute("style"));
        assertEquals("url(#x-g1)", only(svg, "rect").getAttribute("fill"));
        assertEquals("x-g1", only(svg, "linearGradient").getAttribute("id"));
        assertEquals("x-g2", only(svg, "radialGradient").getAttribute("id"));
        assertEquals(".25", ((Element) svg.getElementsByTagName("stop").item(0)).getAttribute("stop-opacity"));
        assertEquals("x-star", only(svg, "marker").getAttribute("id"));
        NodeList paths = svg.getElementsByTagName("path");
        assertEquals("M0 0h0m1-2h0", ((Element) paths.item(0)).getAttribute("d"));
        Element stamps = (Element) paths.item(1);
        assertEquals("M10 10l-2 3 1-1", stamps.getAttribute("d"));
        assertEquals("7.5 .4", stamps.getAttribute("stroke-width") + " " + stamps.getAttribute("opacity"));
        assertEquals("M1 1q1 3 4 4 2 0 1-3m-6-2q-1 1 3 3", ((Element) paths.item(2)).getAttribute("d"));
    }

    private static Element only(Element svg, String tag) {
        NodeList found = svg.getElementsByTagName(tag);
        assertEquals(1, found.getLength(), tag);
        return (Element) found.item(0);
    }

    private static Element parsed(String svg) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))).getDocumentElement();
    }
}
