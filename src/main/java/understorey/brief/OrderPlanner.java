package understorey.brief;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import understorey.kit.Camera;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.SmallestBag;
import understorey.kit.Verdict;
import understorey.light.Drops;
import understorey.light.LightAt;
import understorey.outing.Alternative;
import understorey.outing.Outing;
import understorey.outing.Quality;
import understorey.outing.RunningOrder;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.plan.Trip;
import understorey.sky.SunDay;

/** Plans the order of the day by the light, and what changes in it if the day turns out another. */
final class OrderPlanner {

    /** A rainy day rains all day, overcast, a millimetre an hour. */
    private static final double RAIN_OKTA = 8;
    private static final double RAIN_MM = 1;
    private static final int HOURS = 24;
    /** A windy day has that much over the mean wind and the gusts of the forecast, m/s: common practice, no source. */
    private static final double MORE_WIND_MS = 4;

    private final Trip trip;
    private final LocalDate date;
    private final SunDay sun;
    private final List<LightAt> darkest;
    private final List<Intent> intents;
    private final List<LensFit> fits;
    private final Set<Intent> hopeless;
    private final List<String> mounted;
    private final Function<Intent, SpotPlanner.Place> places;
    private final Quality daylight;

    /**
     * For a trip on a date.
     *
     * @param darkest floor visited, row by row
     * @param fits     of each picture; null where no lens takes it
     * @param others   the bags of companions
     */
    OrderPlanner(Trip trip, LocalDate date, SunDay sun, List<LightAt> darkest, List<Intent> intents, List<LensFit> fits,
                 List<SmallestBag> others, Function<Intent, SpotPlanner.Place> places) {
        this.trip = trip;
        this.date = date;
        this.sun = sun;
        this.darkest = darkest;
        this.intents = intents;
        this.fits = fits;
        this.hopeless = hopeless(others);
        this.mounted = new ArrayList<>();
        for (LensFit fit : fits) {
            mounted.add(fit == null ? "" : mounted(fit.camera()));
        }
        this.places = places;
        this.daylight = Quality.daylight(darkest);
    }

    /** Pictures that no lens takes, of whatever bag. */
    private Set<Intent> hopeless(List<SmallestBag> others) {
        Set<Intent> hopeless = Collections.newSetFromMap(new IdentityHashMap<>());
        for (int i = 0; i < intents.size(); i++) {
            boolean taken = takes(fits.get(i));
            for (SmallestBag other : others) {
                taken |= takes(other.fits().get(i).best());
            }
            if (!taken) {
                hopeless.add(intents.get(i));
            }
        }
        return hopeless;
    }

    private static boolean takes(LensFit best) {
        return best != null && best.verdict() != Verdict.CANNOT;
    }

    /** What stands on the legs, by name; built-in lenses change by a touch. */
    private static String mounted(Camera camera) {
        String body = camera.body().name();
        return !camera.body().fixedLenses().isEmpty() ? body
                : body + "\n" + camera.lens().name() + "\n" + (camera.attachment() == null ? "" : camera.attachment().name());
    }

    /** Under the sky expected, and where the forecast tells the wind of a day, in that wind. */
    Quality expected(SkyDays days, ExpectedSky sky) {
        return inWind(quality(days, null), sky.tellsWind() ? smear(sky, 0) : null);
    }

    private static Quality inWind(Quality calm, StemSmear smear) {
        return smear == null ? calm : new WindyQuality(calm, smear);
    }

    private StemSmear smear(ExpectedSky sky, double moreMs) {
        return new StemSmear(intents, fits, places, sky, RunningOrder.hours(trip, date, sun), moreMs);
    }

    Outing outing(Quality quality) {
        return RunningOrder.of(trip, date, sun, darkest, intents, quality, mounted);
    }

    /** Of the light under that sky; the sky expected when {@code word} is null. */
    Quality quality(SkyDays days, SkyWord word) {
        return new LightQuality(daylight, hopeless, places, days, word, date.atStartOfDay(trip.site().zone()));
    }

    /** Days on which something is to be done otherwise than planned. */
    List<Alternative> alternatives(Outing planned, Quality expected, ExpectedSky sky, Drops drops) {
        SkyDays dry = new SkyDays(sky, drops);
        SkyDays wet = new SkyDays(sky, Drops.of(date, trip.site().zone(), rain(), null));
        List<Alternative> alternatives = new ArrayList<>();
        StemSmear told = sky.tellsWind() ? smear(sky, 0) : null;
        add(Alternative.Day.CLEAR, planned, expected, inWind(quality(dry, SkyWord.CLEAR), told), alternatives);
        add(Alternative.Day.OVERCAST, planned, expected, inWind(quality(dry, SkyWord.OVERCAST), told), alternatives);
        add(Alternative.Day.RAIN, planned, expected, inWind(quality(wet, SkyWord.OVERCAST), told), alternatives);
        add(Alternative.Day.WIND, planned, expected, inWind(quality(dry, null), smear(sky, MORE_WIND_MS)), alternatives);
        return List.copyOf(alternatives);
    }

    private void add(Alternative.Day day, Outing planned, Quality expected, Quality quality, List<Alternative> alternatives) {
        Alternative alternative = Alternative.of(day, planned, expected, outing(quality), quality, intents);
        if (alternative != null) {
            alternatives.add(alternative);
        }
    }

    private List<ForecastHour> rain() {
        List<ForecastHour> rain = new ArrayList<>();
        for (int hour = 0; hour < HOURS; hour++) {
            rain.add(new ForecastHour(null, LocalTime.of(hour, 0), null, null, null, null, null, RAIN_OKTA, RAIN_MM, null, null, null));
        }
        return rain;
    }
}
