package understorey.pages.json;

import static understorey.pages.tables.Column.data;
import static understorey.pages.words.Words.ifKnown;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.brief.FittedShot;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.light.Outlook;
import understorey.light.SunDirection;
import understorey.order.Leg;
import understorey.pages.tables.Column;
import understorey.pages.tables.Facts;
import understorey.pages.tables.LensColumns;
import understorey.pages.tables.LightColumns;
import understorey.pages.tables.SettingsColumns;
import understorey.pages.tables.Table;
import understorey.pages.words.Words;
import understorey.plan.Filter;
import understorey.sky.Interval;

/** One picture; lens and settings are null where no camera can take it. */
final class ShotJson {

    private static final List<Column<Outlook.Spoil>> SPOIL = List.of(
            data("from", spoil -> spoil.when().from()),
            data("to", spoil -> spoil.when().to()),
            data("why", Outlook.Spoil::why));

    private static final List<Column<TimedShot.Wished>> WISHED = List.of(
            data("sky", TimedShot.Wished::sky),
            data("quality", Measure.SHARE, wished -> wished.outlook().quality()),
            data("grade", wished -> wished.outlook().grade()),
            data("because", wished -> wished.outlook().because()),
            data("windows", wished -> wished.outlook().windows()),
            data("windows_grade", wished -> wished.outlook().best()),
            data("spoils", wished -> Facts.each(SPOIL, wished.outlook().spoils())));

    private static final List<Column<SunDirection.Stretch>> SIDE = List.of(
            data("side", SunDirection.Stretch::side),
            data("from", stretch -> stretch.time().from()),
            data("to", stretch -> stretch.time().to()));

    private static final List<Column<SunDirection>> SUN = List.of(
            data("light_angle_deg", Measure.DEGREES, sun -> Math.abs(sun.bearingDeg())),
            data("light_angle_in_space_deg", Measure.DEGREES, SunDirection::angleDeg),
            data("light_side", SunDirection::side),
            data("sun_to_frame", SunDirection::where),
            data("sun_part_of_frame", SunDirection::part));

    private static final List<Column<TimedShot>> LIGHT = List.of(
            data("sun_reasons", shot -> shot.sunlight() == null ? List.of() : shot.sunlight().reasons()),
            data("light_sides", shot -> shot.sunlight() == null ? List.of() : Facts.each(SIDE, shot.sunlight().overDay())),
            data("light_quality", Measure.SHARE, shot -> ifKnown(shot.outlook(), Outlook::quality)),
            data("light_wished", shot -> Facts.each(WISHED, shot.wished())),
            data("polariser_reasons", shot -> shot.polariser() == null ? List.of() : shot.polariser().reasons()),
            data("mist_reasons", TimedShot::mist),
            data("white_balance_k", Measure.KELVIN, shot -> ifKnown(shot.whiteBalance(), balance -> balance.kelvin())),
            data("green_cast", shot -> ifKnown(shot.whiteBalance(), balance -> balance.green())),
            data("light", shot -> new Facts<>(LightColumns.day("skyline"), shot.light())),
            data("weather", shot -> new Facts<>(LightColumns.WEATHER, shot.weather())));

    private static final List<Column<TimedShot>> TABLES = List.of(
            data("if_the_light_differs", SettingsColumns::ifTheLightDiffers),
            data("cover_by_lens", shot -> new Table<>(LensColumns.COVER, shot.cover() == null ? List.of() : shot.cover().choices())),
            data("lenses_tried", LensColumns::tried));

    private static final List<Column<FittedShot.ForCompanion>> COMPANION = Column.all(
            List.of(data("name", FittedShot.ForCompanion::name),
                    data("verdict", companion -> companion.best() == null ? Verdict.CANNOT : companion.best().verdict())),
            Column.part(Column.all(LensColumns.CAMERA, List.of(LensColumns.FILTERS), LensColumns.FRAMING), FittedShot.ForCompanion::best),
            List.of(data("reasons", companion -> companion.best() == null ? List.of() : companion.best().reasons())));

    private ShotJson() {
    }

    static List<Column<TimedShot>> columns(Brief brief) {
        return Column.all(intent(brief), Column.part(LensColumns.CAMERA, ShotJson::best),
                List.of(data("filters", ShotJson::filters)),
                Column.part(LensColumns.FRAMING, ShotJson::best),
                List.of(data("viewpoint_m", Measure.METRES, shot -> ifKnown(best(shot), LensFit::heightM)),
                        data("focus_m", Measure.METRES, shot -> ifKnown(best(shot), LensFit::focusM)),
                        data("f_number_needed", Measure.F_NUMBER, shot -> ifKnown(best(shot), LensFit::fNumberNeeded)),
                        data("f_number_useful", Measure.F_NUMBER, shot -> ifKnown(best(shot), LensFit::fNumberUseful))),
                Column.part(SettingsColumns.PLANNED, TimedShot::settings),
                List.of(data("flower_cover", Measure.SHARE, shot -> ifKnown(shot.cover(), cover -> cover.planned().typical().cover())),
                        data("from", shot -> ifKnown(shot.time(), Interval::from)),
                        data("to", shot -> ifKnown(shot.time(), Interval::to)),
                        data("ready", shot -> ready(brief, shot))),
                Column.part(SUN, shot -> shot.sunlight() == null ? null : shot.sunlight().now()),
                LIGHT, TABLES,
                List.of(data("helps", TimedShot::helps),
                        data("composition", brief::composition),
                        data("companions", shot -> Facts.each(COMPANION, shot.fitted().companions())),
                        data("assumed", shot -> new TreeSet<>(shot.intent().assumed()))));
    }

    private static List<Column<TimedShot>> intent(Brief brief) {
        return List.of(
                data("name", shot -> shot.intent().shot().name()),
                data("number", Measure.COUNT, TimedShot::number),
                data("role", shot -> shot.intent().role()),
                data("priority", Measure.COUNT, shot -> shot.intent().priority()),
                data("orientation", shot -> shot.intent().orientation()),
                data("subject", shot -> shot.intent().shot().subject().name()),
                data("spot", shot -> Words.place(brief.trip().site(), shot.intent().shot().spot())),
                data("verdict", TimedShot::verdict),
                data("reasons", ShotJson::reasons));
    }

    private static @Nullable LensFit best(TimedShot shot) {
        return shot.fit().best();
    }

    /** Why this lens, then why these settings. */
    private static List<Advice> reasons(TimedShot shot) {
        LensFit best = best(shot);
        Settings planned = shot.settings();
        return best == null || planned == null ? List.of() : Stream.concat(best.reasons().stream(), planned.reasons().stream()).toList();
    }

    /** With those for the light. */
    private static List<String> filters(TimedShot shot) {
        LensFit best = best(shot);
        Settings planned = shot.settings();
        return Stream.concat(best == null ? Stream.of() : best.filters().stream(), planned == null ? Stream.of() : planned.dimming().stream())
                .map(Filter::name).toList();
    }

    /** When the camera is ready; null for a picture that the visit leaves no time for. */
    private static @Nullable ZonedDateTime ready(Brief brief, TimedShot shot) {
        return brief.order().legs().stream()
                .filter(leg -> leg.what() == Leg.What.SET_UP && shot.intent().shot().name().equals(leg.shot()))
                .map(Leg::to).findFirst().orElse(null);
    }
}
