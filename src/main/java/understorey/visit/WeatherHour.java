package understorey.visit;

import java.time.ZonedDateTime;
import understorey.weather.Weather;

/** The weather of the forecast at a full hour. */
public record WeatherHour(ZonedDateTime time, Weather weather) {

    /** Less rain, or a smaller chance of it, is not worth a rain cover: common practice, no source. */
    private static final double LEAST_MM = 0.1;
    private static final double LEAST_CHANCE = 0.2;

    /** Whether no rain is forecast for this hour; false where the forecast is silent about rain. */
    public boolean dry() {
        return !wet() && (weather.rainMm() != null || weather.rainChance() != null);
    }

    /** Whether rain is forecast for this hour, or likely enough. */
    public boolean wet() {
        Double amount = weather.rainMm();
        Double chance = weather.rainChance();
        return chance == null ? amount != null && amount >= LEAST_MM : chance >= LEAST_CHANCE && (amount == null || amount >= LEAST_MM);
    }
}
