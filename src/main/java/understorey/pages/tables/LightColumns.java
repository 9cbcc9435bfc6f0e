package understorey.pages.tables;

import static understorey.pages.tables.Column.data;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.light.LightAt;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;
import understorey.visit.WeatherHour;
import understorey.weather.Weather;

/** Sun, moon, light and weather. */
public final class LightColumns {

    /** Deeper under the horizon the sky has no colour temperature to set. */
    private static final double LOWEST_COLOUR_DEG = -6;
    private static final double LONGEST_SHADOW = 99;

    /** The weather at an instant; what the forecast lacks is absent. */
    public static final List<Column<Weather>> WEATHER = List.of(
            Column.of("okta", "Cloud", Measure.OKTA, Weather::okta),
            Column.of("temperature_c", "Air", Measure.CELSIUS, Weather::temperatureC),
            Column.of("dew_point_c", "Dew point", Measure.CELSIUS, Weather::dewPointC),
            Column.of("humidity", "Humidity", Measure.SHARE, Weather::humidity),
            Column.of("wind_ms", "Wind", Measure.WIND, Weather::windMs),
            Column.of("gust_ms", "Gusts", Measure.METRES_PER_SECOND, Weather::gustMs),
            Column.of("rain_mm", "Rain", Measure.RAIN, Weather::rainMm, LightColumns::rain),
            data("rain_chance", Measure.SHARE, Weather::rainChance));

    /** The forecast by the hour. */
    public static final List<Column<WeatherHour>> FORECAST = Column.all(
            List.of(Column.of("time", "Time", Measure.WORD, WeatherHour::time)), Column.part(WEATHER, WeatherHour::weather));

    /** What differs from place to place at one time. */
    public static final List<Column<LightAt>> FLOOR = Column.under("Forest floor", List.of(
            data("above_skyline", LightAt::aboveSkyline),
            Column.of("floor_ev100.fleck", "sun", Measure.EV100_NUMBER, light -> light.floor().fleck()),
            Column.of("fleck_share", "sunlit", Measure.SHARE, LightAt::fleckShare, (light, wording) ->
                    light.aboveSkyline() ? wording.of(light.fleckShare(), Measure.SHARE) : Words.NONE),
            Column.of("floor_ev100.shade", "shade", Measure.EV100_NUMBER, light -> light.floor().shade()),
            Column.of("floor_ev100.broken", "broken", Measure.EV100_NUMBER, light -> light.floor().broken()),
            Column.of("floor_ev100.overcast", "overcast", Measure.EV100_NUMBER, light -> light.floor().overcast())));

    /** Rise and set, twilights, low sun. */
    public static final List<Column<SunDay>> SUN = List.of(
            Column.text("Sun", Measure.WORD, (sun, wording) -> sun.upAllDay() ? "does not set on this day"
                    : sun.downAllDay() ? "does not rise on this day" : ""),
            pair("astronomical_dawn", "Astronomical dawn, dusk", SunDay::astronomicalDawn, SunDay::astronomicalDusk),
            data("astronomical_dusk", SunDay::astronomicalDusk),
            pair("nautical_dawn", "Nautical dawn, dusk", SunDay::nauticalDawn, SunDay::nauticalDusk),
            data("nautical_dusk", SunDay::nauticalDusk),
            pair("civil_dawn", "Civil dawn, dusk", SunDay::civilDawn, SunDay::civilDusk),
            data("civil_dusk", SunDay::civilDusk),
            Column.of("deep_twilight_morning", "Deep twilight (blue hour), morning", Measure.WORD, SunDay::deepTwilightMorning),
            Column.of("low_sun_morning", "Low sun (golden hour), morning", Measure.WORD, SunDay::lowSunMorning),
            pair("sunrise", "Sunrise, sunset (level horizon)", SunDay::sunrise, SunDay::sunset),
            data("sunset", SunDay::sunset),
            Column.of("solar_noon", "Solar noon", Measure.WORD, SunDay::solarNoon, (sun, wording) -> wording.clock().of(sun.solarNoon())
                    + ", sun at " + wording.of(sun.noonAltitudeDeg(), Measure.ALTITUDE)),
            data("noon_altitude_deg", Measure.ALTITUDE, SunDay::noonAltitudeDeg),
            Column.of("low_sun_evening", "Low sun (golden hour), evening", Measure.WORD, SunDay::lowSunEvening),
            Column.of("deep_twilight_evening", "Deep twilight (blue hour), evening", Measure.WORD, SunDay::deepTwilightEvening),
            data("up_all_day", SunDay::upAllDay),
            data("down_all_day", SunDay::downAllDay));

