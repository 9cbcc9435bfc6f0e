package understorey.visit;

import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.light.LightDay;
import understorey.light.Moment;
import understorey.plan.SkyWord;
import understorey.sky.Interval;
import understorey.weather.Drops;

/** The light of the day at each place, under the expected sky and under any other; computed once each. */
public final class SkyDays {

    private final ExpectedSky sky;
    private final Drops drops;
    private final Map<@Nullable SkyWord, Map<Place, List<Moment>>> known = new HashMap<>();

    public SkyDays(ExpectedSky sky, Drops drops) {
        this.sky = sky;
        this.drops = drops;
    }

    /** The light of the day at a place; under the expected sky if {@code word} is null. */
    public LightDay day(@Nullable SkyWord word, Place place) {
        return new LightDay(word == null ? this::expected : time -> word.okta(), sky::weather, place.mist(), drops);
    }

    /** Moments every 5 minutes. Under the expected sky (null) hours with an unknown cloud cover are left out. */
    public List<Moment> moments(@Nullable SkyWord word, Place place) {
        return known.computeIfAbsent(word, key -> new IdentityHashMap<>())
                .computeIfAbsent(place, key -> day(word, place).over(place.light()));
    }

    /** Whether the expected sky is unknown for a part of the day. */
    public boolean lacksCloudOn(Interval day) {
        return sky.lacksCloudOn(day);
    }

    private double expected(ZonedDateTime time) {
        Double okta = sky.okta(time);
        return okta == null ? Double.NaN : okta;
    }
}
