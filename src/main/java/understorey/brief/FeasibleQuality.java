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
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.light.SunDirection;
import understorey.optics.Projection;
import understorey.order.Quality;
import understorey.plan.Shot;
import understorey.plan.SkyWord;
import understorey.visit.Day;
import understorey.weather.Weather;

/**
 * The quality of the light for a picture under one sky, and how well the picture can be taken in it: depth of field, shutter speed in hand
 * and wind, ISO, one frame or a bracket ({@link Feasibility}). So of two hours of soft light the brighter, calmer one counts more.
 */
final class FeasibleQuality implements Quality {

    /** Less light than that is no reason to wait. */
    private static final double LEAST_STOPS = 1;

    private final Quality light;
    private final Day day;
    private final FittedShot shot;
    private final LensFit fit;
    private final List<Darkening> filters;
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
        this.filters = Darkening.of(day.trip().gear(), fit);
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
    public double kept(ZonedDateTime time) {
        return light.kept(time);
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
        List<LightAt> rows = shot.place().light();
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
        return LightTable.place(shot.place().light(), time).mix(this::feasible);
    }

    private double feasible(int row) {
        if (Double.isNaN(feasible[row])) {
            feasible[row] = Feasibility.of(Exposure.of(fit, filters, conditions(shot.place().light().get(row))));
        }
        return feasible[row];
    }

    private Conditions conditions(LightAt there) {
        SunDirection sun = camera == null ? null : SunDirection.of(there.sun(), camera);
        double okta = sky.okta(day, there.time());
        Shot picture = fit.intent().shot();
        return Conditions.of(there, MistPlan.metering(picture, fit, shot.place().mist(), there, okta), okta, windy(day.sky().nearestWind(there.time())), sun,
                picture.subject().heightM());
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
