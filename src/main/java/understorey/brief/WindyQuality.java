package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.order.Quality;
import understorey.visit.Day;
import understorey.weather.Weather;

/**
 * The quality of the light for a picture, lowered where its flowers would blur: there the camera has no aperture and no ISO
 * left to stop them. A wide view blurs by less than passes for sharp and keeps its quality.
 */
final class WindyQuality implements Quality {

    /** What blurred flowers leave of a picture, so that the best is poor: common practice, no source. */
    private static final double BLURRED = 0.25;
    /** The middle of a fresh breeze, Beaufort 5, 8.0 to 10.7 m/s, for a day without a wind forecast: common practice, no source. */
    private static final double FRESH_BREEZE_MS = 9.3;
    private static final int ROW_MINUTES = 15;

    private final Quality calm;
    private final Day day;
    private final LensFit fit;
    private final List<LightAt> rows;
    private final double moreMs;
    /** By row of the day; null where nothing has asked yet. */
    private final @Nullable Boolean[] blurs;

    /**
     * In the wind.
     *
     * @param calm   quality of the light as it is
     * @param rows   the light over the day at the place of the picture
     * @param moreMs wind over the forecast's, m/s
     */
    WindyQuality(Quality calm, Day day, LensFit fit, List<LightAt> rows, double moreMs) {
        this.calm = calm;
        this.day = day;
        this.fit = fit;
        this.rows = rows;
        this.moreMs = moreMs;
        this.blurs = new Boolean[rows.size()];
    }

    @Override
    public double at(ZonedDateTime time) {
        double quality = calm.at(time);
        return quality > 0 && blurs(time) ? quality * BLURRED : quality;
    }

    @Override
    public @Nullable Advice worthTheWait(ZonedDateTime from, ZonedDateTime start) {
        return calm.worthTheWait(from, start);
    }

    /** Nothing is photographed outside the hours of the visit. */
    private boolean blurs(ZonedDateTime time) {
        if (time.isBefore(day.hours().arrive()) || time.isAfter(day.hours().leave())) {
            return false;
        }
        int row = (int) Math.min(rows.size() - 1, Duration.between(rows.get(0).sun().time(), time).toMinutes() / ROW_MINUTES);
        if (blurs[row] == null) {
            blurs[row] = blurs(rows.get(row));
        }
        return blurs[row];
    }

    private boolean blurs(LightAt light) {
        ZonedDateTime time = light.sun().time();
        Weather weather = windy(day.sky().nearestWind(time));
        return Exposure.of(fit, Conditions.of(light, day.sky().plannedOkta(time), weather, null)).smears();
    }

    private Weather windy(Weather expected) {
        Double mean = expected.windMs();
        Double gust = expected.gustMs();
        Double windMs = mean == null && gust == null && moreMs > 0 ? Double.valueOf(FRESH_BREEZE_MS) : more(mean);
        return new Weather(expected.okta(), windMs, more(gust), expected.temperatureC(), expected.dewPointC(), expected.humidity(),
                expected.rainMm(), expected.rainChance());
    }

    private @Nullable Double more(@Nullable Double windMs) {
        return windMs == null ? null : Double.valueOf(windMs + moreMs);
    }
}
