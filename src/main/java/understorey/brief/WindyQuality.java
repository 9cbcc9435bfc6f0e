package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.ExposureReason;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.Weather;
import understorey.outing.Outing;
import understorey.outing.Quality;
import understorey.reason.Reason;

/**
 * The quality of the light expected, taken down where stems would not stand in a wind: there the camera has no aperture and
 * no ISO left to stop them. A wide view sways by less than a blur and keeps its quality.
 */
final class WindyQuality implements Quality {

    /** The middle of a fresh breeze, Beaufort 5, 8.0 to 10.7 m/s, for a day of which nobody told the wind: common practice, no source. */
    private static final double FRESH_BREEZE_MS = 9.3;
    /** What smeared stems leave of a picture, so that the best is poor: common practice, no source. */
    private static final double SMEARED = 0.25;
    private static final int ROW_MINUTES = 15;

    private final Quality calm;
    private final List<Intent> intents;
    private final List<LensFit> fits;
    private final Function<Intent, SpotPlanner.Place> places;
    private final ExpectedSky sky;
    private final Outing visit;
    private final double moreMs;
    private final Map<Integer, Boolean> known = new HashMap<>();

    /**
     * In the wind.
     *
     * @param calm  of the light, wherever the wind blows
     * @param fits  of each picture; null where no lens takes it
     * @param visit  beyond whose hours nothing is photographed
     * @param moreMs wind over the forecast's, m/s
     */
    WindyQuality(Quality calm, List<Intent> intents, List<LensFit> fits, Function<Intent, SpotPlanner.Place> places, ExpectedSky sky,
                 Outing visit, double moreMs) {
        this.calm = calm;
        this.intents = intents;
        this.fits = fits;
        this.places = places;
        this.sky = sky;
        this.visit = visit;
        this.moreMs = moreMs;
    }

    @Override
    public double at(Intent intent, ZonedDateTime time) {
        double quality = calm.at(intent, time);
        boolean wanted = quality > 0 && !time.isBefore(visit.arrive()) && !time.isAfter(visit.leave());
        return wanted && smears(intent, time) ? quality * SMEARED : quality;
    }

    @Override
    public Reason worthTheWait(Intent intent, ZonedDateTime from, ZonedDateTime start) {
        return calm.worthTheWait(intent, from, start);
    }

    private boolean smears(Intent intent, ZonedDateTime time) {
        int picture = picture(intent);
        LensFit fit = fits.get(picture);
        if (fit == null) {
            return false;
        }
        List<LightAt> rows = places.apply(intent).light();
        int row = (int) Math.min(rows.size() - 1, Duration.between(rows.get(0).sun().time(), time).toMinutes() / ROW_MINUTES);
        Boolean smears = known.get(picture * rows.size() + row);
        if (smears == null) {
            smears = smears(fit, rows.get(row));
            known.put(picture * rows.size() + row, smears);
        }
        return smears;
    }

    private int picture(Intent intent) {
        int picture = 0;
        while (intents.get(picture) != intent) {
            picture++;
        }
        return picture;
    }

    private boolean smears(LensFit fit, LightAt light) {
        Weather expected = sky.weather(light.sun().time());
        Double okta = expected.okta();
        Conditions conditions = Conditions.of(light, okta == null ? ExpectedSky.MIDDLE.okta() : okta, windy(expected), null);
        for (Reason reason : Exposure.of(fit, conditions).reasons()) {
            if (reason.kind() == ExposureReason.WIND_TOO_STRONG) {
                return true;
            }
        }
        return false;
    }

    private Weather windy(Weather expected) {
        Double mean = expected.windMs();
        Double gust = expected.gustMs();
        Double windMs = mean == null && gust == null && moreMs > 0 ? Double.valueOf(FRESH_BREEZE_MS) : more(mean);
        return new Weather(expected.okta(), windMs, more(gust), expected.temperatureC(), expected.dewPointC(), expected.humidity(),
                expected.rainMm(), expected.rainChance());
    }

    private Double more(Double windMs) {
        return windMs == null ? null : Double.valueOf(windMs + moreMs);
    }
}
