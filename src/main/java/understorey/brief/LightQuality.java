package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import understorey.kit.Intent;
import understorey.light.Moment;
import understorey.light.Outlook;
import understorey.outing.Quality;
import understorey.plan.SkyWord;

/**
 * How well the light answers each picture's wishes over the day: under one sky, and where the sky expected is told for some
 * hours only, under the middle of all skies in the others. A picture that wishes for nothing wants daylight.
 */
final class LightQuality implements Quality {

    /** Between two moments of a day. */
    private static final long STEP_SECONDS = 300;

    private final Quality daylight;
    private final Function<Intent, SpotPlanner.Place> places;
    private final SkyDays days;
    private final SkyWord word;
    private final ZonedDateTime start;
    private final Map<Intent, Map<Long, Double>> known = new IdentityHashMap<>();

    /**
     * Under a sky.
     *
     * @param word  null for the sky expected
     * @param start of the local day
     */
    LightQuality(Quality daylight, Function<Intent, SpotPlanner.Place> places, SkyDays days, SkyWord word, ZonedDateTime start) {
        this.daylight = daylight;
        this.places = places;
        this.days = days;
        this.word = word;
        this.start = start;
    }

    @Override
    public double at(Intent intent, ZonedDateTime time) {
        if (intent.shot().light().isEmpty()) {
            return daylight.at(intent, time);
        }
        Map<Long, Double> qualities = known.get(intent);
        if (qualities == null) {
            qualities = overDay(intent);
            known.put(intent, qualities);
        }
        return qualities.getOrDefault(step(time), 0.0);
    }

    /** By step of the day; nothing where it is too dark for any wish. */
    private Map<Long, Double> overDay(Intent intent) {
        Map<Long, Double> qualities = new HashMap<>();
        if (word == null && days.silentOn(start)) {
            add(days.moments(ExpectedSky.MIDDLE, places.apply(intent)), intent, qualities);
        }
        add(days.moments(word, places.apply(intent)), intent, qualities);
        return qualities;
    }

    private void add(List<Moment> moments, Intent intent, Map<Long, Double> qualities) {
        for (Moment moment : moments) {
            qualities.put(step(moment.sun().time()), Outlook.quality(intent.shot().light(), moment, intent.shot().facingDeg()));
        }
    }

    private long step(ZonedDateTime time) {
        return Math.floorDiv(Duration.between(start, time).toSeconds(), STEP_SECONDS);
    }
}
