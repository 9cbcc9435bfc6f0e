package understorey.visit;

import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import understorey.light.Weather;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.plan.Trip;

/** What the author expects of the weather: the forecast, else a word for the sky, else nothing. */
public final class ExpectedSky {

    /** The middle of all skies, to begin with where nobody said. */
    public static final SkyWord MIDDLE = SkyWord.BROKEN;

    private static final int HOURS = 24;

    private final Trip trip;

    public ExpectedSky(Trip trip) {
        this.trip = trip;
    }

    public Weather weather(ZonedDateTime time) {
        return Weather.at(time, trip.forecast(), trip.sky());
    }

    /** Every full hour from before one time to after another; none without a forecast. */
    public List<WeatherHour> hours(ZonedDateTime from, ZonedDateTime to) {
        List<WeatherHour> hours = new ArrayList<>();
        ZonedDateTime hour = from.truncatedTo(ChronoUnit.HOURS);
        while (!trip.forecast().isEmpty() && hour.isBefore(to.plusHours(1))) {
            hours.add(new WeatherHour(hour, weather(hour)));
            hour = hour.plusHours(1);
        }
        return List.copyOf(hours);
    }

    /** Cloud cover, 0 to 8 okta; null when nobody said. */
    public Double okta(ZonedDateTime time) {
        return weather(time).okta();
    }

    /** Some hour of that day nobody told the clouds of. */
    public boolean silentOn(ZonedDateTime start) {
        boolean silent = false;
        for (ZonedDateTime hour = start; hour.isBefore(start.plusDays(1)); hour = hour.plusHours(1)) {
            silent |= okta(hour) == null;
        }
        return silent;
    }

    /** Some hour of the forecast tells a wind. */
    public boolean tellsWind() {
        boolean tells = false;
        for (ForecastHour hour : trip.forecast()) {
            tells |= hour.windMs() != null || hour.gustMs() != null;
        }
        return tells;
    }

    /** Of the hour nearest to a time whose wind the forecast tells: beyond its rows it blows on. Of the time itself where it tells none. */
    public Weather nearestWind(ZonedDateTime time) {
        Weather there = weather(time);
        if (tells(there) || !tellsWind()) {
            return there;
        }
        for (int hours = 1; hours < HOURS; hours++) {
            for (ZonedDateTime near : List.of(time.minusHours(hours), time.plusHours(hours))) {
                Weather weather = weather(near);
                if (tells(weather)) {
                    return weather;
                }
            }
        }
        return there;
    }

    private static boolean tells(Weather weather) {
        return weather.windMs() != null || weather.gustMs() != null;
    }

    /** Neither a word nor any hour of a forecast tells the clouds. */
    public boolean unknown() {
        boolean unknown = trip.sky() == null;
        for (ForecastHour hour : trip.forecast()) {
            unknown &= hour.okta() == null;
        }
        return unknown;
    }
}
