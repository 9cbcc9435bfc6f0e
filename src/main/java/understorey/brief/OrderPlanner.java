package understorey.brief;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.kit.camera.Camera;
import understorey.light.Rain;
import understorey.order.Alternative;
import understorey.order.Candidate;
import understorey.order.Quality;
import understorey.order.RunningOrder;
import understorey.plan.ForecastHour;
import understorey.plan.Shot;
import understorey.plan.SkyWord;
import understorey.visit.Day;
import understorey.visit.SkyDays;
import understorey.weather.Drops;

/** Plans the order of the day by the light, and what changes in it if the day turns out another. */
final class OrderPlanner {

    /** A rainy day rains all day, overcast, a millimetre an hour. */
    private static final double RAIN_OKTA = 8;
    private static final double RAIN_MM = 1;
    private static final int HOURS = 24;
    /** A windy day has that much over the mean wind and the gusts of the forecast, m/s: common practice, no source. */
    private static final double MORE_WIND_MS = 4;

    private final Day day;
    private final List<FittedShot> shots;
    private final SkyDays dry;
    private final List<Candidate> expected;
    /** Settings by picture, sky and wind, whatever the light is worth. */
    private final Map<Case, FeasibleQuality> known = new HashMap<>();

    private record Case(int picture, Sky sky, double moreWindMs) {
    }

    /**
     * For the pictures of a day.
     *
     * @param dry the moments of the day under each sky, without rain
     */
    OrderPlanner(Day day, List<FittedShot> shots, SkyDays dry) {
        this.day = day;
        this.shots = shots;
        this.dry = dry;
        this.expected = candidates(dry, Sky.expected(day), 0);
    }

    /** Under the sky expected, and in the wind of the forecast. */
    RunningOrder planned() {
        return RunningOrder.of(day, expected);
    }

    /** Days on which something is to be done otherwise than planned. */
    List<Alternative> alternatives(RunningOrder planned) {
        SkyDays wet = new SkyDays(day.sky(), Drops.of(day.hours().day(), rain(), null));
        List<Sky> clear = List.of(new Sky(SkyWord.CLEAR, true));
        List<Sky> overcast = List.of(new Sky(SkyWord.OVERCAST, true));
        List<Alternative> alternatives = new ArrayList<>();
        add(Alternative.Day.CLEAR, planned, candidates(dry, clear, 0), alternatives);
        add(Alternative.Day.OVERCAST, planned, candidates(dry, overcast, 0), alternatives);
        add(Alternative.Day.RAIN, planned, candidates(wet, overcast, 0), alternatives);
        add(Alternative.Day.WIND, planned, candidates(dry, Sky.expected(day), MORE_WIND_MS), alternatives);
        return List.copyOf(alternatives);
    }

    private void add(Alternative.Day kind, RunningOrder planned, List<Candidate> candidates, List<Alternative> alternatives) {
        Alternative alternative = Alternative.of(kind, planned, expected, RunningOrder.instead(day, candidates), candidates);
        if (alternative != null) {
            alternatives.add(alternative);
        }
    }

    private List<Candidate> candidates(SkyDays skies, List<Sky> mayCome, double moreWindMs) {
        List<Candidate> candidates = new ArrayList<>();
        for (FittedShot shot : shots) {
            Intent intent = shot.fit().intent();
            LensFit best = shot.fit().best();
            candidates.add(new Candidate(intent.shot(), intent.duration(), intent.priority(), best == null ? "" : mounted(best.camera()),
                    mayCome.stream().map(sky -> quality(shot, skies, sky, moreWindMs)).toList()));
        }
        return List.copyOf(candidates);
    }

    private Quality quality(FittedShot shot, SkyDays skies, Sky sky, double moreWindMs) {
        if (!taken(shot)) {
            return time -> 0;
        }
        Intent intent = shot.fit().intent();
        LensFit best = shot.fit().best();
        Quality light = intent.shot().light().isEmpty() ? dryDaylight(intent.shot())
                : ShotQuality.of(day, intent, best == null ? Double.POSITIVE_INFINITY : best.frameWidthM(), skies, sky);
        return best == null ? light : known.computeIfAbsent(new Case(shot.number(), sky, moreWindMs),
                any -> FeasibleQuality.of(light, day, shot, best, sky, moreWindMs)).with(light);
    }

    /** Of a picture without a wish, which suffers from rain too. */
    private Quality dryDaylight(Shot shot) {
        Quality daylight = Quality.daylight(day, shot);
        return time -> daylight.at(time) * Rain.leaves(day.sky().weather(time));
    }

    /** True when a lens of any bag can do the picture. */
    private static boolean taken(FittedShot shot) {
        return shot.fit().possible() || shot.companions().stream().map(FittedShot.ForCompanion::best)
                .anyMatch(best -> best != null && best.verdict() != Verdict.CANNOT);
    }

    /** What is on the support, by name; built-in lenses change by a touch. */
    private static String mounted(Camera camera) {
        String body = camera.body().name();
        return !camera.body().fixedLenses().isEmpty() ? body
                : body + "\n" + camera.lens().name() + "\n" + (camera.attachment() == null ? "" : camera.attachment().name());
    }

    private List<ForecastHour> rain() {
        List<ForecastHour> rain = new ArrayList<>();
        for (int hour = 0; hour < 2 * HOURS; hour++) {
            rain.add(new ForecastHour(day.date().plusDays(hour / HOURS), LocalTime.of(hour % HOURS, 0), null, null, null, null, null, RAIN_OKTA, RAIN_MM, null, null, null));
        }
        return rain;
    }
}
