package understorey.brief;

import java.time.ZonedDateTime;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.WaitAdvice;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Feasibility;
import understorey.exposure.Metering;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.order.Quality;
import understorey.plan.SkyWord;
import understorey.visit.Day;
import understorey.weather.Weather;

/**
 * The quality of the light for a picture, and how well the picture can be taken in it: depth of field, shutter speed in hand
 * and wind, ISO, one frame or a bracket ({@link Feasibility}). So of two hours of soft light the brighter, calmer one counts more.
 */
final class FeasibleQuality implements Quality {

    /** Less light than that is no reason to wait. */
    private static final double LEAST_STOPS = 1;

    private final Quality light;
    private final Day day;
    private final LensFit fit;
    private final List<LightAt> rows;
    private final @Nullable SkyWord word;
    private final double moreMs;
    /** By row of the day; not a number where nothing has asked yet. */
    private final double[] feasible;

    /**
     * For a picture with a lens.
     *
     * @param rows   the light over the day at the place of the picture, every quarter of an hour
     * @param word   the sky; null for the sky expected
     * @param moreMs wind over the forecast's, m/s
     */
    FeasibleQuality(Quality light, Day day, LensFit fit, List<LightAt> rows, @Nullable SkyWord word, double moreMs) {
        this.light = light;
        this.day = day;
        this.fit = fit;
        this.rows = rows;
        this.word = word;
        this.moreMs = moreMs;
        this.feasible = new double[rows.size()];
        Arrays.fill(feasible, Double.NaN);
    }

    @Override
    public double at(ZonedDateTime time) {
        return light.at(time);
    }

    @Override
    public @Nullable Advice worthTheWait(ZonedDateTime from, ZonedDateTime start) {
        return light.worthTheWait(from, start);
    }

    /** More light to work by, or less wind. */
    @Override
    public @Nullable Advice easierSettings(ZonedDateTime from, ZonedDateTime start) {
        double stops = conditions(LightTable.between(rows, start)).ev100() - conditions(LightTable.between(rows, from)).ev100();
        return feasibility(start) <= feasibility(from) ? null
                : stops >= LEAST_STOPS ? new WaitAdvice.WaitForMoreLight(start, stops) : new WaitAdvice.WaitForEasierSettings(start);
    }

    /** Linear between the rows; nothing is photographed outside the hours of the visit. */
    @Override
    public double feasibility(ZonedDateTime time) {
        if (time.isBefore(day.hours().arrive()) || time.isAfter(day.hours().leave())) {
            return 1;
        }
        return LightTable.place(rows, time).mix(this::feasible);
    }

    private double feasible(int row) {
        if (Double.isNaN(feasible[row])) {
            feasible[row] = Feasibility.of(Exposure.of(fit, conditions(rows.get(row))));
        }
        return feasible[row];
    }

    private Conditions conditions(LightAt light) {
        double okta = word == null ? day.sky().plannedOkta(light.time()) : word.okta();
        return Conditions.of(light, Metering.of(fit, light, okta), okta, windy(day.sky().nearestWind(light.time())), null,
                fit.intent().shot().subject().heightM());
    }

    /** Without a forecast, more than the wind that is assumed. */
    private Weather windy(Weather expected) {
        return new Weather(expected.okta(), more(expected.hasWind() ? expected.windMs() : Double.valueOf(Conditions.ASSUMED_WIND_MS)),
                more(expected.gustMs()), expected.temperatureC(), expected.dewPointC(), expected.humidity(), expected.rainMm(),
                expected.rainChance());
    }

    private @Nullable Double more(@Nullable Double windMs) {
        return windMs == null ? null : Double.valueOf(windMs + moreMs);
    }
}
