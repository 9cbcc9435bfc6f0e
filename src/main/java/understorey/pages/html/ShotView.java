package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;
import static understorey.pages.words.Words.orDash;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
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
import understorey.pages.templates.Templates;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Viewpoint;
import understorey.scene.Drawing;

/**
 * One picture in words. Everything is null or empty where there is nothing to say.
 *
 * @param facts    lens, place and frame
 * @param camera   body and lens in one line
 * @param settings aperture, shutter speed and ISO in one line
 * @param lull     the same in a lull; null if it allows no more, or the sky is unknown
 * @param bias     by how much the settings are below the meter
 * @param stack    frames of a focus stack and how to take them
 * @param filters  to put on, nearest the lens first
 * @param reasons  why so
 * @param compose  the author's words for what goes where
 * @param look     what to look for, the most pressing first
 * @param trouble  what of it spoils the picture, in a sentence
 * @param helps    what would help
 * @param skies    the same in the other skies
 * @param hours    the same an hour earlier and an hour later
 * @param tried    every lens of the bag, best first
 * @param defaults what the author left open, and what was put there
 * @param sketchAgain the sketch once more on the same page, without its marks
 * @param sketchScaled the sketch once more, with distances at its right and bearings below
 */
public record ShotView(int number, String name, String role, String subject, String spot, @Nullable String time,
                       String verdict, List<Row> facts, @Nullable String camera, @Nullable String fNumber,
                       @Nullable String shutter, @Nullable String iso, @Nullable String settings, @Nullable String lull,
                       @Nullable String focus,
                       @Nullable String sharp, @Nullable String height, @Nullable String bias, @Nullable String bracket,
                       @Nullable String stack, @Nullable String filters, @Nullable String facing, boolean fits,
                       List<String> reasons, @Nullable String compose, List<String> look,
                       @Nullable String trouble, List<String> helps, List<OtherLight> skies,
                       List<OtherLight> hours, List<Tried> tried,
                       List<Row> companions, List<Row> defaults, ShotLightView light, @Nullable CoverView cover,
                       @Nullable String notes, @Nullable String otherwise,
                       @Nullable TemplateHTMLOutputModel notesHtml, @Nullable TemplateHTMLOutputModel otherwiseHtml,
                       @Nullable TemplateHTMLOutputModel sketch, @Nullable TemplateHTMLOutputModel sketchAgain,
                       @Nullable TemplateHTMLOutputModel sketchScaled,
                       @Nullable TemplateHTMLOutputModel sideView, @Nullable String sketchSays, @Nullable String sideViewSays) {

    /** One lens of the bag on this picture. */
    public record Tried(String lens, String verdict, String why) {
    }

    static ShotView of(Brief brief, PlannedShot planned, Sentences sentences, Prose prose) {
        TimedShot shot = planned.timed();
        Intent intent = shot.intent();
        Shot written = intent.shot();
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        String sketchId = "sketch" + shot.number();
        List<Advice> reasons = new ArrayList<>();
        if (fit != null && settings != null) {
            reasons.addAll(fit.reasons());
            reasons.addAll(settings.reasons());
        }
        String fNumber = settings == null ? null : SkySpan.fNumber(shot);
        String shutter = settings == null ? null : SkySpan.shutter(shot);
        String iso = settings == null ? null : SkySpan.iso(shot);
        Drawing sketch = ifKnown(planned.sketch(), scene -> scene.drawing(sentences::of));
        Drawing sideView = ifKnown(planned.sideView(), scene -> scene.drawing(sentences::of));
        return new ShotView(shot.number(), written.name(), Words.word(intent.role()), written.subject().name(),
                Words.place(brief.trip().site(), written.spot()),
                ifKnown(shot.time(), Dates::span),
                Words.word(shot.verdict()), fit == null || settings == null ? List.of() : facts(shot, fit, settings),
                ifKnown(fit, ShotView::cameraAndFocal),
                fNumber, shutter, iso,
                settings == null ? null : fNumber + " · " + shutter + " · ISO " + iso
                        + (shot.skyKnown() ? "" : ", depending on the sky"),
                lull(shot), ifKnown(fit, lens -> Words.metres(lens.focusFromSensorM())),
                fit == null || settings == null ? null : FocusWords.sharp(fit, settings),
                ifKnown(fit, lens -> Words.metres(lens.heightM())), ifKnown(settings, ShotView::bias), ifKnown(settings, ShotView::bracket),
                fit == null || settings == null ? null : FocusWords.stack(fit, settings),
                fit == null || settings == null ? null : FocusWords.filters(fit, settings),
                ifKnown(written.facingDeg(), Words::compass), shot.verdict() == Verdict.FITS,
                sentences.of(reasons), ComposeWords.of(written.compose()), sentences.of(brief.composition(shot)),
                trouble(brief.composition(shot), sentences), sentences.of(shot.helps()), OtherLight.skies(shot), OtherLight.hours(shot),
                tried(shot, sentences), companions(shot, sentences), defaults(intent, fit), ShotLightView.of(shot, sentences), CoverView.of(shot, sentences),
                written.notes(), written.otherwise(), ifKnown(prose.html(written.notes()), Templates::html),
                ifKnown(prose.html(written.otherwise()), Templates::html),
                ifKnown(sketch, drawing -> Templates.html(Svg.shared(drawing, sketchId))),
                ifKnown(sketch, drawing -> Templates.html(Svg.again(drawing, sketchId))),
                sketch == null ? null : ifKnown(planned.scale(), scene -> Templates.html(Svg.framed(scene.drawing(sentences::of),
                        "scale" + shot.number(), sketch, sketchId))),
                ifKnown(sideView, drawing -> Templates.html(Svg.of(drawing, "side" + shot.number()))),
                ifKnown(sketch, Drawing::says), ifKnown(sideView, Drawing::says));
    }

    private static @Nullable String trouble(List<Advice> look, Sentences sentences) {
        List<String> trouble = look.stream().filter(advice -> advice.severity() == Advice.Severity.OBJECTION).map(sentences::of).toList();
        return trouble.isEmpty() ? null : PlanView.leads(trouble).get(0);
    }

    private static List<Row> facts(TimedShot shot, LensFit fit, Settings settings) {
        List<Row> facts = new ArrayList<>();
        facts.add(new Row("Camera", fit.camera().name()));
        String focal = Words.millimetres(fit.focalMm());
        String equivalent = Words.millimetres(fit.equivalentMm());
        facts.add(new Row("Focal length", focal + (equivalent.equals(focal) ? "" : " (" + equivalent + " full-frame equivalent)")
                + (fit.cropTimes() > 1.005 ? ", cropped " + Words.number(fit.cropTimes(), 1) + "×" : "")));
        facts.add(new Row("Support", (fit.support() == null ? "hand-held" : fit.support().name()) + ", lens at "
                + Words.metres(fit.heightM())
                + (level(fit) ? ", level" : ", tilted " + tilt(fit))));
        String filters = FocusWords.filters(fit, settings);
        if (filters != null) {
            facts.add(new Row("Filter", filters));
        }
        facts.add(new Row("Field of view", Words.metres(fit.frameWidthM()) + " × " + Words.metres(fit.frameHeightM())
                + " at " + Words.metres(fit.distanceM()) + ", "
                + Words.degrees(fit.view().horizontalDeg()) + " wide"));
        Double facing = shot.intent().shot().facingDeg();
        if (facing != null) {
            facts.add(new Row("Facing", Words.compass(facing) + " (" + Words.bearing(facing) + ")"));
        }
        facts.add(new Row("Focus", Words.metres(fit.focusFromSensorM()) + "; depth of field "
                + FocusWords.sharp(fit, settings) + (shot.intent().sharp() instanceof Sharp.Range ? "; hyperfocal "
                + Words.metres(settings.hyperfocalM()) : "")));
        if (fit.magnification() > 0.05) {
            facts.add(new Row("Magnification", Words.number(fit.magnification(), 2) + "×"));
        }
        facts.add(new Row("Light", "EV " + SkySpan.ev(shot) + " at ISO 100" + (shot.skyKnown() ? "" : ", depending on the sky")));
        return facts;
    }

    private static String cameraAndFocal(LensFit fit) {
        return fit.camera().name() + (fit.camera().lens().zooms() ? " at " + Words.millimetres(fit.focalMm()) : "");
    }

    private static @Nullable String lull(TimedShot shot) {
        Lull lull = shot.skyKnown() ? ifKnown(shot.settings(), Settings::lull) : null;
        return lull == null ? null : Words.fNumber(lull.fNumber()) + " · " + Words.shutter(lull.shutterS()) + " · ISO\u00a0" + lull.iso();
    }

    private static @Nullable String bias(Settings settings) {
        return settings.lessStops() == 0 ? null : Words.stops(settings.lessStops());
    }

    private static @Nullable String bracket(Settings settings) {
        return ifKnown(OtherLight.bracket(settings), steps -> steps + "\u00a0stops");
    }

    private static List<Tried> tried(TimedShot shot, Sentences sentences) {
        List<Tried> tried = new ArrayList<>();
        for (LensFit fit : shot.fit().tried()) {
            if (fit.camera().attachment() != null && fit != shot.fit().best()) {
                continue;
            }
            Advice why = fit.objection() != null ? fit.objection() : fit.reasons().get(0);
            tried.add(new Tried(cameraAndFocal(fit), Words.word(fit.verdict()), sentences.of(why)));
        }
        return tried;
    }

    private static List<Row> companions(TimedShot shot, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        for (FittedShot.ForCompanion companion : shot.fitted().companions()) {
            LensFit best = companion.best();
            rows.add(new Row(companion.name(), best == null ? "no camera"
                    : cameraAndFocal(best) + " from " + Words.metres(best.distanceM())
                    + " (" + Words.word(best.verdict()) + ")"
                    + (best.objection() == null ? "" : ". " + sentences.of(best.objection()))));
        }
        return rows;
    }

    private static List<Row> defaults(Intent intent, @Nullable LensFit fit) {
        List<Row> rows = new ArrayList<>();
        for (String name : List.of("role", "spot", "viewpoint", "orientation", "tilt", "focal_equivalent", "frame",
                "sharp", "polariser", "duration", "priority")) {
            boolean open = name.equals("tilt") ? intent.shot().tiltDeg() == null
                    : intent.assumed().contains(name);
            String value = open ? value(name, intent, fit) : "";
            if (!value.isEmpty()) {
                rows.add(new Row(name.equals("focal_equivalent") ? "focal length" : name.equals("sharp") ? "depth of field" : name, value));
            }
        }
        return rows;
    }

    private static String value(String name, Intent intent, @Nullable LensFit fit) {
        return switch (name) {
            case "role" -> Words.word(intent.role());
            case "viewpoint" -> viewpoint(intent.viewpoint(), fit);
            case "spot" -> "the site itself";
            case "tilt" -> fit == null ? "" : tilt(fit);
            case "polariser" -> "no";
            case "orientation" -> Words.word(intent.orientation());
            case "focal_equivalent" -> orDash(intent.focalEquivalentMm(), Words::millimetres) + " (equivalent)";
            case "frame" -> fit == null ? "by the subject" : Words.metres(fit.frameWidthM()) + " wide";
            case "sharp" -> intent.sharp() instanceof Sharp.Range range
                    ? Words.metres(range.nearM()) + " to " + Words.metres(range.farM())
                    : Words.metres(((Sharp.Depth) intent.sharp()).depthM());
            case "duration" -> intent.duration().toMinutes() + " min";
            default -> String.valueOf(intent.priority());
        };
    }

    private static String viewpoint(Viewpoint viewpoint, @Nullable LensFit fit) {
        String height = fit == null ? "" : Words.metres(fit.heightM());
        return !(viewpoint instanceof Viewpoint.Stance stance) ? height
                : Words.word(stance) + (height.isEmpty() ? "" : ", " + height);
    }

    private static boolean level(LensFit fit) {
        return Math.abs(fit.tiltDeg()) < 0.5;
    }

    private static String tilt(LensFit fit) {
        return level(fit) ? "level" : Words.degrees(Math.abs(fit.tiltDeg())) + (fit.tiltDeg() > 0 ? " down" : " up");
    }
}
