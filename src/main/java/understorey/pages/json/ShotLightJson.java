package understorey.pages.json;

import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import understorey.advice.Advice;
import understorey.brief.TimedShot;
import understorey.light.Outlook;
import understorey.light.SunDirection;
import understorey.light.Weather;
import understorey.pages.words.Figures;

/** The light on one picture as members of a JSON object. */
final class ShotLightJson {

    private final Function<Advice, String> sentences;

    ShotLightJson(Function<Advice, String> sentences) {
        this.sentences = sentences;
    }

    /** The angle to the sun by bearing, and the quality in the sky expected; null without a forecast. */
    void quality(Json json, TimedShot brief) throws IOException {
        SunDirection sun = sun(brief);
        json.number("light_angle_deg", sun == null ? null : Figures.lensDeg(Math.abs(sun.bearingDeg())))
                .number("light_quality", brief.outlook() == null ? null : Figures.share(brief.outlook().quality()));
    }

    void more(Json json, TimedShot brief) throws IOException {
        SunDirection sun = sun(brief);
        json.number("light_angle_in_space_deg", sun == null ? null : Figures.lensDeg(sun.angleDeg()))
                .word("light_side", sun == null ? null : sun.side())
                .word("sun_to_frame", sun == null ? null : sun.where())
                .word("sun_part_of_frame", sun == null ? null : sun.part())
                .told("sun_reasons", brief.sunlight() == null ? List.of() : brief.sunlight().reasons(), sentences);
        json.list("light_sides");
        if (brief.sunlight() != null) {
            for (SunDirection.Stretch stretch : brief.sunlight().overDay()) {
                json.item().word("side", stretch.side()).ends(stretch.time()).end();
            }
        }
        json.endList().list("light_wished");
        for (TimedShot.Wished wished : brief.wished()) {
            wished(json.item(), wished);
            json.end();
        }
        json.endList()
                .told("polariser_reasons", brief.polariser() == null ? List.of() : brief.polariser().reasons(), sentences)
                .count("white_balance_k", brief.whiteBalance() == null ? null : brief.whiteBalance().kelvin())
                .truth("green_cast", brief.whiteBalance() == null ? null : brief.whiteBalance().green());
        weather(json.object("weather"), brief.weather());
        json.end();
    }

    private static SunDirection sun(TimedShot brief) {
        return brief.sunlight() == null ? null : brief.sunlight().now();
    }

    private void wished(Json json, TimedShot.Wished wished) throws IOException {
        Outlook outlook = wished.outlook();
        json.word("sky", wished.sky()).number("quality", Figures.share(outlook.quality()))
                .word("grade", outlook.grade()).told("because", outlook.because(), sentences)
                .spans("windows", outlook.windows()).word("windows_grade", outlook.best())
                .list("spoils");
        for (Outlook.Spoil spoil : outlook.spoils()) {
            json.item().ends(spoil.when()).text("why", sentences.apply(spoil.why())).end();
        }
        json.endList();
    }

    /** The weather at an instant; what the forecast lacks is null. */
    static void weather(Json json, Weather weather) throws IOException {
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
