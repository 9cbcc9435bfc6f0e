package understorey.season;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.light.LightDay;
import understorey.light.LightTable;
import understorey.light.Moment;
import understorey.light.Rain;
import understorey.light.Standpoint;
import understorey.light.Wishes;
import understorey.plan.LightWish;
import understorey.plan.Shot;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunAt;
import understorey.sky.SunDay;
import understorey.visit.ExpectedSky;
import understorey.visit.Hours;
import understorey.weather.Drops;
import understorey.weather.Mist;
import understorey.weather.Weather;

/**
 * The light of one day's visit, every 20 minutes: enough to compare days, at a fifth of the cost of a plan. All
 * spots have the site's sun, because a wood is no wider than a walk; the moon counts on a visit past midnight alone. If the sky is unknown, the three
 * usual skies count equally.
 */
final class DayLights {

    private static final Duration STEP = Duration.ofMinutes(20);
    private static final Mist NO_MIST = new Mist(null, null, List.of());
    /** Least light for a picture without a wish. */
    private static final double DARK_EV = -2;
    /** No light of a night for one: starlight under leaves. In between, more moon is better: common practice, no source. */
    private static final double MOONLESS_EV = -10;

    /**
     * The light that a picture finds in its visit.
     *
     * @param light  the mean over the possible skies of the best light under each
     * @param most   the best light under the best sky
     * @param moment of that light; null if the visit has none
     */
    record Best(double light, double most, @Nullable Moment moment) {
    }

    private final Trip trip;
    private final Hours hours;
    private final List<SunAt> track = new ArrayList<>();
    private final List<Weather> weather = new ArrayList<>();
    private final LightDay day;
    /** Moments by spot, sky and time. */
    private final Map<Standpoint, Moment[][]> moments = new IdentityHashMap<>();

    DayLights(Trip trip, Hours hours, Interval usable) {
        this.trip = trip;
        this.hours = hours;
        ExpectedSky sky = new ExpectedSky(trip);
        for (ZonedDateTime time = usable.from(); time.isBefore(usable.to()); time = time.plus(STEP)) {
            track.add(SunAt.of(trip.site().position(), time));
            weather.add(sky.weather(time));
        }
        Drops drops = Drops.of(hours.day(), trip.forecast(), trip.sky());
        this.day = new LightDay(time -> 0, sky::weather, mist(), drops);
    }

    private Mist mist() {
        if (trip.shots().stream().noneMatch(shot -> shot.light().contains(LightWish.MIST))) {
            return NO_MIST;
        }
        SunDay sun = SunDay.of(trip.site().position(), hours.day());
        return Mist.atDawn(sun, null, trip.forecast(), trip.sky());
    }

    List<Weather> weather() {
        return weather;
    }

    /** The best light that a picture finds at its place; a picture with a fixed time has only that time. */
    Best best(Shot shot, Standpoint place) {
        Moment[][] skies = moments.computeIfAbsent(place, this::at);
        Moment best = null;
        double most = 0;
        double light = 0;
        for (Moment[] sky : skies) {
            double here = 0;
            for (int i = 0; i < sky.length; i++) {
                double quality = inTime(shot, i) ? quality(shot, sky[i]) : 0;
                here = Math.max(here, quality);
                if (inTime(shot, i) && (best == null || quality > most + 1e-9)) {
                    most = quality;
                    best = sky[i];
                }
            }
            light += here / skies.length;
        }
        return new Best(light, most, best);
    }

    private boolean inTime(Shot shot, int i) {
        if (shot.start() == null) {
            return true;
        }
        ZonedDateTime pin = hours.at(hours.minute(shot.start()));
        ZonedDateTime time = track.get(i).time();
        return !time.isBefore(pin.minus(STEP.dividedBy(2))) && time.isBefore(pin.plus(STEP.dividedBy(2)));
    }

    private double quality(Shot shot, Moment moment) {
        double darkest = trip.stay().passesMidnight() ? MOONLESS_EV : DARK_EV;
        return !shot.light().isEmpty() ? Wishes.of(shot).quality(moment) : moment.floorEv() > DARK_EV ? Rain.leaves(moment)
                : moment.floorEv() <= darkest ? 0 : Rain.leaves(moment) * (moment.floorEv() - darkest) / (DARK_EV - darkest);
    }

    private Moment[][] at(Standpoint place) {
        boolean unknown = weather.stream().anyMatch(then -> then.okta() == null);
        Moment[][] skies = new Moment[unknown ? ExpectedSky.ANY.size() : 1][track.size()];
        for (int i = 0; i < track.size(); i++) {
            LightAt light = trip.stay().passesMidnight() ? LightTable.at(trip.site().position(), track.get(i), place)
                    : LightAt.of(track.get(i), place);
            Double okta = weather.get(i).okta();
            for (int sky = 0; sky < skies.length; sky++) {
                skies[sky][i] = day.at(light, okta == null ? ExpectedSky.ANY.get(sky).okta() : okta);
            }
        }
        return skies;
    }

    /** Skyline and canopy at each spot of the trip's pictures, computed once and moved from day to day. */
    static final class Places {

        private final Trip trip;
        private final Map<String, Standpoint> places = new HashMap<>();

        Places(Trip trip) {
            this.trip = trip;
        }

        Standpoint of(Shot shot, LocalDate date) {
            Spot spot = trip.site().spot(shot.spot());
            Standpoint known = places.get(shot.spot());
            if (known == null || !known.date().equals(date)) {
                known = known == null ? Standpoint.of(trip.site(), spot, date) : known.on(date, trip.site(), spot);
                places.put(shot.spot(), known);
            }
            return known;
        }
    }
}
