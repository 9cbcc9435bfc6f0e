package understorey.visit;

import java.time.ZonedDateTime;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import understorey.light.Drops;
import understorey.light.LightDay;
import understorey.light.Moment;
import understorey.plan.SkyWord;

/** The days of the places under the sky expected (no word) and under each other one, as far as anybody asks. */
public final class SkyDays {

    private final ExpectedSky sky;
    private final Drops drops;
    private final Map<SkyWord, Map<Place, List<Moment>>> known = new HashMap<>();

    public SkyDays(ExpectedSky sky, Drops drops) {
        this.sky = sky;
        this.drops = drops;
    }

    /** Under the sky expected when {@code word} is null. */
    public LightDay day(SkyWord word, Place place) {
        return new LightDay(word == null ? this::expected : time -> word.okta(), place.mist(), drops);
    }

    /** Every five minutes; hours of which nobody told the clouds are left out when {@code word} is null. */
    public List<Moment> moments(SkyWord word, Place place) {
        Map<Place, List<Moment>> under = known.get(word);
        if (under == null) {
            under = new IdentityHashMap<>();
            known.put(word, under);
        }
        List<Moment> moments = under.get(place);
        if (moments == null) {
            moments = day(word, place).over(place.light());
            under.put(place, moments);
        }
        return moments;
    }

    /** The sky expected is not told for the whole day. */
    public boolean silentOn(ZonedDateTime start) {
        return sky.silentOn(start);
    }

    private double expected(ZonedDateTime time) {
        Double okta = sky.okta(time);
        return okta == null ? Double.NaN : okta;
    }
}
