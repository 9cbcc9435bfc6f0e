package understorey.pages;

import java.io.IOException;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.brief.Brief;
import understorey.brief.FittedShot;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.CoverChoice;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.optics.AngleOfView;
import understorey.optics.FlowerCover;
import understorey.order.Leg;
import understorey.plan.Filter;
import understorey.plan.Shot;

/** One picture as members of a JSON object; lens and settings are null where no camera can take it. */
final class ShotJson {

    private final Brief plan;
    private final Function<Advice, String> sentences;
    private final ShotLightJson light;
    private final SettingsJson settings;

    ShotJson(Brief plan, Function<Advice, String> sentences) {
        this.plan = plan;
        this.sentences = sentences;
        this.light = new ShotLightJson(sentences);
        this.settings = new SettingsJson(sentences);
    }

    void write(Json json, TimedShot brief) throws IOException {
        Intent intent = brief.intent();
        Shot shot = intent.shot();
        LensFit best = brief.fit().best();
        Settings planned = brief.settings();
        json.text("name", shot.name()).word("role", intent.role()).text("subject", shot.subject().name())
                .text("spot", shot.spot() == null ? plan.trip().site().name() : shot.spot())
                .number("viewpoint_m", best == null ? null : Figures.metres(best.heightM()))
                .word("verdict", brief.verdict())
                .told("reasons", reasons(best, planned), sentences);
        camera(json, best, planned == null ? List.of() : planned.dimming());
        lens(json, best);
        SettingsJson.exposure(json, planned);
        json.number("focus_m", best == null ? null : Figures.metres(best.focusM()));
        SettingsJson.sharp(json, planned);
        json.count("stack_frames", planned == null ? null : planned.stackFrames());
        json.number("flower_cover", brief.cover() == null ? null
                : Figures.share(brief.cover().planned().typical().cover()));
        light.quality(json, brief);
        json.ends(brief.time());
        more(json, brief);
        SettingsJson.more(json, planned);
        light.more(json, brief);
    }

    /** Why this lens, then why these settings. */
    private static List<Advice> reasons(LensFit best, Settings planned) {
        if (best == null) {
            return List.of();
        }
        List<Advice> reasons = new ArrayList<>(best.reasons());
        reasons.addAll(planned.reasons());
        return reasons;
    }

    private static void camera(Json json, LensFit fit, List<Filter> dimming) throws IOException {
        boolean none = fit == null;
        List<String> filters = new ArrayList<>();
        if (!none) {
            for (Filter filter : fit.filters()) {
                filters.add(filter.name());
            }
            for (Filter filter : dimming) {
                filters.add(filter.name());
            }
        }
        json.text("body", none ? null : fit.camera().body().name())
                .text("lens", none ? null : fit.camera().lens().name())
                .text("support", none || fit.support() == null ? null : fit.support().name())
                .texts("filters", filters);
    }

    private static void lens(Json json, LensFit fit) throws IOException {
        boolean none = fit == null;
        json.number("focal_mm", none ? null : Figures.millimetres(fit.focalMm()))
                .number("equivalent_mm", none ? null : Figures.millimetres(fit.equivalentMm()));
        AngleOfView view = none ? null : fit.view();
        json.object("angle_of_view_deg")
                .number("horizontal", none ? null : Figures.lensDeg(view.horizontalDeg()))
                .number("vertical", none ? null : Figures.lensDeg(view.verticalDeg()))
                .number("diagonal", none ? null : Figures.lensDeg(view.diagonalDeg()))
                .end();
        json.number("tilt_deg", none ? null : Figures.lensDeg(fit.tiltDeg()))
                .number("distance_m", none ? null : Figures.metres(fit.distanceM()))
                .number("frame_width_m", none ? null : Figures.metres(fit.frameWidthM()))
                .number("frame_height_m", none ? null : Figures.metres(fit.frameHeightM()))
                .number("magnification", none ? null : Figures.magnification(fit.magnification()));
    }

    private void more(Json json, TimedShot brief) throws IOException {
        Intent intent = brief.intent();
        LensFit best = brief.fit().best();
        boolean none = best == null;
        json.count("number", brief.number())
                .count("priority", intent.priority())
                .word("orientation", intent.orientation())
                .time("ready", ready(intent.shot().name()))
                .text("attachment", none ? null : attachment(best))
                .number("crop_times", none ? null : Figures.ratio(best.cropTimes()))
                .number("f_number_needed", none ? null : Figures.ratio(best.fNumberNeeded()))
                .number("f_number_useful", none ? null : Figures.ratio(best.fNumberUseful()))
                .object("light");
        LightJson.write(json, brief.light());
        json.end();
        settings.bySky(json, brief);
        settings.byHour(json, brief.otherHours());
        json.list("cover_by_lens");
        if (brief.cover() != null) {
            for (CoverChoice choice : brief.cover().choices()) {
                cover(json.item(), choice);
                json.end();
            }
        }
        json.endList().list("lenses_tried");
        for (LensFit fit : brief.fit().tried()) {
            tried(json.item(), fit);
            json.end();
        }
        json.endList().told("helps", brief.fit().helps(), sentences)
                .told("composition", plan.composition(brief), sentences).list("companions");
        for (FittedShot.ForCompanion companion : brief.fitted().companions()) {
            companion(json.item(), companion);
            json.end();
        }
        json.endList().texts("assumed", new TreeSet<>(intent.assumed()));
    }

    /** When the camera stands; null for a picture that the visit leaves no time for. */
    private ZonedDateTime ready(String shot) {
        for (Leg leg : plan.order().legs()) {
            if (leg.what() == Leg.What.SET_UP && shot.equals(leg.shot())) {
                return leg.to();
            }
        }
        return null;
    }

    private static void cover(Json json, CoverChoice choice) throws IOException {
        FlowerCover typical = choice.typical();
        json.text("lens", choice.fit().camera().lens().name())
                .number("equivalent_mm", Figures.millimetres(choice.equivalentMm()))
                .truth("planned", choice.planned()).number("nearest_m", Figures.metres(typical.nearestM()))
                .number("farthest_m", Figures.metres(typical.farthestM()))
                .number("cover", Figures.share(typical.cover())).number("cover_near", Figures.share(typical.near()))
                .number("cover_middle", Figures.share(typical.middle())).number("cover_far", Figures.share(typical.far()))
                .number("cover_thick", Figures.share(choice.thick().cover()))
                .number("ground_share", Figures.share(typical.ground()))
                .number("trunk_scale", Figures.share(choice.trunkScale()));
    }

    private void tried(Json json, LensFit fit) throws IOException {
        json.word("verdict", fit.verdict());
        camera(json, fit, List.of());
        json.text("attachment", attachment(fit)).number("crop_times", Figures.ratio(fit.cropTimes()));
        lens(json, fit);
        json.told("reasons", fit.reasons(), sentences);
    }

    private void companion(Json json, FittedShot.ForCompanion companion) throws IOException {
        LensFit best = companion.best();
        json.text("name", companion.name()).word("verdict", best == null ? Verdict.CANNOT : best.verdict());
        camera(json, best, List.of());
        lens(json, best);
        json.told("reasons", best == null ? List.of() : best.reasons(), sentences);
    }

    private static String attachment(LensFit fit) {
        return fit.camera().attachment() == null ? null : fit.camera().attachment().name();
    }
}
