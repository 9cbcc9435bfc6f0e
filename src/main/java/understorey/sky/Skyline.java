package understorey.sky;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.optics.Incline;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;

/**
 * Skyline around a place: straight lines between the bearings given, all the way round. Seen from a slope, the slope
 * itself hides the sun behind it.
 */
public final class Skyline {

    private static final int VIEW_STEP_DEG = 5;

    private final List<SkylinePoint> points;
    private final @Nullable Slope slope;

    private Skyline(List<SkylinePoint> points, @Nullable Slope slope) {
        this.points = points;
        this.slope = slope;
    }

    /**
     * Skyline seen from a slope.
     *
     * @param points in any order; none is a level horizon
     * @param slope  null for level ground
     */
    public static Skyline of(List<SkylinePoint> points, @Nullable Slope slope) {
        List<SkylinePoint> sorted = points.stream().map(point -> new SkylinePoint(wrap(point.bearingDeg()), point.angleDeg()))
                .sorted(Comparator.comparingDouble(SkylinePoint::bearingDeg)).toList();
        return new Skyline(List.copyOf(sorted), slope);
    }

    /** Skyline of one height all the way round, such as the tree tops around a clearing. */
    public static Skyline ring(double angleDeg) {
        return new Skyline(List.of(new SkylinePoint(0, angleDeg)), null);
    }

    /** True where nothing is given that rises above a level horizon. */
    public boolean isLevel() {
        return points.isEmpty() && slope == null;
    }

    /** Slope of the ground; null for level ground. */
    public @Nullable Slope slope() {
        return slope;
    }

    /** Angle of the skyline above the level horizon at a bearing, degrees; 0 without points. */
    public double angleDeg(double bearingDeg) {
        return slope == null ? landDeg(bearingDeg) : Math.max(landDeg(bearingDeg), bankDeg(slope, bearingDeg));
    }

    private double landDeg(double bearingDeg) {
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

    /** Angle at which the plane of the slope meets the sky: as steep as the slope uphill, below the horizon downhill. */
    private static double bankDeg(Slope slope, double bearingDeg) {
        return Incline.riseDeg(slope.angleDeg(), slope.facesDeg(), bearingDeg);
    }

    /**
     * Altitude of a level ring that hides as much of an evenly bright sky from level ground as this skyline does,
     * degrees: the mean of cos² of its angle over all bearings is the share of light that is left. The slope is not
     * counted, because it is the ground itself that leans.
     */
    public double evenDeg() {
        double sum = 0;
        for (int bearing = 0; bearing < 360; bearing += VIEW_STEP_DEG) {
            double cosine = Math.cos(Math.toRadians(Math.max(0, landDeg(bearing))));
            sum += cosine * cosine;
        }
        return Math.toDegrees(Math.acos(Math.min(1, Math.sqrt(sum * VIEW_STEP_DEG / 360))));
    }

    /** True if the centre of the sun is above both the skyline and the level horizon. */
    public boolean clears(SunAt sun) {
        return Sunlit.clearanceDeg(sun, this::angleDeg) > 0;
    }

    /**
     * Stretches of a day in which the centre of the sun is above the skyline; each end is within 5 s, plus the
     * error of the sun's position. A broken skyline gives several a day. Stretches end one step after the track.
     *
     * @param place near by
     * @param track of the day, by even steps of 15 minutes or less
     */
    public List<Interval> sunlit(Position place, List<SunAt> track) {
        List<SunAt> whole = new ArrayList<>(track);
        ZonedDateTime last = track.get(track.size() - 1).time();
        whole.add(SunAt.of(place, last.plus(Duration.between(track.get(0).time(), track.get(1).time()))));
        List<Interval> overLand = Sunlit.over(place, whole, points, this::landDeg);
        return slope == null ? overLand
                : Interval.common(overLand, Sunlit.over(place, whole, List.of(), bearing -> bankDeg(slope, bearing)));
    }

    private static double wrap(double bearingDeg) {
        double turns = bearingDeg % 360;
        return turns < 0 ? turns + 360 : turns;
    }

    /** Difference of two bearings as the shorter turn, −180 to 180. */
    static double turned(double deg) {
        return wrap(deg + 180) - 180;
    }
}
