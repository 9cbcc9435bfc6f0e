package understorey.pages.tables;

import static understorey.pages.tables.Column.data;

import java.util.List;
import java.util.stream.Stream;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.brief.TimedShot;
import understorey.exposure.Background;
import understorey.exposure.Settings;
import understorey.exposure.Stack;
import understorey.exposure.motion.Lull;
import understorey.pages.words.Sentences;
import understorey.pages.words.SettingsWords;
import understorey.pages.words.Words;

/** The settings of a picture, and those for other light. */
public final class SettingsColumns {

    /** Settings for another sky, or for another hour; these have a time, and the sky expected then. */
    private record Differing(TimedShot shot, TimedShot.Other other, boolean otherHour) {

        boolean mist() {
            return other == shot.ifMist();
        }
    }

    private static final List<Column<Settings>> LIGHT = List.of(
            Column.of("ev100", "EV", Measure.EV100_NUMBER, Settings::ev100),
            Column.of("f_number", "f/", Measure.F_NUMBER, Settings::fNumber),
            Column.of("shutter_s", "Shutter", Measure.SHUTTER_SECONDS, Settings::shutterS, (settings, wording) ->
                    settings.tooDark() ? SettingsWords.TOO_DARK : wording.of(settings.shutterS(), Measure.SHUTTER_SECONDS)),
            Column.of("iso", "ISO", Measure.COUNT, Settings::iso),
            data("below_meter_stops", Measure.STOPS, Settings::lessStops),
            data("bracket_stops", Measure.COUNT, Settings::bracketStops));

    private static final List<Column<Settings>> SHARP = List.of(
            data("sharp_from_m", Measure.METRES, Settings::sharpFromM),
            data("sharp_to_m", Measure.METRES, Settings::sharpToM),
            data("hyperfocal_m", Measure.METRES, Settings::hyperfocalM));

    private static final List<Column<Lull>> LULL = List.of(
            data("f_number", Measure.F_NUMBER, Lull::fNumber),
            data("shutter_s", Measure.SHUTTER_SECONDS, Lull::shutterS),
            data("iso", Measure.COUNT, Lull::iso),
            data("share_of_time", Measure.SHARE, Lull::share));

    private static final List<Column<Stack>> STACK = List.of(
            data("frames", Measure.COUNT, Stack::frames),
            data("by_rail", Stack::byRail),
            data("step_m", Measure.METRES, Stack::stepM),
            data("first_m", Measure.METRES, Stack::firstM),
            data("last_m", Measure.METRES, Stack::lastM));

    private static final List<Column<Background>> BACKGROUND = List.of(
            data("share_of_width_1_m_behind", Measure.SHARE, Background::near),
            data("share_of_width_at_horizon", Measure.SHARE, Background::far));

    /** Aperture, shutter speed, ISO and what they hold; what takes light and what moves. */
    public static final List<Column<Settings>> PLANNED = Column.all(LIGHT, SHARP, List.of(
            data("stack_frames", Measure.COUNT, Settings::stackFrames),
            data("loss_stops", Measure.STOPS, Settings::lossStops),
            data("sway_blur_mm", Measure.MILLIMETRES, Settings::swayBlurMm),
            data("lull", settings -> Facts.of(LULL, settings.lull())),
            data("stack", settings -> Facts.of(STACK, settings.stack())),
            data("background_disc", settings -> Facts.of(BACKGROUND, settings.background()))));

    private static final List<Column<Differing>> DIFFERING = Column.all(
            List.of(Column.text("Light", Measure.WORD, SettingsColumns::when),
                    data("sky", light -> light.mist() ? "mist" : light.other.sky()),
                    data("metered", light -> light.otherHour ? null : light.other.metered()),
                    data("time", light -> light.otherHour ? light.other.time() : null)),
            Column.part(LIGHT, light -> light.other.settings()),
            List.of(Column.of("white_balance_k", "K", Measure.COUNT, light -> light.other.whiteBalance().kelvin()),
                    Column.text("Note", Measure.WORD, (light, wording) -> SettingsWords.bracketAndProblem(light.other.settings()))),
            Column.part(SHARP, light -> light.other.settings()),
            List.of(data("verdict", light -> light.other.settings().verdict()),
                    data("reasons", SettingsColumns::otherReasons)));

    private SettingsColumns() {
    }

    /** Settings if the light differs: other skies, mist, then an hour earlier and an hour later. */
    public static Table<?> ifTheLightDiffers(TimedShot shot) {
        return new Table<>(DIFFERING, Stream.concat(
                Stream.concat(shot.otherSkies().stream(), Stream.ofNullable(shot.ifMist())).map(other -> new Differing(shot, other, false)),
                shot.otherHours().stream().map(other -> new Differing(shot, other, true))).toList());
    }

    /** Reasons that the planned settings do not have. */
    private static List<Advice> otherReasons(Differing light) {
        List<Advice> planned = light.shot.settings() == null ? List.of() : light.shot.settings().reasons();
        return light.other.settings().reasons().stream().filter(reason -> !planned.contains(reason)).toList();
    }

    private static String when(Differing light, Sentences wording) {
        return light.mist() ? "mist" : light.otherHour ? wording.clock().of(light.other.time())
                : (light.shot.countsOnMist() ? "no mist, " : "")
                + Words.orDash(light.other.sky(), sky -> SettingsWords.sky(sky, light.other.metered()));
    }
}
