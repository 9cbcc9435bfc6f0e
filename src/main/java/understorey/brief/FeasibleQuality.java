package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.WaitAdvice;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Feasibility;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.SunDirection;
import understorey.optics.Projection;
import understorey.order.Quality;
import understorey.plan.SkyWord;
import understorey.visit.Day;
import understorey.weather.Weather;

/**
 * The quality of the light for a picture under one sky, and how well the picture can be taken in it: depth of field, shutter speed in hand
 * and wind, ISO, one frame or a bracket ({@link Feasibility}). So of two hours of soft light the brighter, calmer one counts more.
 */
final class FeasibleQuality implements Quality {

    private static final double ROW_SECONDS = 900;
    /** Less light than that is no reason to wait. */
    private static final double LEAST_STOPS = 1;

    private final Quality light;
    private final Day day;
    private final FittedShot shot;
    private final LensFit fit;
    private final @Nullable Projection camera;
    private final Sky sky;
    private final double moreMs;
    /** By row of the day; not a number where nothing has asked yet. */
    private final double[] feasible;

    private FeasibleQuality(Quality light, Day day, FittedShot shot, LensFit fit, Sky sky, double moreMs, double[] feasible) {
        this.light = light;
        this.day = day;
        this.shot = shot;
        this.fit = fit;
        this.camera = shot.camera();
        this.sky = sky;
        this.moreMs = moreMs;
        this.feasible = feasible;
    }

    /**
     * For a picture with a lens.
     *
     * @param moreMs wind over the forecast's, m/s
     */
    static FeasibleQuality of(Quality light, Day day, FittedShot shot, LensFit fit, Sky sky, double moreMs) {
        double[] feasible = new double[shot.place().light().size()];
        Arrays.fill(feasible, Double.NaN);
        return new FeasibleQuality(light, day, shot, fit, sky, moreMs, feasible);
    }

    /** The same settings in light of another quality. */
    FeasibleQuality with(Quality other) {
        return new FeasibleQuality(other, day, shot, fit, sky, moreMs, feasible);
    }

    @Override
    public double at(ZonedDateTime time) {
        return light.at(time);
    }

    @Override
    public @Nullable Advice worthTheWait(ZonedDateTime from, ZonedDateTime start) {
        return light.worthTheWait(from, start);
    }

    @Override
    public @Nullable SkyWord sky(ZonedDateTime time) {
        return sky.instead() || day.sky().okta(time) == null ? sky.word() : null;
    }

    /** More light to work by, or less wind. */
    @Override
    public @Nullable Advice easierSettings(ZonedDateTime from, ZonedDateTime start) {
        double stops = conditions((int) Math.round(rowAt(start))).ev100() - conditions((int) Math.round(rowAt(from))).ev100();
        return feasibility(start) <= feasibility(from) ? null
                : stops >= LEAST_STOPS ? new WaitAdvice.WaitForMoreLight(start, stops) : new WaitAdvice.WaitForEasierSettings(start);
    }

    /** Linear between the rows; nothing is photographed outside the hours of the visit. */
    @Override
    public double feasibility(ZonedDateTime time) {
        if (time.isBefore(day.hours().arrive()) || time.isAfter(day.hours().leave())) {
            return 1;
        }
        double row = rowAt(time);
        int before = (int) row;
        int after = Math.min(feasible.length - 1, before + 1);
        return feasible(before) + (row - before) * (feasible(after) - feasible(before));
    }

    private double feasible(int row) {
        if (Double.isNaN(feasible[row])) {
            feasible[row] = Feasibility.of(Exposure.of(fit, conditions(row)));
        }
        return feasible[row];
    }

    private double rowAt(ZonedDateTime time) {
        double row = Duration.between(shot.place().light().get(0).time(), time).toSeconds() / ROW_SECONDS;
        return Math.max(0, Math.min(feasible.length - 1, row));
    }

    private Conditions conditions(int row) {
        LightAt there = shot.place().light().get(row);
        SunDirection sun = camera == null ? null : SunDirection.of(there.sun(), camera);
        return Conditions.of(there, sky.okta(day, there.time()), windy(day.sky().nearestWind(there.time())), sun,
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
