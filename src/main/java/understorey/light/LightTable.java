package understorey.light;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.sky.Interval;
import understorey.sky.MoonAt;
import understorey.sky.SunAt;
import understorey.sky.SunTrack;

/** The light over a day. */
public final class LightTable {

    private static final Duration STEP = Duration.ofMinutes(15);
    /** Civil twilight is brighter than any moon. */
    private static final double MOON_COUNTS_BELOW_DEG = -6;

    private LightTable() {
    }

    /** The light at a spot of a site; at the site itself if the spot is null. */
    public static List<LightAt> of(Site site, @Nullable Spot spot, Interval day) {
        return of(site.positionOf(spot), day, Standpoint.of(site, spot, day.from().toLocalDate()));
    }

    /** The light at a place so near that sun and moon have the same position: 1 km is 0.01°. */
    public static List<LightAt> near(List<LightAt> rows, Standpoint place) {
        return rows.stream().map(row -> row.at(place)).toList();
    }

    /**
     * Light every 15 minutes from the first instant of a day to its end, the end excluded: 92, 96 or 100 rows of a local date.
     */
    public static List<LightAt> of(Position position, Interval day, Standpoint place) {
        return SunTrack.of(position, day, STEP).stream().map(sun -> at(position, sun, place)).toList();
    }

    /** The light at an instant of a day from its rows, which are at even steps. */
    public static LightAt between(List<LightAt> rows, ZonedDateTime time) {
        Place place = place(rows, time);
        return LightAt.between(rows.get(place.before), rows.get(place.before + 1), place.share);
    }

    /**
     * Where a time lies among rows.
     *
     * @param before the row before it, never the last one
     * @param share  of the step that has passed; below 0 or above 1 for a time outside the rows
     */
    public record Place(int before, double share) {

        /** A figure of the rows, linear between them; outside them that of the first or of the last. */
        public double mix(IntToDoubleFunction figure) {
            double within = Math.max(0, Math.min(1, share));
            return figure.applyAsDouble(before) * (1 - within) + figure.applyAsDouble(before + 1) * within;
        }
    }

    /** Where a time lies among the rows of a day, which are at even steps. */
    public static Place place(List<LightAt> rows, ZonedDateTime time) {
        long step = Duration.between(rows.get(0).time(), rows.get(1).time()).toMillis();
        double past = (double) Duration.between(rows.get(0).time(), time).toMillis() / step;
        int before = Math.max(0, Math.min(rows.size() - 2, (int) past));
        return new Place(before, past - before);
    }

    /** The light at one instant: the moon counts from the end of civil twilight on. */
    public static LightAt at(Position position, SunAt sun, Standpoint place) {
        boolean dark = sun.altitudeDeg() < MOON_COUNTS_BELOW_DEG;
        return LightAt.of(sun, place, dark ? MoonAt.of(position, sun.time()) : null);
    }
}
