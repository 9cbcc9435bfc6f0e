package understorey.pages.json;

import static understorey.pages.words.Words.ifKnown;

import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.brief.TimedShot;
import understorey.exposure.Background;
import understorey.exposure.Lull;
import understorey.exposure.Settings;
import understorey.exposure.Stack;
import understorey.pages.words.Figures;

/** The settings of a picture as members of a JSON object; null where no camera can take it. */
final class SettingsJson {

    private final Function<Advice, String> sentences;

    SettingsJson(Function<Advice, String> sentences) {
        this.sentences = sentences;
    }

    static void exposure(Json json, @Nullable Settings settings) {
        json.number("f_number", ifKnown(settings, of -> Figures.ratio(of.fNumber())))
                .number("shutter_s", ifKnown(settings, of -> Figures.seconds(of.shutterS())))
                .count("iso", ifKnown(settings, Settings::iso))
                .number("ev100", ifKnown(settings, of -> Figures.ev100(of.ev100())))
                .number("below_meter_stops", ifKnown(settings, of -> Figures.stops(of.lessStops())))
                .counts("bracket_stops", settings == null ? List.of() : settings.bracketStops());
    }

    static void sharp(Json json, @Nullable Settings settings) {
        json.number("sharp_from_m", ifKnown(settings, of -> Figures.metres(of.sharpFromM())))
                .number("sharp_to_m", ifKnown(settings, of -> Figures.metres(of.sharpToM())))
                .number("hyperfocal_m", ifKnown(settings, of -> Figures.metres(of.hyperfocalM())));
    }

    /** What takes light, what the wind blurs, a lull, the stack and the background; the last three null where there is none. */
    static void more(Json json, @Nullable Settings settings) {
        json.number("loss_stops", ifKnown(settings, of -> Figures.stops(of.lossStops())))
                .number("sway_blur_mm", ifKnown(settings, of -> Figures.millimetres(of.swayBlurMm())))
                .object("lull", ifKnown(settings, Settings::lull), SettingsJson::lull)
                .object("stack", ifKnown(settings, Settings::stack), SettingsJson::stack)
                .object("background_disc", ifKnown(settings, Settings::background), SettingsJson::background);
    }

    private static void lull(Json json, Lull lull) {
        json.number("f_number", Figures.ratio(lull.fNumber())).number("shutter_s", Figures.seconds(lull.shutterS()))
                .count("iso", lull.iso()).number("share_of_time", Figures.share(lull.share()));
    }

    private static void stack(Json json, Stack stack) {
        json.count("frames", stack.frames()).truth("by_rail", stack.byRail())
                .number("step_m", Figures.metres(stack.stepM()))
                .number("first_m", Figures.metres(stack.firstM())).number("last_m", Figures.metres(stack.lastM()));
    }

    private static void background(Json json, Background background) {
        json.number("share_of_width_1_m_behind", Figures.share(background.near()))
                .number("share_of_width_at_horizon", Figures.share(background.far()));
    }

    void bySky(Json json, TimedShot shot) {
        json.objects("settings_by_sky", shot.otherSkies(), (object, other) -> other(object.word("sky", other.sky())
                .word("metered", other.metered()), other));
    }

    void byHour(Json json, List<TimedShot.Other> others) {
        json.objects("settings_by_hour", others, (object, other) -> other(object.time("time", other.time())
                .word("sky", other.sky()), other));
    }

    private void other(Json json, TimedShot.Other other) {
        Settings settings = other.settings();
        exposure(json, settings);
        json.count("white_balance_k", other.whiteBalance().kelvin());
        sharp(json, settings);
        json.word("verdict", settings.verdict()).sentences("reasons", settings.reasons(), sentences);
    }
}
