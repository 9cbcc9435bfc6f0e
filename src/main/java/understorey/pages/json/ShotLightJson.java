package understorey.pages.json;

import static understorey.pages.words.Words.ifKnown;

import java.util.List;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.brief.TimedShot;
import understorey.light.Outlook;
import understorey.light.SunDirection;
import understorey.weather.Weather;
import understorey.light.WhiteBalance;
import understorey.pages.words.Figures;

/** The light on one picture as members of a JSON object. */
final class ShotLightJson {

    private final Function<Advice, String> sentences;

    ShotLightJson(Function<Advice, String> sentences) {
        this.sentences = sentences;
    }

    /** The angle to the sun by bearing, and the quality in the sky expected; null without a forecast. */
    void quality(Json json, TimedShot brief) {
        SunDirection sun = ifKnown(brief.sunlight(), TimedShot.Sunlight::now);
        json.number("light_angle_deg", ifKnown(sun, from -> Figures.lensDeg(Math.abs(from.bearingDeg()))))
                .number("light_quality", ifKnown(brief.outlook(), outlook -> Figures.share(outlook.quality())));
    }

    void more(Json json, TimedShot brief) {
        TimedShot.Sunlight sunlight = brief.sunlight();
        SunDirection sun = ifKnown(sunlight, TimedShot.Sunlight::now);
        json.number("light_angle_in_space_deg", ifKnown(sun, from -> Figures.lensDeg(from.angleDeg())))
                .word("light_side", ifKnown(sun, SunDirection::side))
                .word("sun_to_frame", ifKnown(sun, SunDirection::where))
                .word("sun_part_of_frame", ifKnown(sun, SunDirection::part))
                .sentences("sun_reasons", sunlight == null ? List.of() : sunlight.reasons(), sentences)
                .objects("light_sides", sunlight == null ? List.of() : sunlight.overDay(), (object, stretch) -> object
                        .word("side", stretch.side()).ends(stretch.time()))
                .objects("light_wished", brief.wished(), this::wished)
                .sentences("polariser_reasons", brief.polariser() == null ? List.of() : brief.polariser().reasons(), sentences)
                .count("white_balance_k", ifKnown(brief.whiteBalance(), WhiteBalance::kelvin))
                .truth("green_cast", ifKnown(brief.whiteBalance(), WhiteBalance::green))
                .sentences("mist_reasons", brief.mist(), sentences)
                .object("weather", brief.weather(), ShotLightJson::weather);
    }

    private void wished(Json json, TimedShot.Wished wished) {
        Outlook outlook = wished.outlook();
        json.word("sky", wished.sky()).number("quality", Figures.share(outlook.quality()))
                .word("grade", outlook.grade()).sentences("because", outlook.because(), sentences)
                .spans("windows", outlook.windows()).word("windows_grade", outlook.best())
                .objects("spoils", outlook.spoils(), (object, spoil) -> object.ends(spoil.when())
                        .text("why", sentences.apply(spoil.why())));
    }

    /** The weather at an instant; what the forecast lacks is null. */
    static void weather(Json json, Weather weather) {
        json.number("okta", Figures.decimals(weather.okta(), 1))
                .number("wind_ms", Figures.decimals(weather.windMs(), 1))
                .number("gust_ms", Figures.decimals(weather.gustMs(), 1))
                .number("temperature_c", Figures.decimals(weather.temperatureC(), 1))
                .number("dew_point_c", Figures.decimals(weather.dewPointC(), 1))
                .number("humidity", Figures.share(weather.humidity()))
                .number("rain_mm", Figures.decimals(weather.rainMm(), 1))
                .number("rain_chance", Figures.share(weather.rainChance()));
    }
}
