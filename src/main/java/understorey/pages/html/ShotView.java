package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.brief.FittedShot;
import understorey.brief.PlannedShot;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.pages.markdown.Prose;
import understorey.pages.svg.Glyphs;
import understorey.pages.tables.LensColumns;
import understorey.pages.tables.Row;
import understorey.pages.tables.SettingsColumns;
import understorey.pages.tables.TableView;
import understorey.pages.templates.Templates;
import understorey.pages.words.LensWords;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Shot;

/**
 * One picture in words. Everything is null or empty where there is nothing to say.
 *
 * @param rank     how much it matters
 * @param facts    lens, support, aim and focus
 * @param camera   body and lens in one line
 * @param support  what carries the camera, and its height
 * @param curve    how dense the flowers look by focal length
 * @param why      the sentences that matter most for it
 * @param more     the others
 * @param compose  the author's words for what goes where
 * @param trouble  what of the composition spoils the picture, in a sentence
 * @param otherLight settings if the light differs: other skies, then other hours
 * @param tried    every lens of the bag, best first
 * @param defaults what the author left open, and what was put there
 */
public record ShotView(int number, String name, String role, String rank, String spot, @Nullable String time, String verdict,
                       List<Row> facts, @Nullable String camera, @Nullable String support, @Nullable SettingsView settings,
                       @Nullable SketchView sketch, @Nullable Drawn sideView, @Nullable Drawn curve, ShotLightView light,
                       List<String> why, List<String> more, @Nullable String compose, @Nullable String trouble,
                       TableView otherLight, TableView tried, List<Row> companions, List<Row> defaults,
                       @Nullable String notes, @Nullable TemplateHTMLOutputModel notesHtml,
                       @Nullable String otherwise, @Nullable TemplateHTMLOutputModel otherwiseHtml) {

    /** Sentences beside a shot's sketch; the others are in the appendix. */
    private static final int MOST_SENTENCES = 4;
    private static final int MUST = 3;
    private static final int WANTED = 2;

    static ShotView of(Brief brief, PlannedShot planned, Sentences sentences, Prose prose, Glyphs page) {
        TimedShot shot = planned.timed();
        Intent intent = shot.intent();
        Shot written = intent.shot();
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        List<String> said = new ArrayList<>(sentences.of(SaidOfShot.inOrder(brief, shot)));
        List<String> rest = new ArrayList<>(said.subList(Math.min(MOST_SENTENCES, said.size()), said.size()));
        rest.addAll(shot.cover() != null && shot.ofCarpet() ? sentences.of(shot.cover().reasons()) : List.of());
        return new ShotView(shot.number(), written.name(), Words.word(intent.role()),
                intent.priority() == MUST ? "must have" : intent.priority() == WANTED ? "wanted" : "nice to have",
                Words.place(brief.trip().site(), written.spot()), ifKnown(shot.time(), sentences.clock()::span), Words.word(shot.verdict()),
                fit == null || settings == null ? List.of() : facts(shot, fit, settings, sentences), ifKnown(fit, LensWords::cameraAndFocal),
                ifKnown(fit, of -> support(of, sentences)), SettingsView.of(shot, sentences), SketchView.of(planned, sentences, page),
                Drawn.ifAny(planned.sideView(), "side" + shot.number(), sentences), Drawn.ifAny(planned.cover(), "cover" + shot.number(), sentences),
                ShotLightView.of(shot, sentences), said.subList(0, Math.min(MOST_SENTENCES, said.size())), rest,
                ComposeWords.of(written.compose()), trouble(brief.composition(shot), sentences),
                SettingsColumns.ifTheLightDiffers(shot).view("", sentences),
                LensColumns.tried(shot).view("Every lens in the bag for this picture (light and wind not counted)", sentences),
                companions(shot, sentences), ShotDefaults.of(intent, fit, sentences),
                written.notes(), ifKnown(prose.html(written.notes()), Templates::html),
                written.otherwise(), ifKnown(prose.html(written.otherwise()), Templates::html));
    }

    private static String support(LensFit fit, Sentences sentences) {
        return (fit.support() == null ? "hand-held" : fit.support().name()) + ", lens " + sentences.of(fit.heightM(), Measure.METRES) + " high";
    }

    private static @Nullable String trouble(List<Advice> look, Sentences sentences) {
        List<String> trouble = look.stream().filter(advice -> advice.severity() == Advice.Severity.OBJECTION).map(sentences::of).toList();
        return trouble.isEmpty() ? null : PlanView.leads(trouble).get(0);
    }

    private static List<Row> facts(TimedShot shot, LensFit fit, Settings settings, Sentences sentences) {
        List<Row> facts = new ArrayList<>();
        String focal = Words.millimetres(fit.focalMm());
        String equivalent = Words.millimetres(fit.equivalentMm());
        facts.add(new Row("Lens", LensWords.cameraAndFocal(fit) + (equivalent.equals(focal) ? "" : ", " + equivalent + " equivalent")
                + (fit.cropTimes() > 1.005 ? ", cropped " + Words.number(fit.cropTimes(), 1) + "×" : "")));
        String filters = FocusWords.filters(fit, settings);
        if (filters != null) {
            facts.add(new Row("Filter", filters));
        }
        facts.add(new Row("Support", support(fit, sentences)));
        Double facing = shot.intent().shot().facingDeg();
        facts.add(new Row("Aim", (facing == null ? "" : Words.compass(facing) + " (" + Words.bearing(facing) + "), ") + tilt(fit)));
        facts.add(new Row("Frame", sentences.of(fit.frameWidthM(), Measure.METRES) + " × "
                + sentences.of(fit.frameHeightM(), Measure.METRES) + " at " + sentences.of(fit.distanceM(), Measure.METRES)));
        facts.add(new Row("Focus", sentences.of(fit.focusFromSensorM(), Measure.METRES) + ", sharp " + FocusWords.sharp(fit, settings, sentences)));
        if (fit.magnification() > 0.05) {
            facts.add(new Row("Scale", Words.number(fit.magnification(), 2) + "×"));
        }
        facts.add(new Row("Light", "EV " + Words.ev(settings.ev100())
                + (shot.whiteBalance() == null ? "" : "; white balance " + shot.whiteBalance().kelvin() + " K")));
        return facts;
    }

    private static List<Row> companions(TimedShot shot, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        for (FittedShot.ForCompanion companion : shot.fitted().companions()) {
            LensFit best = companion.best();
            rows.add(new Row(companion.name(), best == null ? "no camera"
                    : LensWords.cameraAndFocal(best) + " from " + sentences.of(best.distanceM(), Measure.METRES)
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
