package understorey.pages.json;

import static understorey.pages.words.Words.ifKnown;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
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
import understorey.pages.words.Figures;
import understorey.pages.words.Words;
import understorey.plan.Filter;
import understorey.plan.Shot;
import understorey.plan.Support;

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

    void write(Json json, TimedShot brief) {
        Intent intent = brief.intent();
        Shot shot = intent.shot();
        LensFit best = brief.fit().best();
        Settings planned = brief.settings();
        json.text("name", shot.name()).word("role", intent.role()).text("subject", shot.subject().name())
                .text("spot", Words.place(plan.trip().site(), shot.spot()))
                .number("viewpoint_m", ifKnown(best, fit -> Figures.metres(fit.heightM())))
                .word("verdict", brief.verdict())
                .sentences("reasons", reasons(best, planned), sentences);
        camera(json, best, planned == null ? List.of() : planned.dimming());
        lens(json, best);
        SettingsJson.exposure(json, planned);
        json.number("focus_m", ifKnown(best, fit -> Figures.metres(fit.focusM())));
        SettingsJson.sharp(json, planned);
        json.count("stack_frames", ifKnown(planned, Settings::stackFrames))
                .number("flower_cover", ifKnown(brief.cover(), cover -> Figures.share(cover.planned().typical().cover())));
        light.quality(json, brief);
        json.ends(brief.time());
        more(json, brief);
        SettingsJson.more(json, planned);
        light.more(json, brief);
    }

    /** Why this lens, then why these settings. */
    private static List<Advice> reasons(@Nullable LensFit best, @Nullable Settings planned) {
        return best == null || planned == null ? List.of()
                : Stream.concat(best.reasons().stream(), planned.reasons().stream()).toList();
    }

    private static void camera(Json json, @Nullable LensFit fit, List<Filter> dimming) {
        json.text("body", ifKnown(fit, of -> of.camera().body().name()))
                .text("lens", ifKnown(fit, of -> of.camera().lens().name()))
                .text("support", ifKnown(ifKnown(fit, LensFit::support), Support::name))
                .texts("filters", fit == null ? List.of()
                        : Stream.concat(fit.filters().stream(), dimming.stream()).map(Filter::name).toList());
    }

    private static void lens(Json json, @Nullable LensFit fit) {
        json.number("focal_mm", ifKnown(fit, of -> Figures.millimetres(of.focalMm())))
                .number("equivalent_mm", ifKnown(fit, of -> Figures.millimetres(of.equivalentMm())))
                .object("angle_of_view_deg", Optional.ofNullable(fit).map(LensFit::view), ShotJson::view)
                .number("tilt_deg", ifKnown(fit, of -> Figures.lensDeg(of.tiltDeg())))
                .number("distance_m", ifKnown(fit, of -> Figures.metres(of.distanceM())))
                .number("frame_width_m", ifKnown(fit, of -> Figures.metres(of.frameWidthM())))
                .number("frame_height_m", ifKnown(fit, of -> Figures.metres(of.frameHeightM())))
                .number("magnification", ifKnown(fit, of -> Figures.magnification(of.magnification())));
    }

    private static void view(Json json, Optional<AngleOfView> view) {
        json.number("horizontal", view.map(of -> Figures.lensDeg(of.horizontalDeg())).orElse(null))
                .number("vertical", view.map(of -> Figures.lensDeg(of.verticalDeg())).orElse(null))
                .number("diagonal", view.map(of -> Figures.lensDeg(of.diagonalDeg())).orElse(null));
    }

    private void more(Json json, TimedShot brief) {
        Intent intent = brief.intent();
        LensFit best = brief.fit().best();
        json.count("number", brief.number())
                .count("priority", intent.priority())
                .word("orientation", intent.orientation())
                .time("ready", ready(intent.shot().name()))
                .text("attachment", ifKnown(best, ShotJson::attachment))
                .number("crop_times", ifKnown(best, fit -> Figures.ratio(fit.cropTimes())))
                .number("f_number_needed", ifKnown(best, fit -> Figures.ratio(fit.fNumberNeeded())))
                .number("f_number_useful", ifKnown(best, fit -> Figures.ratio(fit.fNumberUseful())))
                .object("light", brief.light(), LightJson::write);
        settings.bySky(json, brief);
        settings.byHour(json, brief.otherHours());
        json.objects("cover_by_lens", brief.cover() == null ? List.of() : brief.cover().choices(), ShotJson::cover)
                .objects("lenses_tried", brief.fit().tried(), this::tried)
                .sentences("helps", brief.fit().helps(), sentences)
                .sentences("composition", plan.composition(brief), sentences)
                .objects("companions", brief.fitted().companions(), this::companion)
                .texts("assumed", new TreeSet<>(intent.assumed()));
    }

    /** When the camera stands; null for a picture that the visit leaves no time for. */
    private @Nullable ZonedDateTime ready(String shot) {
        return plan.order().legs().stream().filter(leg -> leg.what() == Leg.What.SET_UP && shot.equals(leg.shot()))
                .map(Leg::to).findFirst().orElse(null);
    }

    private static void cover(Json json, CoverChoice choice) {
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

    private void tried(Json json, LensFit fit) {
        json.word("verdict", fit.verdict());
        camera(json, fit, List.of());
        json.text("attachment", attachment(fit)).number("crop_times", Figures.ratio(fit.cropTimes()));
        lens(json, fit);
        json.sentences("reasons", fit.reasons(), sentences);
    }

    private void companion(Json json, FittedShot.ForCompanion companion) {
        LensFit best = companion.best();
        json.text("name", companion.name()).word("verdict", best == null ? Verdict.CANNOT : best.verdict());
        camera(json, best, List.of());
        lens(json, best);
        json.sentences("reasons", best == null ? List.of() : best.reasons(), sentences);
    }

    private static @Nullable String attachment(LensFit fit) {
        return ifKnown(fit.camera().attachment(), Filter::name);
    }
}
