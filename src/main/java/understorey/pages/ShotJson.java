package understorey.pages;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import understorey.brief.ShotBrief;
import understorey.exposure.Settings;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.optics.AngleOfView;
import understorey.outing.Leg;
import understorey.outing.Outing;
import understorey.plan.Filter;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.reason.Reason;

/** One picture as members of a JSON object; lens and settings are null where no camera can take it. */
final class ShotJson {

    private final Site site;
    private final Outing outing;
    private final Function<Reason, String> sentences;

    ShotJson(Site site, Outing outing, Function<Reason, String> sentences) {
        this.site = site;
        this.outing = outing;
        this.sentences = sentences;
    }

    void write(Json json, ShotBrief brief) throws IOException {
        Intent intent = brief.intent();
        Shot shot = intent.shot();
        LensFit best = brief.fit().best();
        Settings settings = brief.settings();
        json.text("name", shot.name()).word("role", intent.role()).text("subject", shot.subject().name())
                .text("spot", shot.spot() == null ? site.name() : shot.spot())
                .number("viewpoint_m", best == null ? null : Figures.metres(best.heightM()))
                .word("verdict", brief.verdict())
                .texts("reasons", best == null ? List.of()
                        : words(Stream.concat(best.reasons().stream(), settings.reasons().stream())));
        camera(json, best);
        lens(json, best);
        settings(json, settings);
        json.number("focus_m", best == null ? null : Figures.metres(best.focusM()));
        sharp(json, settings);
        json.count("stack_frames", settings == null ? null : settings.stackFrames());
        json.absent("flower_cover").number("light_angle_deg", Figures.lensDeg(brief.lightAngleDeg()))
                .absent("light_quality")
                .ends(brief.time());
        more(json, brief);
    }

    private static void camera(Json json, LensFit fit) throws IOException {
        boolean none = fit == null;
        json.text("body", none ? null : fit.camera().body().name())
                .text("lens", none ? null : fit.camera().lens().name())
                .text("support", none || fit.support() == null ? null : fit.support().name())
                .texts("filters", none ? List.of() : fit.filters().stream().map(Filter::name).toList());
    }

    private static void lens(Json json, LensFit fit) throws IOException {
        boolean none = fit == null;
        json.number("focal_mm", none ? null : Figures.millimetres(fit.focalMm()))
                .number("equivalent_mm", none ? null : Figures.millimetres(fit.equivalentMm()));
        AngleOfView view = none ? null : fit.view();
        json.object("angle_of_view_deg", angles -> angles
                .number("horizontal", none ? null : Figures.lensDeg(view.horizontalDeg()))
                .number("vertical", none ? null : Figures.lensDeg(view.verticalDeg()))
                .number("diagonal", none ? null : Figures.lensDeg(view.diagonalDeg())));
        json.number("tilt_deg", none ? null : Figures.lensDeg(fit.tiltDeg()))
                .number("distance_m", none ? null : Figures.metres(fit.distanceM()))
                .number("frame_width_m", none ? null : Figures.metres(fit.frameWidthM()))
                .number("frame_height_m", none ? null : Figures.metres(fit.frameHeightM()))
                .number("magnification", none ? null : Figures.magnification(fit.magnification()));
    }

    private static void settings(Json json, Settings settings) throws IOException {
        boolean none = settings == null;
        json.number("f_number", none ? null : Figures.ratio(settings.fNumber()))
                .number("shutter_s", none ? null : Figures.seconds(settings.shutterS()))
                .count("iso", none ? null : settings.iso())
                .number("ev100", none ? null : Figures.ev100(settings.ev100()))
                .counts("bracket_stops", none ? List.of() : settings.bracketStops());
    }

    private static void sharp(Json json, Settings settings) throws IOException {
        boolean none = settings == null;
        json.number("sharp_from_m", none ? null : Figures.metres(settings.sharpFromM()))
                .number("sharp_to_m", none ? null : Figures.metres(settings.sharpToM()))
                .number("hyperfocal_m", none ? null : Figures.metres(settings.hyperfocalM()));
    }

    private void more(Json json, ShotBrief brief) throws IOException {
        Intent intent = brief.intent();
        LensFit best = brief.fit().best();
        boolean none = best == null;
        json.count("number", brief.number())
                .count("priority", intent.priority())
                .word("orientation", intent.orientation())
                .time("ready", ready(intent.shot().name()))
                .text("attachment", none ? null : attachment(best))
                .number("crop_times", none ? null : Figures.ratio(best.cropTimes()))
                .number("loss_stops", none ? null : Figures.stops(brief.settings().lossStops()))
                .number("f_number_needed", none ? null : Figures.ratio(best.fNumberNeeded()))
                .number("f_number_useful", none ? null : Figures.ratio(best.fNumberUseful()))
                .object("light", light -> LightJson.write(light, brief.light()))
                .objects("settings_by_sky", brief.otherSkies(), this::inSky)
                .objects("lenses_tried", brief.fit().tried(), this::tried)
                .texts("helps", words(brief.fit().helps().stream()))
                .objects("companions", brief.companions(), this::companion)
                .texts("assumed", new TreeSet<>(intent.assumed()));
    }

    /** When the camera stands; null for a picture that the visit leaves no time for. */
    private ZonedDateTime ready(String shot) {
        return outing.legs().stream().filter(leg -> leg.what() == Leg.What.SET_UP && shot.equals(leg.shot()))
                .map(Leg::to).findFirst().orElse(null);
    }

    private void inSky(Json json, ShotBrief.InSky in) throws IOException {
        json.word("sky", in.sky());
        settings(json, in.settings());
        sharp(json, in.settings());
        json.word("verdict", in.settings().verdict()).texts("reasons", words(in.settings().reasons().stream()));
    }

    private void tried(Json json, LensFit fit) throws IOException {
        json.word("verdict", fit.verdict());
        camera(json, fit);
        json.text("attachment", attachment(fit)).number("crop_times", Figures.ratio(fit.cropTimes()));
        lens(json, fit);
        json.texts("reasons", words(fit.reasons().stream()));
    }

    private void companion(Json json, ShotBrief.ForCompanion companion) throws IOException {
        LensFit best = companion.best();
        json.text("name", companion.name()).word("verdict", best == null ? Verdict.CANNOT : best.verdict());
        camera(json, best);
        lens(json, best);
        json.texts("reasons", best == null ? List.of() : words(best.reasons().stream()));
    }

    private static String attachment(LensFit fit) {
        return fit.camera().attachment() == null ? null : fit.camera().attachment().name();
    }

    private List<String> words(Stream<Reason> reasons) {
        return reasons.map(sentences).toList();
    }
}
