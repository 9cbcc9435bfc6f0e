package understorey.sky;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;

/** Finds when the sun is above an outline of the land: a slow curve over bearings with a few corners. */
final class Sunlit {

    /** The sun's path bends away from a straight outline by less than this within a step. */
    private static final double NEAR_DEG = 1;

    private final Position place;
    private final List<SunAt> track;
    private final ZoneId zone;
    private final List<SkylinePoint> corners;
    private final DoubleUnaryOperator outlineDeg;
    private final List<Double> ends = new ArrayList<>();

    private Sunlit(Position place, List<SunAt> track, List<SkylinePoint> corners, DoubleUnaryOperator outlineDeg) {
        this.place = place;
        this.track = track;
        this.zone = track.get(0).time().getZone();
        this.corners = corners;
        this.outlineDeg = outlineDeg;
    }

    /**
     * Stretches with the sun's centre above the outline and above the level horizon, in order.
     *
     * @param track the sun from the first instant of a date to its last, by steps over which its path hardly bends
     */
    static List<Interval> over(Position place, List<SunAt> track, List<SkylinePoint> corners,
                               DoubleUnaryOperator outlineDeg) {
        return new Sunlit(place, track, corners, outlineDeg).search();
    }

    /** Apparent altitude of the sun's centre above the outline, degrees. */
    static double clearanceDeg(SunAt sun, DoubleUnaryOperator outlineDeg) {
        return sun.apparentAltitudeDeg() - Math.max(0, outlineDeg.applyAsDouble(sun.azimuthDeg()));
    }

    private List<Interval> search() {
        List<SunAt> nodes = nodes();
        if (clearanceDeg(nodes.get(0)) > 0) {
            ends.add(second(track.get(0)));
        }
        for (int i = 1; i < nodes.size(); i++) {
            addCrossings(nodes.get(i - 1), nodes.get(i));
        }
        if (ends.size() % 2 == 1) {
            ends.add(second(track.get(track.size() - 1)));
        }
        List<Interval> found = new ArrayList<>();
        for (int i = 0; i < ends.size(); i += 2) {
            found.add(new Interval(instant(ends.get(i)).atZone(zone), instant(ends.get(i + 1)).atZone(zone)));
        }
        return List.copyOf(found);
    }

    /** The track, and the times at which the sun passes a corner of the outline: no corner hides between two. */
    private List<SunAt> nodes() {
        List<SunAt> nodes = new ArrayList<>();
        nodes.add(track.get(0));
        for (int i = 1; i < track.size(); i++) {
            nodes.addAll(cornersBetween(track.get(i - 1), track.get(i)));
            nodes.add(track.get(i));
        }
        return nodes;
    }

    private List<SunAt> cornersBetween(SunAt from, SunAt to) {
        List<SunAt> passed = new ArrayList<>();
        if (Math.max(from.altitudeDeg(), to.altitudeDeg()) > -NEAR_DEG) {
            for (SkylinePoint corner : corners) {
                double before = Skyline.turned(from.azimuthDeg() - corner.bearingDeg());
                double after = Skyline.turned(to.azimuthDeg() - corner.bearingDeg());
                if ((before > 0) != (after > 0) && Math.abs(before - after) < 180) {
                    passed.add(sun(Crossing.between(second(from), second(to), before, after,
                            t -> Skyline.turned(sun(t).azimuthDeg() - corner.bearingDeg()))));
                }
            }
        }
        passed.sort((one, other) -> one.time().compareTo(other.time()));
        return passed;
    }

    private void addCrossings(SunAt before, SunAt after) {
        double from = second(before);
        double to = second(after);
        double atFrom = clearanceDeg(before);
        double atTo = clearanceDeg(after);
        if ((atFrom > 0) != (atTo > 0)) {
            ends.add(crossing(from, to, atFrom, atTo));
        } else if (Math.min(Math.abs(atFrom), Math.abs(atTo)) < NEAR_DEG) {
            double middle = (from + to) / 2;
            double turn = Crossing.turn(middle, (to - from) / 2, atFrom, clearanceDeg(sun(middle)), atTo);
            double atTurn = clearanceDeg(sun(turn));
            if ((atTurn > 0) != (atFrom > 0)) {
                ends.add(crossing(from, turn, atFrom, atTurn));
                ends.add(crossing(turn, to, atTurn, atTo));
            }
        }
    }

    private double crossing(double from, double to, double atFrom, double atTo) {
        return Crossing.between(from, to, atFrom, atTo, t -> clearanceDeg(sun(t)));
    }

    private double clearanceDeg(SunAt sun) {
        return clearanceDeg(sun, outlineDeg);
    }

    private SunAt sun(double second) {
        return SunAt.of(place, instant(second).atZone(zone));
    }

    private static Instant instant(double second) {
        return Instant.ofEpochMilli(Math.round(second * 1000));
    }

    private static double second(SunAt sun) {
        return sun.time().toInstant().toEpochMilli() / 1000.0;
    }
}
