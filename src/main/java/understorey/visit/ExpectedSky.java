package understorey.visit;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.plan.SkyWord;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.weather.Forecast;
import understorey.weather.Weather;

/** The weather that the author expects: the forecast, or a word for the sky, or nothing. */
public final class ExpectedSky {

    /** The middle of all skies, assumed if the sky is unknown. */
    public static final SkyWord MIDDLE = SkyWord.BROKEN;

    /** Skies that count equally if the sky is unknown. */
    public static final List<SkyWord> ANY = List.of(SkyWord.CLEAR, SkyWord.BROKEN, SkyWord.OVERCAST);

    private static final int HOURS = 24;

    private final Trip trip;
    private final boolean wind;
    /** By the date that rows without one are of. */
    private final Map<LocalDate, Forecast> forecasts = new HashMap<>();

    public ExpectedSky(Trip trip) {
        this.trip = trip;
        this.wind = trip.forecast().stream().anyMatch(hour -> hour.windMs() != null || hour.gustMs() != null);
    }

    public Weather weather(ZonedDateTime time) {
        return forecasts.computeIfAbsent(time.toLocalDate(), date -> new Forecast(trip.forecast(), date, time.getZone()))
                .weather(time, trip.sky());
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

    /** Cloud cover, 0 to 8 okta; null if unknown. */
    public @Nullable Double okta(ZonedDateTime time) {
        return weather(time).okta();
    }

    /** Cloud cover to plan for, 0 to 8 okta: of a time, and that of the middle of all skies if it is unknown. */
    public double plannedOkta(ZonedDateTime time) {
        Double okta = okta(time);
        return okta == null ? MIDDLE.okta() : okta;
    }

    /** Whether the cloud cover of any hour of the day is unknown. */
    public boolean lacksCloudOn(Interval day) {
        return Stream.iterate(day.from(), hour -> hour.isBefore(day.to()), hour -> hour.plusHours(1))
                .anyMatch(hour -> okta(hour) == null);
    }

    /** Whether any hour of the forecast has a wind. */
    public boolean hasWind() {
        return wind;
    }

    /** Weather of the nearest hour with a wind in the forecast; of the time itself if the forecast has no wind. */
    public Weather nearestWind(ZonedDateTime time) {
        Weather there = weather(time);
        if (there.hasWind() || !wind) {
            return there;
        }
        return IntStream.range(1, HOURS).boxed().flatMap(hours -> Stream.of(time.minusHours(hours), time.plusHours(hours)))
                .map(this::weather).filter(Weather::hasWind).findFirst().orElse(there);
    }

    /** Whether neither a word nor any hour of the forecast gives the cloud cover. */
    public boolean unknown() {
        return trip.sky() == null && trip.forecast().stream().allMatch(hour -> hour.okta() == null);
    }
}
