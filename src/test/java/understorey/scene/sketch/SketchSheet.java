package understorey.scene.sketch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import understorey.Samples;
import understorey.brief.Brief;
import understorey.brief.PlannedShot;
import understorey.pages.Briefs;
import understorey.pages.DrawingWords;
import understorey.pages.Trips;
import understorey.pages.svg.Glyphs;
import understorey.pages.svg.Svg;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.Role;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.Viewpoint;
import understorey.reading.subject.SubjectCatalogue;
import understorey.scene.Drawing;

/** Writes sheets of sketches to be looked at in a browser: those of the demo, and every subject wide, low and close. */
public final class SketchSheet {

    private final List<String> cells = new ArrayList<>();

    private SketchSheet() {
    }

    /** Writes demo.html and subjects.html into the folder that the first word names. */
    public static void main(String[] folder) throws IOException {
        Path into = Files.createDirectories(Path.of(folder[0]));
        SketchSheet demo = new SketchSheet();
        for (Trip trip : Briefs.demo().trips()) {
            Brief brief = Trips.brief(trip);
            for (PlannedShot shot : brief.shots()) {
                if (shot.sketch() != null) {
                    Drawing sketch = shot.sketch().drawing(DrawingWords.BUILT_IN);
                    demo.add(sketch, shot.timed().intent().shot().name());
                }
            }
        }
        SketchSheet subjects = new SketchSheet();
        Setups.everySubject().forEach((name, setup) -> subjects.add(setup, name));
        SketchSheet stages = new SketchSheet();
        for (String key : List.of("bluebell", "ramsons", "wood-anemone", "foxglove", "snowdrop", "primrose")) {
            Subject subject = SubjectCatalogue.builtIn().find(key);
            for (double above : new double[] {-0.6, 0.1, 1.2}) {
                stages.add(Setups.of(Samples.picture(key).of(subject)
                        .from(new Viewpoint.Height(Math.max(0.03, (1 + Math.min(0, above)) * subject.heightHighM() + Math.max(0, above))))
                        .equivalent(24).tilt(above > 1 ? 35 : above > 0 ? 12 : -8).sharp(0.4, 4), null, Setups.WOOD, null), key + " from " + above);
            }
            for (Stage stage : List.of(Stage.of(-0.6), Stage.of(0.6))) {
                for (Samples.Picture picture : List.of(Samples.picture(key).of(subject).role(Role.CLOSING), Samples.picture(key).of(subject)
                        .from(new Viewpoint.Height(subject.heightHighM() + 0.4)).equivalent(35).tilt(20).sharp(0.4, 4))) {
                    Setup full = Setups.of(picture, null, Setups.WOOD, null);
                    if (full != null) {
                        stages.add(new Setup(full.fit(), full.fNumber(), full.sharpFromM(), full.sharpToM(), null, full.canopy(), null, null,
                                new Air(false, false, true), stage, Surroundings.BARE), key + " " + stage);
                    }
                }
            }
        }
        for (String look : List.of("", "night")) {
            Files.writeString(into.resolve("demo" + look + ".html"), demo.page(look, 3), StandardCharsets.UTF_8);
            Files.writeString(into.resolve("subjects" + look + ".html"), subjects.page(look, 6), StandardCharsets.UTF_8);
        }
        Files.writeString(into.resolve("stages.html"), stages.page("", 7), StandardCharsets.UTF_8);
    }

    private void add(Setup setup, String name) {
        if (setup != null) {
            add(ViewfinderSketch.of(setup).drawing(DrawingWords.BUILT_IN), name);
        }
    }

    private void add(Drawing drawing, String name) {
        String svg = Svg.shared(drawing, "sketch" + (cells.size() + 1), new Glyphs());
        cells.add(String.format(Locale.ROOT, "<figure>%s<figcaption>%s</figcaption></figure>", svg, name));
    }

    private String page(String look, int columns) throws IOException {
        String css = Files.readString(Path.of("templates/style.css")) + Files.readString(Path.of("templates/marks.css"));
        return "<!doctype html><meta charset=utf-8><style>" + css
                + "body,main{max-width:none}main{display:grid;grid-template-columns:repeat(" + columns + ",1fr);gap:10px}"
                + "figcaption{font-size:13px;line-height:16px}.night{background:#000}"
                + "svg.sketch{width:100%}</style><body class=\"" + look + "\"><main>" + String.join("\n", cells) + "</main>";
    }
}
