package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.Weather;
import understorey.sky.Interval;

/** When the stems of a picture would not stand in a wind: there the camera has no aperture and no ISO left to stop them. */
final class StemSmear {

    /** The middle of a fresh breeze, Beaufort 5, 8.0 to 10.7 m/s, for a day of which nobody told the wind: common practice, no source. */
    private static final double FRESH_BREEZE_MS = 9.3;
    private static final int ROW_MINUTES = 15;

    private final List<Intent> intents;
    private final List<LensFit> fits;
    private final Function<Intent, SpotPlanner.Place> places;
    private final ExpectedSky sky;
    private final Interval visit;
    private final double moreMs;
    private final Map<Integer, Boolean> known = new HashMap<>();

    /**
     * In the wind.
     *
     * @param fits   of each picture; null where no lens takes it
     * @param visit  beyond whose hours nothing is photographed
     * @param moreMs wind over the forecast's, m/s
     */
    StemSmear(List<Intent> intents, List<LensFit> fits, Function<Intent, SpotPlanner.Place> places, ExpectedSky sky, Interval visit, double moreMs) {
        this.intents = intents;
        this.fits = fits;
        this.places = places;
        this.sky = sky;
        this.visit = visit;
        this.moreMs = moreMs;
    }

    boolean at(Intent intent, ZonedDateTime time) {
        LensFit fit = time.isBefore(visit.from()) || time.isAfter(visit.to()) ? null : fits.get(picture(intent));
        if (fit == null) {
            return false;
        }
        List<LightAt> rows = places.apply(intent).light();
        int row = (int) Math.min(rows.size() - 1, Duration.between(rows.get(0).sun().time(), time).toMinutes() / ROW_MINUTES);
        int key = picture(intent) * rows.size() + row;
        Boolean smears = known.get(key);
        if (smears == null) {
            smears = smears(fit, rows.get(row));
            known.put(key, smears);
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
        Conditions conditions = Conditions.of(light, okta == null ? ExpectedSky.MIDDLE.okta() : okta, windy(sky.nearestWind(light.sun().time())), null);
        return Exposure.of(fit, conditions).smears();
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
