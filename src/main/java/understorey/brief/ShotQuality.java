package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.WaitAdvice;
import understorey.kit.Intent;
import understorey.light.Moment;
import understorey.light.Wishes;
import understorey.order.Quality;
import understorey.plan.SkyWord;
import understorey.sky.Interval;
import understorey.visit.Day;
import understorey.visit.ExpectedSky;
import understorey.visit.Place;
import understorey.visit.SkyDays;

/**
 * How well the light answers a picture's wishes over the day: under one sky, and where the forecast covers some hours only,
 * the mean of all skies in the others.
 */
final class ShotQuality implements Quality {

    /** Between two moments of a day. */
    private static final long STEP_SECONDS = 300;

    /** What the light of one sky counts where another may come. */
    private static final double ONE_SKY = 0.45;

    private final Intent intent;
    private final Wishes wishes;
    private final Place place;
    private final ZonedDateTime start;
    /** By sky and step of the day; null where it is too dark for any wish. */
    private final @Nullable Moment[][] skies;

    private ShotQuality(Intent intent, Place place, ZonedDateTime start, @Nullable Moment[][] skies) {
        this.intent = intent;
        this.wishes = Wishes.of(intent.shot());
        this.place = place;
        this.start = start;
        this.skies = skies;
    }

    /**
     * For a picture with wishes.
     *
     * @param word null for the sky expected
     */
    static ShotQuality of(Day day, Intent intent, SkyDays skies, @Nullable SkyWord word) {
        Place place = day.place(intent.shot());
        ZonedDateTime start = day.hours().start();
        int steps = (int) (Duration.between(start, start.toLocalDate().plusDays(1).atStartOfDay(start.getZone())).toSeconds() / STEP_SECONDS);
        boolean unknown = word == null && skies.lacksCloudOn(start);
        ShotQuality quality = new ShotQuality(intent, place, start, new Moment[unknown ? ExpectedSky.ANY.size() : 1][steps]);
        for (int sky = 0; sky < quality.skies.length; sky++) {
            if (unknown) {
                quality.put(sky, skies.moments(ExpectedSky.ANY.get(sky), place));
            }
            quality.put(sky, skies.moments(word, place));
        }
        return quality;
    }

    private void put(int sky, List<Moment> day) {
        for (Moment moment : day) {
            skies[sky][step(moment.sun().time())] = moment;
        }
    }

    /**
     * The mean over the skies that may come; an hour that is good under one of them is at least fair, because people go for the
     * light that may come (common practice, no source).
     */
    @Override
    public double at(ZonedDateTime time) {
        double sum = 0;
        double best = 0;
        for (int sky = 0; sky < skies.length; sky++) {
            Moment moment = moment(sky, time);
            double quality = moment == null ? 0 : wishes.quality(moment);
            sum += quality;
            best = Math.max(best, quality);
        }
        return Math.max(sum / skies.length, ONE_SKY * best);
    }

    /** The sun above the skyline where that is what the picture gains, else what spoils the light before. */
    @Override
    public @Nullable Advice worthTheWait(ZonedDateTime from, ZonedDateTime shooting) {
        Wishes.Gain gain = null;
        for (int sky = 0; sky < skies.length && gain == null; sky++) {
            Moment before = moment(sky, from);
            Moment then = moment(sky, shooting.plus(intent.duration().dividedBy(2)));
            gain = before == null || then == null ? null : wishes.gained(before, then);
        }
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

    private @Nullable Moment moment(int sky, ZonedDateTime time) {
        int step = step(time);
        return step < 0 || step >= skies[sky].length ? null : skies[sky][step];
    }

    private int step(ZonedDateTime time) {
        return (int) Math.floorDiv(Duration.between(start, time).toSeconds(), STEP_SECONDS);
    }
}
