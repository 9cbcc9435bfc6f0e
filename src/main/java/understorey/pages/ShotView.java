package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import understorey.advice.Advice;
import understorey.advice.ToneAdvice;
import understorey.brief.Brief;
import understorey.brief.FittedShot;
import understorey.brief.PlannedShot;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.Camera;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Viewpoint;

/**
 * One picture in words. Everything is null or empty where there is nothing to say.
 *
 * @param facts    lens, place and frame
 * @param camera   body and lens in one line
 * @param settings aperture, shutter speed and ISO in one line
 * @param bias     by how much to underexpose
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
 */
public record ShotView(int number, String name, String role, String subject, String spot, String time,
                       String verdict, List<Row> facts, String camera, String fNumber, String shutter, String iso,
                       String settings, String focus, String sharp, String height, String bias, String bracket, String stack, String filters, String facing, boolean fits,
                       List<String> reasons, String compose, List<String> look, String trouble, List<String> helps, List<OtherLight> skies,
                       List<OtherLight> hours, List<Tried> tried,
                       List<Row> companions, List<Row> defaults, ShotLightView light, CoverView cover,
                       String notes, String otherwise,
                       TemplateHTMLOutputModel notesHtml, TemplateHTMLOutputModel otherwiseHtml,
                       TemplateHTMLOutputModel sketch, TemplateHTMLOutputModel sketchAgain,
                       TemplateHTMLOutputModel sideView, String sketchSays, String sideViewSays) {

    /** One lens of the bag on this picture. */
    public record Tried(String lens, String verdict, String why) {
    }

    static ShotView of(Brief brief, PlannedShot planned, Sentences sentences, Prose prose) {
        TimedShot shot = planned.timed();
        Intent intent = shot.intent();
        Shot written = intent.shot();
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        List<String> reasons = new ArrayList<>();
        if (fit != null) {
            reasons.addAll(sentences.of(fit.reasons()));
            reasons.addAll(sentences.of(settings.reasons()));
        }
        String fNumber = settings == null ? null : SkySpan.fNumber(shot);
        String shutter = settings == null ? null : SkySpan.shutter(shot);
        String iso = settings == null ? null : SkySpan.iso(shot);
        return new ShotView(shot.number(), written.name(), Words.word(intent.role()), written.subject().name(),
                written.spot() == null ? brief.trip().site().name() : written.spot(),
                shot.time() == null ? null : Words.clock(shot.time().from()) + "–" + Words.clock(shot.time().to()),
                Words.word(shot.verdict()), fit == null ? List.of() : facts(shot, fit),
                fit == null ? null : camera(fit.camera()) + focal(fit),
                fNumber, shutter, iso,
                settings == null ? null : fNumber + " · " + shutter + " · ISO " + iso
                        + (shot.skyKnown() ? "" : ", depending on the sky"),
                fit == null ? null : Words.metres(fit.focusFromSensorM()),
                settings == null ? null : FocusWords.sharp(fit, settings),
                fit == null ? null : Words.metres(fit.heightM()), bias(settings), bracket(settings),
                FocusWords.stack(fit, settings), fit == null ? null : FocusWords.filters(fit, settings),
                written.facingDeg() == null ? null : Words.compass(written.facingDeg()), shot.verdict() == Verdict.FITS,
                reasons, ComposeWords.of(written.compose()), sentences.of(brief.composition(shot)), trouble(brief.composition(shot), sentences), sentences.of(shot.helps()), OtherLight.skies(shot), OtherLight.hours(shot),
                tried(shot, sentences), companions(shot, sentences), defaults(intent, fit), ShotLightView.of(shot, sentences), CoverView.of(shot, sentences),
                written.notes(), written.otherwise(), Templates.html(prose.html(written.notes())),
                Templates.html(prose.html(written.otherwise())),
                planned.sketch() == null ? null : Templates.html(Svg.shared(planned.sketch(), "sketch" + shot.number())),
                planned.sketch() == null ? null : Templates.html(Svg.again(planned.sketch(), "sketch" + shot.number())),
                planned.sideView() == null ? null : Templates.html(Svg.of(planned.sideView(), "side" + shot.number())),
                planned.sketch() == null ? null : planned.sketch().says(),
                planned.sideView() == null ? null : planned.sideView().says());
    }

    private static String trouble(List<Advice> look, Sentences sentences) {
        List<String> trouble = look.stream().filter(advice -> advice.severity() == Advice.Severity.OBJECTION).map(sentences::of).toList();
        return trouble.isEmpty() ? null : PlanView.leads(trouble).get(0);
    }

    private static List<Row> facts(TimedShot shot, LensFit fit) {
        List<Row> facts = new ArrayList<>();
        facts.add(new Row("Lens", camera(fit.camera())));
        String focal = Words.millimetres(fit.focalMm());
        String equivalent = Words.millimetres(fit.equivalentMm());
        facts.add(new Row("Focal length", focal + (equivalent.equals(focal) ? "" : " (" + equivalent + " full-frame equivalent)")
                + (fit.cropTimes() > 1.005 ? ", cropped " + Words.number(fit.cropTimes(), 1) + "×" : "")));
        facts.add(new Row("Support", (fit.support() == null ? "hand-held" : fit.support().name()) + ", lens at "
                + Words.metres(fit.heightM())
                + (level(fit) ? ", level" : ", tilted " + tilt(fit))));
        String filters = FocusWords.filters(fit, shot.settings());
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
                + FocusWords.sharp(fit, shot.settings()) + (shot.intent().sharp() instanceof Sharp.Range ? "; hyperfocal "
                + Words.metres(shot.settings().hyperfocalM()) : "")));
        if (fit.magnification() > 0.05) {
            facts.add(new Row("Magnification", Words.number(fit.magnification(), 2) + "×"));
        }
        facts.add(new Row("Light", "EV " + SkySpan.ev(shot) + " at ISO 100" + (shot.skyKnown() ? "" : ", depending on the sky")));
        return facts;
    }

    static String camera(Camera camera) {
        String lens = camera.lens().builtIn()
                ? camera.body().name() + ", " + camera.lens().name() + " lens"
                : camera.lens().name();
        return camera.attachment() == null ? lens : lens + " + " + camera.attachment().name();
    }

    private static String focal(LensFit fit) {
        return fit.camera().lens().zooms() ? " at " + Words.millimetres(fit.focalMm()) : "";
    }

    /** By how much one frame is to be darker than metered; null if it is not. */
    private static String bias(Settings settings) {
        return settings == null ? null : settings.reasons().stream()
                .flatMap(reason -> reason instanceof ToneAdvice.ExposeForFlecks flecks ? Stream.of(Words.stops(flecks.less())) : Stream.empty())
                .findFirst().orElse(null);
    }

    private static String bracket(Settings settings) {
        String bracket = settings == null ? null : OtherLight.bracket(settings);
        return bracket == null ? null : bracket + "\u00a0stops";
    }

    private static List<Tried> tried(TimedShot shot, Sentences sentences) {
        List<Tried> tried = new ArrayList<>();
        for (LensFit fit : shot.fit().tried()) {
            if (fit.camera().attachment() != null && fit != shot.fit().best()) {
                continue;
            }
            Advice why = fit.objection() != null ? fit.objection() : fit.reasons().get(0);
            tried.add(new Tried(camera(fit.camera()) + focal(fit), Words.word(fit.verdict()), sentences.of(why)));
        }
        return tried;
    }

    private static List<Row> companions(TimedShot shot, Sentences sentences) {
        List<Row> rows = new ArrayList<>();
        for (FittedShot.ForCompanion companion : shot.fitted().companions()) {
            LensFit best = companion.best();
            rows.add(new Row(companion.name(), best == null ? "no camera"
                    : camera(best.camera()) + focal(best) + " from " + Words.metres(best.distanceM())
                    + " (" + Words.word(best.verdict()) + ")"
                    + (best.objection() == null ? "" : ". " + sentences.of(best.objection()))));
        }
        return rows;
    }

    private static List<Row> defaults(Intent intent, LensFit fit) {
        List<Row> rows = new ArrayList<>();
        for (String name : List.of("role", "spot", "viewpoint", "orientation", "tilt", "focal_equivalent", "frame",
                "sharp", "polariser", "duration", "priority")) {
            boolean open = name.equals("tilt") ? intent.shot().tiltDeg() == null && fit != null
                    : intent.assumed().contains(name);
            String value = open ? value(name, intent, fit) : "";
            if (!value.isEmpty()) {
                rows.add(new Row(name.equals("focal_equivalent") ? "focal length" : name.equals("sharp") ? "depth of field" : name, value));
            }
        }
        return rows;
    }

    private static String value(String name, Intent intent, LensFit fit) {
        return switch (name) {
            case "role" -> Words.word(intent.role());
            case "viewpoint" -> viewpoint(intent.viewpoint(), fit);
            case "spot" -> "the site itself";
            case "tilt" -> tilt(fit);
            case "polariser" -> "no";
            case "orientation" -> Words.word(intent.orientation());
            case "focal_equivalent" -> Words.millimetres(intent.focalEquivalentMm()) + " (equivalent)";
            case "frame" -> fit == null ? "by the subject" : Words.metres(fit.frameWidthM()) + " wide";
            case "sharp" -> intent.sharp() instanceof Sharp.Range range
                    ? Words.metres(range.nearM()) + " to " + Words.metres(range.farM())
                    : Words.metres(((Sharp.Depth) intent.sharp()).depthM());
            case "duration" -> intent.duration().toMinutes() + " min";
            default -> String.valueOf(intent.priority());
        };
    }

    private static String viewpoint(Viewpoint viewpoint, LensFit fit) {
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
