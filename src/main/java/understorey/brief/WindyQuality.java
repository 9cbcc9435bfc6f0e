package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.advice.Advice;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.Weather;
import understorey.order.Quality;
import understorey.visit.Day;
import understorey.visit.ExpectedSky;

/**
 * The quality of the light for a picture, lowered where its flowers would blur: there the camera has no aperture and no ISO
 * left to stop them. A wide view blurs by less than passes for sharp and keeps its quality.
 */
final class WindyQuality implements Quality {

    /** What blurred flowers leave of a picture, so that the best is poor: common practice, no source. */
    private static final double BLURRED = 0.25;
    private static final int ROW_MINUTES = 15;

    private final Quality calm;
    private final Day day;
    private final LensFit fit;
    private final List<LightAt> rows;
    private final double moreMs;
    /** By row of the day; null where nothing has asked yet. */
    private final Boolean[] blurs;

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
    public Advice worthTheWait(ZonedDateTime from, ZonedDateTime start) {
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
        Double okta = day.sky().okta(time);
        Conditions conditions = Conditions.of(light, okta == null ? ExpectedSky.MIDDLE.okta() : okta, windy(day.sky().nearestWind(time)), null,
                fit.intent().shot().subject().heightM());
        return Exposure.of(fit, conditions).smears();
    }

    /** Without a forecast, more than the wind that is assumed. */
    private Weather windy(Weather expected) {
        Double mean = expected.windMs() == null && expected.gustMs() == null ? Double.valueOf(Conditions.ASSUMED_WIND_MS) : expected.windMs();
        return new Weather(expected.okta(), more(mean), more(expected.gustMs()), expected.temperatureC(), expected.dewPointC(),
                expected.humidity(), expected.rainMm(), expected.rainChance());
    }

    private Double more(Double windMs) {
        return windMs == null ? null : Double.valueOf(windMs + moreMs);
    }
}
