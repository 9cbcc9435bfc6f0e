package understorey.visit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Walk;

/** Times of walks: as the author timed them, by way of other spots if necessary; else estimated from positions. */
public final class Walking {

    /** Mean radius of the Earth, m (WGS 84, R1). */
    private static final double EARTH_M = 6_371_008.8;
    /** Walked length over the straight line in woods, 1.2 to 1.4: common practice, no source. */
    private static final double WINDING = 1.3;
    /** Pace with 10 to 15 kg on the back, 0.85 to 0.9: common practice, no source. */
    private static final double LADEN = 0.85;
    /** Pace on a wood path by head torch: common practice, no source. */
    private static final double IN_THE_DARK = 0.7;

    /** Paths wind until they are no steeper, rise over run: the end of the published check table. */
    private static final double STEEPEST = 0.5;

    private final Site site;

    public Walking(Site site) {
        this.site = site;
    }

    /**
     * Time from one spot to another, rounded up to whole minutes; a null name is the site itself.
     *
     * @return null if there is neither a timed walk nor a position of both
     */
    public @Nullable Duration between(@Nullable String from, @Nullable String to, boolean dark) {
        return between(from, to, dark, Pace.TOBLER);
    }

    /** Time from one spot to another; an untimed walk has the pace of that function. */
    public @Nullable Duration between(@Nullable String from, @Nullable String to, boolean dark, Pace pace) {
        if (Objects.equals(from, to)) {
            return Duration.ZERO;
        }
        Duration timed = timed(from, to);
        Double seconds = timed != null ? Double.valueOf(timed.toSeconds()) : estimated(site.spot(from), site.spot(to), pace);
        if (seconds == null) {
            return null;
        }
        return Duration.ofMinutes((long) Math.ceil(seconds / 60 / (dark ? IN_THE_DARK : 1) - 1e-9));
    }

    /** The shortest chain of timed walks; null if there is none. */
    private @Nullable Duration timed(@Nullable String from, @Nullable String to) {
        List<String> open = new ArrayList<>();
        for (Spot spot : site.spots()) {
            open.add(spot.name());
        }
        Duration[] best = new Duration[open.size()];
        boolean[] done = new boolean[open.size()];
        int at = open.indexOf(from);
        if (at < 0 || open.indexOf(to) < 0) {
            return null;
        }
        best[at] = Duration.ZERO;
        while (at >= 0) {
            done[at] = true;
            for (Walk walk : site.walks()) {
                for (int next = 0; next < best.length; next++) {
                    Duration sum = walk.joins(open.get(at), open.get(next)) ? best[at].plus(walk.duration()) : null;
                    if (sum != null && (best[next] == null || sum.compareTo(best[next]) < 0)) {
                        best[next] = sum;
                    }
                }
            }
            at = nearest(best, done);
        }
        return best[open.indexOf(to)];
    }

    private static int nearest(Duration[] best, boolean[] done) {
        int nearest = -1;
        for (int i = 0; i < best.length; i++) {
            if (!done[i] && best[i] != null && (nearest < 0 || best[i].compareTo(best[nearest]) < 0)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private @Nullable Double estimated(@Nullable Spot from, @Nullable Spot to, Pace pace) {
        Position a = site.positionOf(from);
        Position b = site.positionOf(to);
        if (from != null && from.at() == null || to != null && to.at() == null) {
            return null;
        }
        double rise = riseM(from, to);
        double metres = Math.max(metres(a, b) * WINDING, Math.abs(rise) / STEEPEST);
        return metres == 0 ? 0 : metres / (pace.capped(rise / metres) * LADEN / 3.6);
    }

    /** Rise from one spot to another; 0 if either elevation is unknown. */
    private double riseM(@Nullable Spot from, @Nullable Spot to) {
        Double a = elevationM(from);
        Double b = elevationM(to);
        return a == null || b == null ? 0 : b - a;
    }

    private @Nullable Double elevationM(@Nullable Spot spot) {
        return spot == null || spot.elevationM() == null ? site.elevationM() : spot.elevationM();
    }

    /**
     * Great-circle distance, m, by the haversine. Within 0.4 % of geodesics on the ellipsoid (Karney 2013, Vincenty 1975):
     * far less than paths wind.
     */
    public static double metres(Position a, Position b) {
        double dLat = Math.toRadians(b.latitude() - a.latitude());
        double dLon = Math.toRadians(b.longitude() - a.longitude());
        double h = Math.pow(Math.sin(dLat / 2), 2) + Math.cos(Math.toRadians(a.latitude()))
                * Math.cos(Math.toRadians(b.latitude())) * Math.pow(Math.sin(dLon / 2), 2);
        return 2 * EARTH_M * Math.asin(Math.min(1, Math.sqrt(h)));
    }
}
