package understorey.brief;

import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.WaitAdvice;
import understorey.kit.Intent;
import understorey.light.Moment;
import understorey.light.Wishes;
import understorey.order.Quality;
import understorey.plan.LightWish;
import understorey.sky.Interval;
import understorey.visit.Day;
import understorey.visit.Place;
import understorey.visit.SkyDays;

/** How well the light answers a picture's wishes over the day, under one sky, and what a later start loses of drops. */
final class ShotQuality implements Quality {

    /**
     * Share of its worth that a wide picture of drops loses in an hour after the rain, and the most that any loses. Raindrops fall and
     * are shaken off before their water has dried; dew clings. A close frame shows each drop and loses up to twice as much, so after
     * rain the closest picture comes first (common practice, no source).
     */
    private static final double DROPS_PRICE = 0.1;
    private static final double MOST_LOST = 0.3;
    /** Width of a frame that loses one and a half times as much, m. */
    private static final double NEAR_M = 0.1;
    /** Between two moments of a day. */
    private static final long STEP_SECONDS = 300;
    private static final double SECONDS_PER_HOUR = 3600;

    private final Intent intent;
    private final Wishes wishes;
    private final double lostPerHour;
    private final Place place;
    private final ZonedDateTime start;
    /** By step of the day; null where it is too dark for any wish. */
    private final @Nullable Moment[] moments;

    private ShotQuality(Intent intent, double frameM, Place place, ZonedDateTime start, @Nullable Moment[] moments) {
        this.intent = intent;
        this.wishes = Wishes.of(intent.shot());
        this.lostPerHour = !intent.shot().light().contains(LightWish.AFTER_RAIN) ? 0 : DROPS_PRICE * (1 + NEAR_M / (NEAR_M + frameM));
        this.place = place;
        this.start = start;
        this.moments = moments;
    }

    /**
     * For a picture with wishes, under a sky on a day with such drops on the flowers.
     *
     * @param frameM width of the frame, m; infinite for a picture that no lens takes
     */
    static ShotQuality of(Day day, Intent intent, double frameM, SkyDays skies, Sky sky) {
        Place place = day.place(intent.shot());
        ZonedDateTime start = day.hours().start();
        int steps = (int) (day.hours().day().length().toSeconds() / STEP_SECONDS);
        ShotQuality quality = new ShotQuality(intent, frameM, place, start, new Moment[steps]);
        quality.put(skies.moments(sky.word(), place));
        if (!sky.instead()) {
            quality.put(skies.moments(null, place));
        }
        return quality;
    }

    private void put(List<Moment> day) {
        for (Moment moment : day) {
            moments[step(moment.sun().time())] = moment;
        }
    }

    @Override
    public double at(ZonedDateTime time) {
        Moment moment = moment(time);
        return moment == null ? 0 : wishes.quality(moment);
    }

    @Override
    public double kept(ZonedDateTime time) {
        Moment moment = lostPerHour == 0 ? null : moment(time);
        int last = step(time);
        while (moment != null && moment.drops() > 0 && moment.drops() < 1 && last > 0) {
            moment = moments[--last];
        }
        boolean rained = moment == null || raining(last) || raining(last - 1) || raining(last - 2);
        return 1 - (rained ? Math.min(MOST_LOST, lostPerHour * (step(time) - last) * STEP_SECONDS / SECONDS_PER_HOUR) : 0);
    }

    private boolean raining(int step) {
        Moment moment = step < 0 ? null : moments[step];
        return moment != null && moment.rainMm() > 0;
    }

    /** The sun above the skyline where that is what the picture gains, else what spoils the light before. */
    @Override
    public @Nullable Advice worthTheWait(ZonedDateTime from, ZonedDateTime shooting) {
        Moment before = moment(from);
        Moment then = moment(shooting.plus(intent.duration().dividedBy(2)));
        Wishes.Gain gain = before == null || then == null ? null : wishes.gained(before, then);
        if (gain == null) {
            return null;
        }
        for (Interval sunlit : place.sunlit()) {
            boolean comes = sunlit.from().isAfter(from) && sunlit.from().isBefore(shooting.plus(intent.duration()));
            if (comes && gain.sun()) {
                return new WaitAdvice.WaitForSun(sunlit.from());
            }
        }
        return new WaitAdvice.WaitForBetterLight(shooting, gain.why());
    }

    private @Nullable Moment moment(ZonedDateTime time) {
        int step = step(time);
        return step < 0 || step >= moments.length ? null : moments[step];
    }

    private int step(ZonedDateTime time) {
        return (int) Math.floorDiv(time.toEpochSecond() - start.toEpochSecond(), STEP_SECONDS);
    }
}
