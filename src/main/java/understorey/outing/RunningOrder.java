package understorey.outing;

import static understorey.reason.Figure.Measure.CLOCK;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import understorey.kit.Intent;
import understorey.light.LightAt;
import understorey.plan.LightWish;
import understorey.plan.Opening;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.sky.SunAt;
import understorey.sky.SunDay;

/**
 * Walks the pictures in the author's order (a picture that must come after another waits for it): walk, set
 * up, wait for a pinned start, shoot; and back to where the walk began.
 */
public final class RunningOrder {

    private static final Duration SET_UP = Duration.ofMinutes(3);
    private static final Duration UNKNOWN_WALK = Duration.ofMinutes(5);
    private static final Duration VISIT = Duration.ofHours(4);

    /** The sun's centre at the end of civil twilight. */
    private static final double CIVIL_TWILIGHT_DEG = -6;

    private final Trip trip;
    private final SunDay sun;
    private final List<LightAt> light;
    private final Walking walking;
    private final List<Leg> legs = new ArrayList<>();
    private final List<Reason> remarks = new ArrayList<>();
    private final Set<String> assumed = new LinkedHashSet<>();
    private final ZonedDateTime arrive;
    private final ZonedDateTime leave;
    private final String base;
    private ZonedDateTime now;
    private String here;

    private RunningOrder(Trip trip, LocalDate date, SunDay sun, List<LightAt> light, List<Intent> order) {
        this.trip = trip;
        this.light = light;
        this.sun = sun;
        this.walking = new Walking(trip.site());
        ZoneId zone = trip.site().zone();
        this.arrive = trip.arrive() == null ? assumedArrival(date) : date.atTime(trip.arrive()).atZone(zone);
        this.leave = trip.leave() == null ? assumedLeave(date) : date.atTime(trip.leave()).atZone(zone);
        this.base = trip.site().parking() != null ? trip.site().parking().spot()
                : order.isEmpty() ? null : order.get(0).shot().spot();
        this.now = arrive;
        this.here = base;
    }

    /**
     * The visit.
     *
     * @param light on the darkest floor visited, over the whole date
     */
    public static Outing of(Trip trip, LocalDate date, SunDay sun, List<LightAt> light, List<Intent> intents) {
        List<Intent> order = inOrder(intents);
        return new RunningOrder(trip, date, sun, light, order).walk(order);
    }

    private Outing walk(List<Intent> order) {
        againstOpening();
        for (Intent intent : order) {
            take(intent);
        }
        ZonedDateTime leaveLastSpotBy = leave.minus(latestBack()).truncatedTo(ChronoUnit.MINUTES);
        Duration back = walkTime(here, base, now);
        if (!back.isZero()) {
            walk(back, base, null);
        }
        return new Outing(arrive, leave, leaveLastSpotBy, LampHours.of(light, arrive, leave), List.copyOf(legs), List.copyOf(remarks),
                Collections.unmodifiableSet(assumed));
    }

    /** The way back at the end of the visit: in the dark as soon as either end of it is. */
    private Duration latestBack() {
        Duration atLeave = walkTime(here, base, leave);
        Duration before = walkTime(here, base, leave.minus(atLeave));
        return before.compareTo(atLeave) > 0 ? before : atLeave;
    }

    private void take(Intent intent) {
        String spot = intent.shot().spot();
        String name = intent.shot().name();
        Duration walk = walkTime(here, spot, now);
        ZonedDateTime ready = now.plus(walk).plus(SET_UP);
        LocalTime pin = intent.shot().start();
        ZonedDateTime start = pin == null ? daylight(ready, intent) : at(pin);
        if (start.isBefore(ready)) {
            remarks.add(Reason.of(OutingReason.PIN_MISSED).with("shot", name).with("pin", clock(start))
                    .with("ready", clock(ready)));
            start = ready;
        }
        ZonedDateTime end = start.plus(intent.duration());
        Duration back = walkTime(spot, base, end);
        if (end.plus(back).isAfter(leave)) {
            remarks.add(Reason.of(OutingReason.NO_TIME_LEFT).with("shot", name).with("leave", clock(leave)));
            return;
        }
        if (!walk.isZero()) {
            walk(walk, spot, name);
        }
        here = spot;
        add(Leg.What.SET_UP, SET_UP, spot, name);
        if (start.isAfter(now)) {
            add(Leg.What.WAIT, Duration.between(now, start), spot, name);
        }
        add(Leg.What.SHOOT, intent.duration(), spot, name);
    }

