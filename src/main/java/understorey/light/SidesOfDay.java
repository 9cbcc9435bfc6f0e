package understorey.light;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import understorey.sky.Interval;
import understorey.sky.SunAt;

/**
 * The sides from which the sun lights a picture over a day, found on a track of even steps.
 *
 * <p>The parts of the sun's direction (right of the axis, along it, up) run on a parabola through three rows: unlike
 * the bearing they stay smooth where the sun passes the zenith, and a change of side is a zero of a sum of them. Over
 * 15 minutes the sun goes 3.75°, and a parabola strays from that arc by 0.001°, 0.02° behind the last row.
 */
final class SidesOfDay {

    private static final double AHEAD = Math.toRadians(Side.AHEAD_DEG);
    private static final double OVERHEAD = Math.sin(Math.toRadians(Side.OVERHEAD_DEG));

    private final ZoneId zone;
    private final double startS;
    private final double stepS;
    private final int rows;
    private final double[] right;
    private final double[] along;
    private final double[] up;

    SidesOfDay(List<SunAt> track, double facingDeg) {
        rows = track.size();
        if (rows < 3) {
            throw new IllegalArgumentException("too short a track: " + rows);
        }
        zone = track.get(0).time().getZone();
        startS = second(track.get(0).time());
        stepS = second(track.get(1).time()) - startS;
        right = new double[rows];
        along = new double[rows];
        up = new double[rows];
        for (int i = 0; i < rows; i++) {
            double turn = Math.toRadians(track.get(i).azimuthDeg() - facingDeg);
            double altitude = Math.toRadians(track.get(i).apparentAltitudeDeg());
            right[i] = Math.sin(turn) * Math.cos(altitude);
            along[i] = Math.cos(turn) * Math.cos(altitude);
            up[i] = Math.sin(altitude);
        }
    }

    List<SunDirection.Stretch> within(List<Interval> sunlit) {
        List<SunDirection.Stretch> found = new ArrayList<>();
        for (Interval lit : sunlit) {
            double end = second(lit.to());
            List<Double> cuts = cuts(second(lit.from()), end);
            cuts.add(end);
            ZonedDateTime from = lit.from();
            double last = second(from);
            Side side = side((last + cuts.get(0)) / 2);
            for (int i = 1; i < cuts.size(); i++) {
                last = cuts.get(i - 1);
                Side next = side((last + cuts.get(i)) / 2);
                if (next != side) {
                    add(found, side, from, time(last));
                    from = time(last);
                    side = next;
                }
            }
            add(found, side, from, lit.to());
        }
        return List.copyOf(found);
    }

    /** Adds a stretch unless it has no length, as after a change at the very end of the sunlight. */
    private static void add(List<SunDirection.Stretch> found, Side side, ZonedDateTime from, ZonedDateTime to) {
        if (from.isBefore(to)) {
            found.add(new SunDirection.Stretch(side, new Interval(from, to)));
        }
    }

    /**
     * Every time between two at which the sun passes from one side to another, in order, and the ends of the steps
     * between them: a passage at the very end of a step may be missed by rounding on both sides of it.
     */
    private List<Double> cuts(double from, double to) {
        List<Double> cuts = new ArrayList<>();
        for (int step = step(from); step <= step(to); step++) {
            double least = Math.max(from, step == 0 ? from : startS + step * stepS);
            double most = Math.min(to, step == rows - 1 ? to : startS + (step + 1) * stepS);
            int row = row(step);
            addZeros(row, least, most, Math.sin(AHEAD), -Math.cos(AHEAD), 0, 0, cuts);
            addZeros(row, least, most, Math.sin(AHEAD), Math.cos(AHEAD), 0, 0, cuts);
            addZeros(row, least, most, 0, 0, 1, -OVERHEAD, cuts);
            addWithin(from, Math.nextDown(to), most, cuts);
        }
        Collections.sort(cuts);
        return cuts;
    }

    /**
     * Zeros of byAlong·along + byRight·right + byUp·up + constant from {@code least} to {@code most}. A zero of the
     * first two terms alone is a bearing of 45° or 135° from the axis, to one hand for each sign.
     */
    private void addZeros(int row, double least, double most, double byAlong, double byRight, double byUp,
            double constant, List<Double> cuts) {
        double before = byAlong * along[row - 1] + byRight * right[row - 1] + byUp * up[row - 1] + constant;
        double at = byAlong * along[row] + byRight * right[row] + byUp * up[row] + constant;
        double after = byAlong * along[row + 1] + byRight * right[row + 1] + byUp * up[row + 1] + constant;
        double square = (before - 2 * at + after) / 2;
        double linear = (after - before) / 2;
        double root = Math.sqrt(linear * linear - 4 * square * at);
        double sum = -(linear + Math.copySign(root, linear)) / 2;
        addWithin(least, most, startS + (row + sum / square) * stepS, cuts);
        addWithin(least, most, startS + (row + at / sum) * stepS, cuts);
    }

    /** Adds a time between two others; a missing zero is not a number, and the second zero of a straight line is infinite. */
    private static void addWithin(double least, double most, double second, List<Double> cuts) {
        if (second > least && second <= most) {
            cuts.add(second);
        }
    }

    private Side side(double second) {
        int row = row(step(second));
        double s = (second - startS) / stepS - row;
        double turnDeg = Math.toDegrees(Math.atan2(on(right, row, s), on(along, row, s)));
        double sine = Math.max(-1, Math.min(1, on(up, row, s)));
        return Side.of(turnDeg, Math.toDegrees(Math.asin(sine)));
    }

    private static double on(double[] part, int row, double s) {
        double square = (part[row - 1] - 2 * part[row] + part[row + 1]) / 2;
        return part[row] + s * ((part[row + 1] - part[row - 1]) / 2 + s * square);
    }

    /** The step that holds a time; the first and the last hold all that lies before and behind the track. */
    private int step(double second) {
        return Math.max(0, Math.min(rows - 1, (int) Math.floor((second - startS) / stepS)));
    }

    /** The row in the middle of the three that a step's parabola goes through. */
    private int row(int step) {
        return Math.max(1, Math.min(rows - 2, step));
    }

    private ZonedDateTime time(double second) {
        return Instant.ofEpochMilli(Math.round(second * 1000)).atZone(zone);
    }

    private static double second(ZonedDateTime time) {
        return time.toInstant().toEpochMilli() / 1000.0;
    }
}
