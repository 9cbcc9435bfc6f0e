package understorey.visit;

import java.time.ZonedDateTime;
import understorey.weather.Weather;

/** The weather of the forecast at a full hour. */
public record WeatherHour(ZonedDateTime time, Weather weather) {
}
