package understorey.pages.html;

import static understorey.pages.words.Words.orDash;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.pages.words.Units;
import understorey.weather.Weather;

/** The weather at an instant. */
public final class WeatherView {

    private WeatherView() {
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

    private static String of(@Nullable Double value, Measure measure) {
        return orDash(value, known -> Units.METRIC.of(known, measure));
    }
}
