package understorey.pages.html;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.brief.Brief;
import understorey.brief.FittedShot;
import understorey.brief.PlannedShot;
import understorey.brief.TimedShot;
import understorey.exposure.Lull;
import understorey.exposure.Settings;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.pages.markdown.Prose;
import understorey.pages.svg.Svg;
import understorey.pages.tables.LensColumns;
import understorey.pages.tables.Row;
import understorey.pages.tables.SettingsColumns;
import understorey.pages.tables.TableView;
import understorey.pages.tables.Wording;
import understorey.pages.templates.Templates;
import understorey.pages.words.Dates;
import understorey.pages.words.LensWords;
import understorey.pages.words.Sentences;
import understorey.pages.words.SettingsWords;
import understorey.pages.words.Units;
import understorey.pages.words.Words;
import understorey.plan.Orientation;
import understorey.plan.Shot;
import understorey.scene.Drawing;
import static understorey.pages.words.Words.ifKnown;


/**
 * One picture in words. Everything is null or empty where there is nothing to say.
 *
 * @param rank     how much it matters
 * @param facts    lens, support, aim and focus
 * @param camera   body and lens in one line
 * @param settings aperture, shutter speed and ISO in one line
 * @param lull     the same in a lull; null if it allows no more, or the sky is unknown
 * @param support  what carries the camera, and its height
 * @param bias     by how much the settings are below the meter
 * @param stack    frames of a focus stack and how to take them
 * @param filters  to put on, nearest the lens first
 * @param why      the sentences that matter most for it
 * @param more     the others
 * @param compose  the author's words for what goes where
 * @param trouble  what of the composition spoils the picture, in a sentence
 * @param otherLight settings if the light differs: other skies, then other hours
 * @param tried    every lens of the bag, best first
 * @param defaults what the author left open, and what was put there
 * @param bearings of the left edge, the middle and the right edge; empty if it faces nowhere in particular
 * @param sketchAgain the sketch once more on the same page, without its marks
 * @param scale    distances at the right edge of the sketch
 * @param curve    how dense the flowers look by focal length
 */
