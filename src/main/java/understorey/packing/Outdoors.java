package understorey.packing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.visit.Day;
import understorey.visit.HeadTorchHours;
import understorey.visit.WeatherHour;

/**
 * What the hours of a visit ask of the bag.
 *
 * @param coldestC lowest temperature, °C; null if unknown
 * @param torch    hours that need a head torch
 * @param light    true where no hour needs one, from an hour before the visit to an hour after it
 * @param dry      true where the forecast has no rain for the visit; false without a forecast
 */
public record Outdoors(@Nullable Double coldestC, HeadTorchHours torch, boolean light, boolean dry) {

    /** A late return still has light: common practice, no source. */
    private static final int MARGIN_HOURS = 1;

    /** What a day asks. */
    public static Outdoors of(Day day) {
        HeadTorchHours around = HeadTorchHours.of(day.darkest(), day.hours().arrive().minusHours(MARGIN_HOURS),
                day.hours().end().plusHours(MARGIN_HOURS));
        List<WeatherHour> weather = day.sky().hours(day.hours().arrive(), day.hours().leave());
        return new Outdoors(Cold.coldestC(day.trip().forecast(), day.hours().visit()), day.headTorch(), !around.needed(),
                !weather.isEmpty() && weather.stream().allMatch(WeatherHour::dry));
    }
}
