package understorey.sky;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;

/**
 * The sun's true altitude over a day and half a day on either side, cut where it turns, so that it only
 * rises or only sinks between neighbouring knots and no grazing passage is missed.
 */
final class SunArc {

    private static final double STEP_S = 3600;
    /** A passage begun on the date ends with the low after it, at most half a day on. */
    private static final double MARGIN_S = 13 * STEP_S;
    private static final double SIDEREAL_DEG_PER_S = 360.985647 / 86400;

    /** A time of the arc and the altitude then. */
    private record Knot(double second, double altitudeDeg) {
    }

    /** A stretch in which the sun only rises or only sinks, between two turns or ends of the arc. */
    private record Branch(List<Knot> knots) {
        Knot first() {
            return knots.get(0);
        }

        Knot last() {
            return knots.get(knots.size() - 1);
        }

        boolean rising() {
            return last().altitudeDeg > first().altitudeDeg;
        }
    }

    private final Position place;
    private final ZoneId zone;
    private final Interval day;
    private final List<Branch> branches;

    SunArc(Position place, Interval day) {
        this.place = place;
        this.zone = day.from().getZone();
        this.day = day;
        this.branches = branches(knots());
    }

    private List<Knot> knots() {
        List<Knot> even = new ArrayList<>();
        for (double t = day.from().toEpochSecond() - MARGIN_S; t <= day.to().toEpochSecond() + MARGIN_S; t += STEP_S) {
            even.add(knot(t));
        }
        List<Knot> knots = new ArrayList<>(even.subList(0, 1));
        for (int i = 1; i < even.size() - 1; i++) {
            Knot at = even.get(i);
            boolean turns = (at.altitudeDeg > even.get(i - 1).altitudeDeg) != (even.get(i + 1).altitudeDeg > at.altitudeDeg);
            knots.add(turns ? turn(even.get(i - 1), at, even.get(i + 1)) : at);
        }
        knots.add(even.get(even.size() - 1));
        return knots;
    }

    private Knot turn(Knot before, Knot at, Knot after) {
        double step = at.second - before.second;
        double second = Crossing.turn(at.second, step, before.altitudeDeg, at.altitudeDeg, after.altitudeDeg);
        for (double fine = STEP_S / 8; fine > 60; fine /= 8) {
            second = Crossing.turn(second, fine, altitude(second - fine), altitude(second), altitude(second + fine));
        }
        return knot(second);
    }

    private static List<Branch> branches(List<Knot> knots) {
        List<Branch> branches = new ArrayList<>();
        int first = 0;
        for (int i = 1; i < knots.size(); i++) {
            boolean turns = i == knots.size() - 1 || (knots.get(i).altitudeDeg > knots.get(i - 1).altitudeDeg)
                    != (knots.get(i + 1).altitudeDeg > knots.get(i).altitudeDeg);
            if (turns) {
                branches.add(new Branch(knots.subList(first, i + 1)));
                first = i;
            }
        }
        return branches;
    }

    /** First time on the local date at which the sun passes an altitude on its way up, or down; null if it does not. */
    @Nullable ZonedDateTime passes(double altitudeDeg, boolean rising) {
        for (Branch branch : branches) {
            if (branch.rising() == rising) {
                Double second = passes(branch, altitudeDeg);
                if (second != null && within(second)) {
                    return time(second);
                }
            }
        }
        return null;
    }

    /**
     * The passage between two altitudes on the way up, or down, whose daylight end (the upper altitude, or the
     * peak where that is not reached) falls on the local date. Where the lower altitude is not reached it runs
     * from, or to, the low of the night; that end may lie on the neighbouring date. Null if the date has no such passage.
     */
    @Nullable Interval passage(double lowerDeg, double upperDeg, boolean rising) {
        for (Branch branch : branches) {
            Knot low = rising ? branch.first() : branch.last();
            Knot peak = rising ? branch.last() : branch.first();
            if (branch.rising() == rising && peak.altitudeDeg > lowerDeg && low.altitudeDeg < upperDeg) {
                double dark = orElse(passes(branch, lowerDeg), low.second);
                double bright = orElse(passes(branch, upperDeg), peak.second);
                if (within(bright)) {
                    return rising ? new Interval(time(dark), time(bright)) : new Interval(time(bright), time(dark));
                }
            }
        }
        return null;
    }

    private boolean within(double second) {
        return second >= day.from().toEpochSecond() && second < day.to().toEpochSecond();
    }

    private static double orElse(@Nullable Double found, double other) {
        return found != null ? found : other;
    }

    private @Nullable Double passes(Branch branch, double altitudeDeg) {
        for (int i = 1; i < branch.knots.size(); i++) {
            Knot from = branch.knots.get(i - 1);
            Knot to = branch.knots.get(i);
            double below = from.altitudeDeg - altitudeDeg;
            double above = to.altitudeDeg - altitudeDeg;
            if ((below > 0) != (above > 0)) {
                return Crossing.between(from.second, to.second, below, above, t -> altitude(t) - altitudeDeg);
            }
        }
        return null;
    }

    /**
     * The upper transit nearest to the middle of a local day: hour angle zero, which is what almanacs call
     * noon; the highest altitude comes up to half a minute away from it. The hour angle follows from azimuth
     * and altitude by the spherical triangle (Meeus, 2nd ed., ch. 13).
     */
    SunAt transit(ZonedDateTime middle) {
        double second = middle.toEpochSecond();
        for (int i = 0; i < 3; i++) {
            second -= hourAngleDeg(sun(second)) / SIDEREAL_DEG_PER_S;
        }
        return sun(second);
    }

    private double hourAngleDeg(SunAt sun) {
        double azimuth = Math.toRadians(sun.azimuthDeg());
        double altitude = Math.toRadians(sun.altitudeDeg());
        double latitude = Math.toRadians(place.latitude());
        double west = -Math.sin(azimuth) * Math.cos(altitude);
        double south = Math.sin(altitude) * Math.cos(latitude) - Math.cos(altitude) * Math.cos(azimuth) * Math.sin(latitude);
        return Math.toDegrees(Math.atan2(west, south));
    }

    /** True if the sun stays above (or below) an altitude for the whole local date. */
    boolean keeps(boolean above, double altitudeDeg) {
        return passes(altitudeDeg, true) == null && passes(altitudeDeg, false) == null
                && (altitude(day.from().toEpochSecond()) > altitudeDeg) == above;
    }

    private Knot knot(double second) {
        return new Knot(second, altitude(second));
    }

    private double altitude(double second) {
        return sun(second).altitudeDeg();
    }

    private SunAt sun(double second) {
        return SunAt.of(place, time(second));
    }

    private ZonedDateTime time(double second) {
        return Instant.ofEpochMilli(Math.round(second * 1000)).atZone(zone);
    }
}
