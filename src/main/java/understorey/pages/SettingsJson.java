package understorey.pages;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.brief.TimedShot;
import understorey.exposure.Background;
import understorey.exposure.Lull;
import understorey.exposure.Settings;
import understorey.exposure.Stack;

/** The settings of a picture as members of a JSON object; null where no camera can take it. */
final class SettingsJson {

    private final Function<Advice, String> sentences;

    SettingsJson(Function<Advice, String> sentences) {
        this.sentences = sentences;
    }

    static void exposure(Json json, Settings settings) throws IOException {
        boolean none = settings == null;
        json.number("f_number", none ? null : Figures.ratio(settings.fNumber()))
                .number("shutter_s", none ? null : Figures.seconds(settings.shutterS()))
                .count("iso", none ? null : settings.iso())
                .number("ev100", none ? null : Figures.ev100(settings.ev100()))
                .counts("bracket_stops", none ? List.of() : settings.bracketStops());
    }

    static void sharp(Json json, Settings settings) throws IOException {
        boolean none = settings == null;
        json.number("sharp_from_m", none ? null : Figures.metres(settings.sharpFromM()))
                .number("sharp_to_m", none ? null : Figures.metres(settings.sharpToM()))
                .number("hyperfocal_m", none ? null : Figures.metres(settings.hyperfocalM()));
    }

    /** What takes light, what the wind blurs, a lull, the stack and the background; the last three null where there is none. */
    static void more(Json json, Settings settings) throws IOException {
        boolean none = settings == null;
        json.number("loss_stops", none ? null : Figures.stops(settings.lossStops()))
                .number("sway_blur_mm", none ? null : Figures.millimetres(settings.swayBlurMm()));
        lull(json, none ? null : settings.lull());
        stack(json, none ? null : settings.stack());
        background(json, none ? null : settings.background());
    }

    private static void lull(Json json, Lull lull) throws IOException {
        if (lull == null) {
            json.absent("lull");
            return;
        }
        json.object("lull").number("f_number", Figures.ratio(lull.fNumber())).number("shutter_s", Figures.seconds(lull.shutterS()))
                .count("iso", lull.iso()).number("share_of_time", Figures.share(lull.share())).end();
    }

    private static void stack(Json json, Stack stack) throws IOException {
        if (stack == null) {
            json.absent("stack");
            return;
        }
        json.object("stack").count("frames", stack.frames()).truth("by_rail", stack.byRail())
                .number("step_m", Figures.metres(stack.stepM()))
                .number("first_m", Figures.metres(stack.firstM())).number("last_m", Figures.metres(stack.lastM())).end();
    }

    private static void background(Json json, Background background) throws IOException {
        if (background == null) {
            json.absent("background_disc");
            return;
        }
        json.object("background_disc").number("share_of_width_1_m_behind", Figures.share(background.near()))
                .number("share_of_width_at_horizon", Figures.share(background.far())).end();
    }

    void bySky(Json json, TimedShot shot) throws IOException {
        json.list("settings_by_sky");
        for (TimedShot.Other other : shot.otherSkies()) {
            other(json.item().word("sky", other.sky())
                    .word("metered", shot.light().metered(other.sky().okta())), other);
            json.end();
        }
        json.endList();
    }

    void byHour(Json json, List<TimedShot.Other> others) throws IOException {
        json.list("settings_by_hour");
        for (TimedShot.Other other : others) {
            other(json.item().time("time", other.time()).word("sky", other.sky()), other);
            json.end();
        }
        json.endList();
    }

    private void other(Json json, TimedShot.Other other) throws IOException {
        Settings settings = other.settings();
        exposure(json, settings);
        json.count("white_balance_k", other.whiteBalance().kelvin());
        sharp(json, settings);
        json.word("verdict", settings.verdict()).told("reasons", settings.reasons(), sentences);
    }
}
