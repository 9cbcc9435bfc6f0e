package understorey.outing;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.light.LightAt;

/**
 * When the way in and the way out want a lamp: while the floor under an overcast sky is darker than open ground at the
 * end of civil twilight, sun at −6°, where outdoor work wants a light. Under leaves that is later than in the open.
 *
 * @param until  the way in is dark before this; null when it is light
 * @param from   the way out is dark from this on; null when it is light
 * @param allDay it stays dark from arriving to leaving
 */
public record LampHours(ZonedDateTime arrive, ZonedDateTime until, ZonedDateTime from, ZonedDateTime leave, boolean allDay) {

    /** 3.4 lux: Seidelmann's table at −6°; the AMS Glossary of Meteorology has 2 to 3.5 lux there. */
    private static final double DIM_EV = 0.45;

    /** For a visit, by the light of the whole day on the floor. */
    public static LampHours of(List<LightAt> day, ZonedDateTime arrive, ZonedDateTime leave) {
        ZonedDateTime until = firstLight(day, arrive);
        ZonedDateTime from = lastLight(day, leave);
        boolean allDay = until == null || from == null || !until.isBefore(leave) || !from.isAfter(arrive);
        return new LampHours(arrive, allDay || until.equals(arrive) ? null : until,
                allDay || from.equals(leave) ? null : from, leave, allDay);
    }

    /** How many minutes after arriving a lamp is needed, to the minute of the clock. */
    public long minutesIn() {
        return until == null ? 0 : minutes(arrive, until);
    }

    /** How many minutes before leaving it is needed again. */
    public long minutesOut() {
        return from == null ? 0 : minutes(from, leave);
    }

    private static long minutes(ZonedDateTime from, ZonedDateTime to) {
        return Math.round(Duration.between(from, to).toSeconds() / 60.0);
    }

    /** The last time of the day at which the floor is light; null when it is light to the end of it, or never. */
    static ZonedDateTime lastLight(List<LightAt> day) {
        ZonedDateTime end = day.get(day.size() - 1).sun().time();
        ZonedDateTime last = lastLight(day, end);
        return end.equals(last) ? null : last;
    }

    /** The first time from then on at which the floor is light; null when none comes. */
    private static ZonedDateTime firstLight(List<LightAt> day, ZonedDateTime then) {
        if (light(day, then)) {
            return then;
        }
        for (int i = 1; i < day.size(); i++) {
            LightAt row = day.get(i);
            LightAt before = day.get(i - 1);
            if (ev(row) >= DIM_EV && row.sun().time().isAfter(then)) {
                return crossing(before, row);
            }
        }
        return null;
    }

    /** The last time up to then at which the floor is light; null when there was none. */
    private static ZonedDateTime lastLight(List<LightAt> day, ZonedDateTime then) {
        if (light(day, then)) {
            return then;
        }
        for (int i = day.size() - 1; i > 0; i--) {
            LightAt row = day.get(i - 1);
            if (ev(row) >= DIM_EV && !row.sun().time().isAfter(then)) {
                return crossing(row, day.get(i));
            }
        }
        return null;
    }

    private static boolean light(List<LightAt> day, ZonedDateTime then) {
        for (int i = 1; i < day.size(); i++) {
            if (day.get(i).sun().time().isAfter(then)) {
                double share = share(day.get(i - 1).sun().time(), then, day.get(i).sun().time());
                return ev(day.get(i - 1)) + share * (ev(day.get(i)) - ev(day.get(i - 1))) >= DIM_EV;
            }
        }
        return ev(day.get(day.size() - 1)) >= DIM_EV;
    }

    private static ZonedDateTime crossing(LightAt one, LightAt other) {
        double share = (DIM_EV - ev(one)) / (ev(other) - ev(one));
        Duration step = Duration.between(one.sun().time(), other.sun().time());
        return one.sun().time().plusSeconds(Math.round(share * step.toSeconds()));
    }

    private static double share(ZonedDateTime from, ZonedDateTime then, ZonedDateTime to) {
        return (double) Duration.between(from, then).toSeconds() / Duration.between(from, to).toSeconds();
    }

    private static double ev(LightAt row) {
        return row.floor().overcast();
    }
}
