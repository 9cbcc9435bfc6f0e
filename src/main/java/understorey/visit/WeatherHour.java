package understorey.visit;

import java.time.ZonedDateTime;
import understorey.weather.Weather;

/** The weather at a full hour, as far as the forecast goes. */
public record WeatherHour(ZonedDateTime time, Weather weather) {
}
