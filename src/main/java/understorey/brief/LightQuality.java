package understorey.brief;

import static understorey.reason.Figure.Measure.CLOCK;
import static understorey.reason.Figure.Measure.REASON;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import understorey.kit.Intent;
import understorey.light.LightReason;
import understorey.light.Moment;
import understorey.light.Outlook;
import understorey.outing.OutingReason;
import understorey.outing.Quality;
import understorey.plan.SkyWord;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.sky.Interval;

/**
 * How well the light answers each picture's wishes over the day: under one sky, and where the sky expected is told for some
 * hours only, under the middle of all skies in the others. A picture that wishes for nothing wants daylight.
 */
final class LightQuality implements Quality {

    /** Between two moments of a day. */
    private static final long STEP_SECONDS = 300;

    /** What a long wait is for in the end is seen in its last half hour. */
    private static final Duration LATELY = Duration.ofMinutes(30);
    private final Quality daylight;
    private final Set<Intent> hopeless;
    private final Function<Intent, SpotPlanner.Place> places;
    private final SkyDays days;
    private final SkyWord word;
    private final ZonedDateTime start;
    private final int steps;
    private final Map<Intent, Moment[]> known = new IdentityHashMap<>();

    /**
     * Under a sky.
     *
     * @param hopeless pictures that no lens takes, of whatever bag: no light is any good to them
     * @param word  null for the sky expected
     * @param start of the local day
     */
    LightQuality(Quality daylight, Set<Intent> hopeless, Function<Intent, SpotPlanner.Place> places, SkyDays days, SkyWord word, ZonedDateTime start) {
        this.daylight = daylight;
        this.hopeless = hopeless;
        this.places = places;
        this.days = days;
        this.word = word;
        this.start = start;
        this.steps = step(start.toLocalDate().plusDays(1).atStartOfDay(start.getZone())) + 1;
    }

    @Override
    public double at(Intent intent, ZonedDateTime time) {
        if (hopeless.contains(intent)) {
            return 0;
        }
        if (intent.shot().light().isEmpty()) {
            return daylight.at(intent, time);
        }
        Moment moment = at(moments(intent), time);
        return moment == null ? 0 : Outlook.quality(intent.shot().light(), moment, intent.shot().facingDeg());
    }

    /** By step of the day; null where it is too dark for any wish. */
    private Moment[] moments(Intent intent) {
        Moment[] moments = known.get(intent);
        if (moments != null) {
            return moments;
        }
        moments = new Moment[steps];
        known.put(intent, moments);
        if (word == null && days.silentOn(start)) {
            put(days.moments(ExpectedSky.MIDDLE, places.apply(intent)), moments);
        }
        put(days.moments(word, places.apply(intent)), moments);
        return moments;
    }

    private void put(List<Moment> day, Moment[] moments) {
        for (Moment moment : day) {
            moments[step(moment.sun().time())] = moment;
        }
    }

    /** The sun over the land where that is what the picture gains, else what spoils the light shortly before. */
    @Override
    public Reason worthTheWait(Intent intent, ZonedDateTime from, ZonedDateTime start) {
        if (intent.shot().light().isEmpty()) {
            return null;
        }
        ZonedDateTime lately = start.minus(LATELY).isAfter(from) ? start.minus(LATELY) : from;
        Moment[] moments = moments(intent);
        Moment before = at(moments, lately);
        Moment then = at(moments, start.plus(intent.duration().dividedBy(2)));
        Reason why = before == null || then == null ? null
                : Outlook.gained(intent.shot().light(), intent.shot().facingDeg(), before, then);
        if (why == null) {
            return null;
        }
        for (Interval sunlit : places.apply(intent).sunlit()) {
            boolean comes = sunlit.from().isAfter(lately) && sunlit.from().isBefore(start.plus(intent.duration()));
            if (comes && (why.kind() == LightReason.SUN_BEHIND_LAND || why.kind() == LightReason.SUN_NOT_YET_UP)) {
                return Reason.of(OutingReason.WAIT_FOR_SUN).with("clears", new Figure(sunlit.from(), CLOCK));
            }
        }
        return Reason.of(OutingReason.WAIT_FOR_BETTER_LIGHT).with("from", new Figure(start, CLOCK)).with("why", new Figure(why, REASON));
    }

    private Moment at(Moment[] moments, ZonedDateTime time) {
        int step = step(time);
        return step < 0 || step >= steps ? null : moments[step];
    }

    private int step(ZonedDateTime time) {
        return (int) Math.floorDiv(Duration.between(start, time).toSeconds(), STEP_SECONDS);
    }
}