public record ShotView(int number, String name, String role, String rank, String spot, @Nullable String time,
                       String verdict, List<Row> facts, @Nullable String camera, @Nullable String fNumber,
                       @Nullable String shutter, @Nullable String iso, @Nullable String settings, @Nullable String lull,
                       @Nullable String focus, @Nullable String sharp, @Nullable String support,
                       @Nullable String bias, @Nullable String bracket,
                       @Nullable String stack, @Nullable String filters, @Nullable String facing, boolean fits,
                       List<String> why, List<String> more, @Nullable String compose, @Nullable String trouble, TableView otherLight, TableView tried,
                       List<Row> companions, List<Row> defaults, List<String> bearings, boolean portrait, ShotLightView light,
                       @Nullable String notes, @Nullable String otherwise,
                       @Nullable TemplateHTMLOutputModel notesHtml, @Nullable TemplateHTMLOutputModel otherwiseHtml,
                       @Nullable TemplateHTMLOutputModel sketch, @Nullable TemplateHTMLOutputModel sketchAgain,
                       @Nullable ScaleView scale,
                       @Nullable TemplateHTMLOutputModel sideView, @Nullable String sketchSays, @Nullable String sideViewSays,
                       @Nullable TemplateHTMLOutputModel curve, @Nullable String curveSays) {

    /** Sentences beside a shot's sketch; the others are in the appendix. */
    private static final int MOST_SENTENCES = 4;
    private static final int MUST = 3;
    private static final int WANTED = 2;

    static ShotView of(Brief brief, PlannedShot planned, Sentences sentences, Prose prose) {
        TimedShot shot = planned.timed();
        Wording wording = new Wording(Units.METRIC, sentences);
        Intent intent = shot.intent();
        Shot written = intent.shot();
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        String sketchId = "sketch" + shot.number();
        Drawing sketch = ifKnown(planned.sketch(), scene -> scene.drawing(sentences::of));
        Drawing sideView = ifKnown(planned.sideView(), scene -> scene.drawing(sentences::of));
        Drawing curve = ifKnown(planned.cover(), scene -> scene.drawing(sentences::of));
        List<String> said = new ArrayList<>(sentences.of(SaidOfShot.inOrder(brief, shot)));
        List<String> rest = new ArrayList<>(said.subList(Math.min(MOST_SENTENCES, said.size()), said.size()));
        rest.addAll(shot.cover() != null && shot.ofCarpet() ? sentences.of(shot.cover().reasons()) : List.of());
        return new ShotView(shot.number(), written.name(), Words.word(intent.role()),
                intent.priority() == MUST ? "must have" : intent.priority() == WANTED ? "wanted" : "nice to have",
                Words.place(brief.trip().site(), written.spot()), ifKnown(shot.time(), Dates::span),
                Words.word(shot.verdict()), fit == null || settings == null ? List.of() : facts(shot, fit, settings), ifKnown(fit, LensWords::cameraAndFocal),
                settings == null ? null : SkySpan.fNumber(shot), settings == null ? null : SkySpan.shutter(shot),
                settings == null ? null : SkySpan.iso(shot), settings == null ? null : settings(shot),
                lull(shot), ifKnown(fit, lens -> Words.metres(lens.focusFromSensorM())),
                fit == null || settings == null ? null : FocusWords.sharp(fit, settings),
                ifKnown(fit, ShotView::support),
                ifKnown(settings, ShotView::bias), ifKnown(settings, ShotView::bracket),
                fit == null || settings == null ? null : FocusWords.stack(fit, settings),
                fit == null || settings == null ? null : FocusWords.filters(fit, settings),
                ifKnown(written.facingDeg(), Words::compass), shot.verdict() == Verdict.FITS,
                said.subList(0, Math.min(MOST_SENTENCES, said.size())), rest, ComposeWords.of(written.compose()),
                trouble(brief.composition(shot), sentences), SettingsColumns.ifTheLightDiffers(shot).view("", wording),
                LensColumns.tried(shot).view("Every lens in the bag for this picture (light and wind not counted)", wording), companions(shot, sentences), ShotDefaults.of(intent, fit), bearings(written.facingDeg(), fit), intent.orientation() == Orientation.PORTRAIT, ShotLightView.of(shot, sentences),
                written.notes(), written.otherwise(), ifKnown(prose.html(written.notes()), Templates::html),
                ifKnown(prose.html(written.otherwise()), Templates::html),
                ifKnown(sketch, drawing -> Templates.html(Svg.shared(drawing, sketchId))),
                ifKnown(sketch, drawing -> Templates.html(Svg.again(drawing, sketchId))),
                ifKnown(planned.scale(), scale -> ScaleView.of(scale, sentences)),
                ifKnown(sideView, drawing -> Templates.html(Svg.of(drawing, "side" + shot.number()))),
                ifKnown(sketch, Drawing::says), ifKnown(sideView, Drawing::says),
                ifKnown(curve, drawing -> Templates.html(Svg.of(drawing, "cover" + shot.number()))), ifKnown(curve, Drawing::says));
    }

    private static String settings(TimedShot shot) {
        return SkySpan.fNumber(shot) + " · " + SkySpan.shutter(shot) + " · ISO\u00a0" + SkySpan.iso(shot)
                + (shot.skyKnown() ? "" : ", depending on the sky");
    }

    private static String support(LensFit fit) {
        return (fit.support() == null ? "hand-held" : fit.support().name()) + ", lens " + Words.metres(fit.heightM()) + " high";
    }

    private static List<String> bearings(@Nullable Double facing, @Nullable LensFit fit) {
        if (facing == null || fit == null) {
            return List.of();
        }
        double half = fit.view().horizontalDeg() / 2;
        return DoubleStream.of(facing - half, facing, facing + half).map(deg -> (deg + 360) % 360)
                .mapToObj(deg -> Words.compass(deg) + " " + Words.bearing(deg)).toList();
    }

    private static @Nullable String trouble(List<Advice> look, Sentences sentences) {
        List<String> trouble = look.stream().filter(advice -> advice.severity() == Advice.Severity.OBJECTION).map(sentences::of).toList();
        return trouble.isEmpty() ? null : PlanView.leads(trouble).get(0);
    }

    private static List<Row> facts(TimedShot shot, LensFit fit, Settings settings) {
        List<Row> facts = new ArrayList<>();
        String focal = Words.millimetres(fit.focalMm());
        String equivalent = Words.millimetres(fit.equivalentMm());
        facts.add(new Row("Lens", LensWords.cameraAndFocal(fit) + (equivalent.equals(focal) ? "" : ", " + equivalent + " equivalent")
                + (fit.cropTimes() > 1.005 ? ", cropped " + Words.number(fit.cropTimes(), 1) + "×" : "")));
        String filters = FocusWords.filters(fit, settings);
        if (filters != null) {
            facts.add(new Row("Filter", filters));
        }
        facts.add(new Row("Support", support(fit)));
        Double facing = shot.intent().shot().facingDeg();
        facts.add(new Row("Aim", (facing == null ? "" : Words.compass(facing) + " (" + Words.bearing(facing) + "), ") + tilt(fit)));
        facts.add(new Row("Frame", Words.metres(fit.frameWidthM()) + " × " + Words.metres(fit.frameHeightM()) + " at " + Words.metres(fit.distanceM())));
        facts.add(new Row("Focus", Words.metres(fit.focusFromSensorM()) + ", sharp " + FocusWords.sharp(fit, settings)));
        if (fit.magnification() > 0.05) {
            facts.add(new Row("Scale", Words.number(fit.magnification(), 2) + "×"));
        }
        facts.add(new Row("Light", "EV " + SkySpan.ev(shot) + (shot.skyKnown() ? "" : ", depending on the sky")
                + (shot.whiteBalance() == null ? "" : "; white balance " + shot.whiteBalance().kelvin() + " K")));
        return facts;
    }

    private static @Nullable String lull(TimedShot shot) {
        Lull lull = shot.skyKnown() ? ifKnown(shot.settings(), Settings::lull) : null;
        return lull == null ? null : Words.fNumber(lull.fNumber()) + " · " + Words.shutter(lull.shutterS()) + " · ISO\u00a0" + lull.iso();
    }

    private static @Nullable String bias(Settings settings) {
        return settings.lessStops() == 0 ? null : Words.stops(settings.lessStops());
    }

    private static @Nullable String bracket(Settings settings) {
        return ifKnown(SettingsWords.bracket(settings), steps -> steps + "\u00a0stops");
    }

    private static List<Row> companions(TimedShot shot, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        for (FittedShot.ForCompanion companion : shot.fitted().companions()) {
            LensFit best = companion.best();
            rows.add(new Row(companion.name(), best == null ? "no camera"
                    : LensWords.cameraAndFocal(best) + " from " + Words.metres(best.distanceM())
                    + " (" + Words.word(best.verdict()) + ")"
                    + (best.objection() == null ? "" : ". " + sentences.of(best.objection()))));
        }
        return rows;
    }

    private static boolean level(LensFit fit) {
        return Math.abs(fit.tiltDeg()) < 0.5;
    }

    static String tilt(LensFit fit) {
        return level(fit) ? "level" : Words.degrees(Math.abs(fit.tiltDeg())) + (fit.tiltDeg() > 0 ? " down" : " up");
    }
}