    /**
     * Nobody pinned the picture: it waits for sunrise, unless it wishes for twilight or the visit ends first.
     */
    private ZonedDateTime daylight(ZonedDateTime ready, Intent intent) {
        if (sun.sunrise() == null || intent.shot().light().contains(LightWish.TWILIGHT)) {
            return ready;
        }
        ZonedDateTime up = sun.sunrise().plusSeconds(59).truncatedTo(ChronoUnit.MINUTES);
        return ready.isBefore(up) && up.plus(intent.duration()).isBefore(leave) ? up : ready;
    }

    private void add(Leg.What what, Duration length, String spot, String shot) {
        legs.add(new Leg(now, now.plus(length), what, spot, shot));
        now = now.plus(length);
    }

    private Duration walkTime(String from, String to, ZonedDateTime when) {
        Duration known = walking.between(from, to, dark(when));
        return known == null ? UNKNOWN_WALK : known;
    }

    private void walk(Duration length, String to, String shot) {
        if (walking.between(here, to, false) == null) {
            Reason reason = Reason.of(OutingReason.WALK_ASSUMED).with("from", name(here)).with("to", name(to));
            if (!remarks.contains(reason)) {
                remarks.add(reason);
            }
        }
        add(Leg.What.WALK, length, to, shot);
        here = to;
    }

    private String name(String spot) {
        return spot == null ? trip.site().name() : spot;
    }

    /** Dark by the sun itself: a dusk of the night before and a polar day or night make no difference to it. */
    private boolean dark(ZonedDateTime when) {
        return SunAt.of(trip.site().position(), when).altitudeDeg() < CIVIL_TWILIGHT_DEG;
    }

    /**
     * Civil dawn; where there is none, two hours before the sun is highest; four hours before a leave that comes
     * earlier.
     */
    private ZonedDateTime assumedArrival(LocalDate date) {
        assumed.add("arrive");
        ZonedDateTime arrival = sun.civilDawn() != null ? sun.civilDawn()
                : sun.solarNoon() != null ? sun.solarNoon().minus(VISIT.dividedBy(2))
                : date.atTime(10, 0).atZone(trip.site().zone());
        ZonedDateTime minute = arrival.plusSeconds(30).truncatedTo(ChronoUnit.MINUTES);
        ZonedDateTime leaving = trip.leave() == null ? null : date.atTime(trip.leave()).atZone(trip.site().zone());
        if (leaving == null || minute.isBefore(leaving)) {
            return minute;
        }
        ZonedDateTime midnight = date.atStartOfDay(trip.site().zone());
        ZonedDateTime visit = leaving.minus(VISIT);
        return visit.isBefore(midnight) ? midnight : visit;
    }

    /** Four hours later, but not past midnight. */
    private ZonedDateTime assumedLeave(LocalDate date) {
        assumed.add("leave");
        ZonedDateTime late = date.atTime(23, 59).atZone(trip.site().zone());
        ZonedDateTime leaving = arrive.plus(VISIT);
        return leaving.isAfter(late) ? late : leaving;
    }

    private ZonedDateTime at(LocalTime time) {
        return arrive.toLocalDate().atTime(time).atZone(arrive.getZone());
    }

    private void againstOpening() {
        Site site = trip.site();
        Opening opening = site.opening();
        if (opening != null && arrive.toLocalTime().isBefore(opening.from())) {
            remarks.add(Reason.of(OutingReason.BEFORE_OPENING).with("opens", new Figure(opening.from(), CLOCK))
                    .with("arrive", clock(arrive)));
        }
        if (opening != null && leave.toLocalTime().isAfter(opening.to())) {
            remarks.add(Reason.of(OutingReason.AFTER_CLOSING).with("closes", new Figure(opening.to(), CLOCK))
                    .with("leave", clock(leave)));
        }
        if (site.parking() != null && site.parking().closes() != null
                && leave.toLocalTime().isAfter(site.parking().closes())) {
            remarks.add(Reason.of(OutingReason.CAR_PARK_CLOSES)
                    .with("closes", new Figure(site.parking().closes(), CLOCK)).with("leave", clock(leave)));
        }
    }

    private static Figure clock(ZonedDateTime time) {
        return new Figure(time, CLOCK);
    }

    /** The author's order, with each picture moved behind the one it must follow. */
    private static List<Intent> inOrder(List<Intent> intents) {
        List<Intent> order = new ArrayList<>();
        List<Intent> waiting = new ArrayList<>(intents);
        Set<String> done = new LinkedHashSet<>();
        while (!waiting.isEmpty()) {
            int next = 0;
            for (int i = waiting.size() - 1; i >= 0; i--) {
                String after = waiting.get(i).shot().after();
                next = after == null || done.contains(after) ? i : next;
            }
            Intent intent = waiting.remove(next);
            order.add(intent);
            done.add(intent.shot().name());
        }
        return order;
    }
}
