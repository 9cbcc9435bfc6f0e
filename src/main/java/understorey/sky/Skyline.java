package understorey.sky;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;

/** The land's own horizon around a place: straight lines between the bearings given, all the way round. */
public final class Skyline {

    private static final double STEP_S = 900;
    /** The sun's path bends away from a straight skyline by less than this within a step. */
    private static final double NEAR_DEG = 1;

    private final List<SkylinePoint> points;

    private Skyline(List<SkylinePoint> points) {
        this.points = points;
    }

    /** A skyline of points in any order; none at all is a level horizon. */
    public static Skyline of(List<SkylinePoint> points) {
        return new Skyline(points.stream()
                .map(p -> new SkylinePoint(wrap(p.bearingDeg()), p.angleDeg()))
                .sorted(Comparator.comparingDouble(SkylinePoint::bearingDeg)).toList());
    }

    /** Angle of the land above the level horizon at a bearing, degrees; 0 where nothing was given. */
    public double angleDeg(double bearingDeg) {
        if (points.isEmpty()) {
            return 0;
        }
        double bearing = wrap(bearingDeg);
        SkylinePoint left = points.get(points.size() - 1);
        SkylinePoint right = points.get(0);
        for (SkylinePoint point : points) {
            if (point.bearingDeg() <= bearing) {
                left = point;
            } else {
                right = point;
                break;
            }
        }
        double width = wrap(right.bearingDeg() - left.bearingDeg());
        double share = width == 0 ? 0 : wrap(bearing - left.bearingDeg()) / width;
        return left.angleDeg() + share * (right.angleDeg() - left.angleDeg());
    }

    /** True when the centre of the sun is seen above both the land and the level horizon. */
    public boolean clears(SunAt sun) {
        return clearanceDeg(sun) > 0;
    }

    /**
     * The stretches of a local date in which the sun's centre stands clear of the land, each end to within 5 s
     * of the position's own error; several a day where the skyline is broken. Stretches end with the date.
     */
    public List<Interval> sunlit(Position place, LocalDate date, ZoneId zone) {
        LocalDay day = LocalDay.of(date, zone);
        DoubleUnaryOperator clearance = t -> clearanceDeg(sun(place, t, zone));
        List<Interval> found = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        List<SunAt> nodes = nodes(place, day, zone);
        if (clears(nodes.get(0))) {
            ends.add(day.startSecond());
        }
        for (int i = 1; i < nodes.size(); i++) {
            double from = second(nodes.get(i - 1));
            double to = second(nodes.get(i));
            addCrossings(from, to, clearanceDeg(nodes.get(i - 1)), clearanceDeg(nodes.get(i)), clearance, ends);
        }
        if (ends.size() % 2 == 1) {
            ends.add(day.endSecond());
        }
        for (int i = 0; i < ends.size(); i += 2) {
            found.add(new Interval(instant(ends.get(i)).atZone(zone), instant(ends.get(i + 1)).atZone(zone)));
        }
        return List.copyOf(found);
    }

    /** Even steps, and the times at which the sun passes a corner of the skyline: no corner hides between two. */
    private List<SunAt> nodes(Position place, LocalDay day, ZoneId zone) {
        List<SunAt> nodes = new ArrayList<>();
        SunAt last = SunAt.of(place, day.start());
        nodes.add(last);
        for (double t = day.startSecond(); t < day.endSecond(); t += STEP_S) {
            SunAt next = sun(place, Math.min(t + STEP_S, day.endSecond()), zone);
            nodes.addAll(corners(place, last, next, zone));
            nodes.add(next);
            last = next;
        }
        return nodes;
    }

    private List<SunAt> corners(Position place, SunAt from, SunAt to, ZoneId zone) {
        List<SunAt> corners = new ArrayList<>();
        if (Math.max(from.altitudeDeg(), to.altitudeDeg()) > -NEAR_DEG) {
            for (SkylinePoint point : points) {
                double before = turned(from.azimuthDeg() - point.bearingDeg());
                double after = turned(to.azimuthDeg() - point.bearingDeg());
                if ((before > 0) != (after > 0) && Math.abs(before - after) < 180) {
                    double second = Crossing.between(second(from), second(to), before, after,
                            t -> turned(sun(place, t, zone).azimuthDeg() - point.bearingDeg()));
                    corners.add(sun(place, second, zone));
                }
            }
        }
        corners.sort(Comparator.comparing(SunAt::time));
        return corners;
    }

    private static void addCrossings(double from, double to, double atFrom, double atTo,
            DoubleUnaryOperator clearance, List<Double> ends) {
        if ((atFrom > 0) != (atTo > 0)) {
            ends.add(Crossing.between(from, to, atFrom, atTo, clearance));
        } else if (Math.min(Math.abs(atFrom), Math.abs(atTo)) < NEAR_DEG) {
            double middle = (from + to) / 2;
            double turn = Crossing.turn(middle, (to - from) / 2, atFrom, clearance.applyAsDouble(middle), atTo);
            double atTurn = clearance.applyAsDouble(turn);
            if ((atTurn > 0) != (atFrom > 0)) {
                ends.add(Crossing.between(from, turn, atFrom, atTurn, clearance));
                ends.add(Crossing.between(turn, to, atTurn, atTo, clearance));
            }
        }
    }

    private double clearanceDeg(SunAt sun) {
        return sun.apparentAltitudeDeg() - Math.max(0, angleDeg(sun.azimuthDeg()));
    }

    private static SunAt sun(Position place, double second, ZoneId zone) {
        return SunAt.of(place, instant(second).atZone(zone));
    }

    private static Instant instant(double second) {
        return Instant.ofEpochMilli(Math.round(second * 1000));
    }

    private static double second(SunAt sun) {
        return sun.time().toInstant().toEpochMilli() / 1000.0;
    }

    private static double wrap(double bearingDeg) {
        double turns = bearingDeg % 360;
        return turns < 0 ? turns + 360 : turns;
    }

    /** A difference of bearings as the shorter turn, −180 to 180. */
    private static double turned(double deg) {
        return wrap(deg + 180) - 180;
    }
}
