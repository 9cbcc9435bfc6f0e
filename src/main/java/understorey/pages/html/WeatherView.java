package understorey.pages.html;

import static understorey.pages.words.Words.orDash;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.pages.words.Dates;
import understorey.pages.words.Words;
import understorey.visit.WeatherHour;
import understorey.weather.Weather;

/** The weather as forecast, by the hour of the visit. */
public final class WeatherView {

    /** One hour; a dash for what the forecast does not give. */
    public record Line(String time, String cloud, String temperature, String dewPoint, String humidity, String wind,
                       String gust, String rain) {
    }

    private WeatherView() {
    }

    static List<Line> lines(Brief brief) {
        List<Line> lines = new ArrayList<>();
        for (WeatherHour hour : brief.weather()) {
            Weather weather = hour.weather();
            lines.add(new Line(Dates.clock(hour.time()), of(weather.okta(), Measure.OKTA),
                    of(weather.temperatureC(), Measure.CELSIUS), of(weather.dewPointC(), Measure.CELSIUS),
                    of(weather.humidity(), Measure.SHARE), of(weather.windMs(), Measure.WIND),
                    of(weather.gustMs(), Measure.METRES_PER_SECOND), rain(weather)));
        }
        return lines;
    }

    /** Sky, air and wind in one line; null without any figure. */
    static @Nullable String inOneLine(Weather weather) {
        List<String> said = new ArrayList<>();
        if (weather.okta() != null) {
            said.add(of(weather.okta(), Measure.OKTA) + " of cloud");
        }
        if (weather.temperatureC() != null) {
            said.add(of(weather.temperatureC(), Measure.CELSIUS));
        }
        if (weather.windMs() != null) {
            said.add("wind " + of(weather.windMs(), Measure.WIND));
        }
        if (weather.gustMs() != null) {
            said.add("gusts " + of(weather.gustMs(), Measure.METRES_PER_SECOND));
        }
        return said.isEmpty() ? null : String.join("; ", said);
    }

    private static String rain(Weather weather) {
        if (weather.rainMm() == null) {
            return Words.NONE;
        }
        String amount = weather.rainMm() == 0 ? "none" : Words.number(weather.rainMm(), 1) + " mm";
        return weather.rainChance() == null ? amount : amount + ", " + Words.percent(weather.rainChance());
    }

    private static String of(@Nullable Double value, Measure measure) {
        return orDash(value, known -> Words.of(known, measure));
    }
}