    public static final List<Column<MoonDay>> MOON = List.of(
            Column.of("rise", "Moonrise, moonset", Measure.WORD, MoonDay::rise, (moon, wording) -> moon.upAllDay() ? "up all day"
                    : moon.downAllDay() ? "down all day" : wording.clock().of(moon.rise()) + ", " + wording.clock().of(moon.set())),
            data("set", MoonDay::set),
            Column.of("illuminated_fraction", "Moon", Measure.SHARE, MoonDay::illuminatedFraction, (moon, wording) ->
                    wording.of(moon.illuminatedFraction(), Measure.SHARE) + " lit, " + (moon.phaseDeg() < 180 ? "waxing" : "waning")),
            data("phase_deg", Measure.PHASE, MoonDay::phaseDeg),
            data("up_all_day", MoonDay::upAllDay),
            data("down_all_day", MoonDay::downAllDay));

    private LightColumns() {
    }

    /**
     * The light by the time of day.
     *
     * @param horizon head of the column that shows whether the sun is above it
     */
    public static List<Column<LightAt>> day(String horizon) {
        return Column.all(List.of(Column.of("time", "Time", Measure.WORD, LightAt::time)),
                Column.under("Sun", List.of(
                        Column.of("sun_azimuth_deg", "bearing", Measure.BEARING, light -> light.sun().azimuthDeg(), (light, wording) ->
                                wording.of(light.sun().azimuthDeg(), Measure.BEARING) + "\u00a0"
                                        + wording.of(light.sun().azimuthDeg(), Measure.COMPASS)),
                        Column.of("sun_altitude_deg", "height", Measure.ALTITUDE, light -> light.sun().altitudeDeg()),
                        Column.of("shadow_per_height", "shadow", Measure.RATIO, LightAt::shadowPerHeight, LightColumns::shadow),
                        Column.text(horizon, Measure.WORD, (light, wording) -> light.aboveSkyline() ? "above"
                                : light.sun().apparentAltitudeDeg() > 0 ? "behind" : "set"))),
                Column.under("Open ground", List.of(
                        Column.of("open_ev100.sun", "sun", Measure.EV100_NUMBER, light -> light.open().sun()),
                        Column.of("open_ev100.shade", "shade", Measure.EV100_NUMBER, light -> light.open().shade()),
                        data("open_ev100.broken", Measure.EV100_NUMBER, light -> light.open().broken()),
                        data("open_ev100.overcast", Measure.EV100_NUMBER, light -> light.open().overcast()))),
                FLOOR,
                List.of(Column.of("colour_temperature_k", "K", Measure.KELVIN, LightAt::colourTemperatureK, (light, wording) ->
                                light.sun().altitudeDeg() > LOWEST_COLOUR_DEG ? wording.of(light.colourTemperatureK(), Measure.COUNT) : Words.NONE),
                        data("moon_ev100", Measure.EV100, LightAt::moonEv)));
    }

    /** The light by the time of a night with moonlight. */
    public static List<Column<LightAt>> moonlit(String horizon) {
        return Column.all(day(horizon), Column.under("Moon alone", List.of(
                Column.text("open", Measure.EV100_NUMBER, (light, wording) -> wording.of(light.moonEv(), Measure.EV100_NUMBER)),
                Column.text("floor", Measure.EV100_NUMBER, (light, wording) -> wording.of(light.moonFloorEv(), Measure.EV100_NUMBER)))));
    }

    private static String shadow(LightAt light, Sentences wording) {
        Double shadow = light.shadowPerHeight();
        return wording.of(shadow == null || shadow > LONGEST_SHADOW ? null : shadow, Measure.RATIO);
    }

    private static Column<SunDay> pair(String key, String head, Function<SunDay, @Nullable ZonedDateTime> morning,
                                       Function<SunDay, @Nullable ZonedDateTime> evening) {
        return Column.of(key, head, Measure.WORD, morning::apply, (sun, wording) ->
                wording.clock().of(morning.apply(sun)) + ", " + wording.clock().of(evening.apply(sun)));
    }

    private static String rain(Weather weather, Sentences wording) {
        if (weather.rainMm() == null) {
            return Words.NONE;
        }
        String amount = weather.rainMm() == 0 ? "none" : wording.of(weather.rainMm(), Measure.RAIN);
        return weather.rainChance() == null ? amount : amount + ", " + wording.of(weather.rainChance(), Measure.SHARE);
    }
}
