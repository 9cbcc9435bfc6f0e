package understorey.light;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.weather.Drops;
import understorey.weather.Mist;
import understorey.weather.Weather;

/**
 * The moments of a day at one place, every 5 minutes from first to last light.
 *
 * @param okta cloud cover at a time, 0 to 8; not a number if unknown, and such times are left out
 * @param air  temperature and rain at a time
 */
public record LightDay(ToDoubleFunction<ZonedDateTime> okta, Function<ZonedDateTime, Weather> air, Mist mist, Drops drops) {

    private static final int STEPS = 3;
    /** Altitude of the sun below which no picture with a light wish is taken. */
    private static final double DARK_DEG = -9;

    /**
     * The moments of a day.
     *
     * @param rows every 15 minutes; the sun is linear between them
     */
    public List<Moment> over(List<LightAt> rows) {
        List<Moment> day = new ArrayList<>();
        for (int i = 1; i < rows.size(); i++) {
            LightAt from = rows.get(i - 1);
            LightAt to = rows.get(i);
            for (int step = 0; step < STEPS && Math.max(from.sun().altitudeDeg(), to.sun().altitudeDeg()) > DARK_DEG; step++) {
                Moment moment = known(step == 0 ? from : LightAt.between(from, to, (double) step / STEPS));
                if (moment != null) {
                    day.add(moment);
                }
            }
        }
        return day;
    }

    /** The moment at a time of the rows' day; null if the cloud cover is unknown. */
    public @Nullable Moment at(List<LightAt> rows, ZonedDateTime time) {
        return known(LightTable.between(rows, time));
    }

    private @Nullable Moment known(LightAt light) {
        double cloud = okta.applyAsDouble(light.time());
        return Double.isNaN(cloud) ? null : at(light, cloud);
    }

    /** The moment of a given light, under a cloud cover in okta. */
    public Moment at(LightAt light, double cloud) {
        ZonedDateTime time = light.sun().time();
        Weather weather = air.apply(time);
        return new Moment(light.sun(), light.aboveSkyline(), light.fleckShare(), light.floorEv(cloud),
                light.contrastStops(0), cloud, mist.at(time), drops.at(time), drops.chance(time), light.needsOpening(),
                orUnknown(weather.temperatureC()), orUnknown(weather.rainMm()),
                Rain.chance(weather.rainChance()));
    }

    private static double orUnknown(@Nullable Double figure) {
        return figure == null ? Double.NaN : figure;
    }
}
