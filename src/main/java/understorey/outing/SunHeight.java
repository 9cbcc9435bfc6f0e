package understorey.outing;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import understorey.light.LightAt;

/**
 * How high the sun stands over a day, between rows at even steps; to 0.03° with rows a quarter of an hour apart, for a
 * straight line misses at most an eighth of the step squared times the sun's turn squared. Before the first and after the
 * last row it stays as it is there.
 */
final class SunHeight {

    /** Upper edge on a flat horizon: 34′ of refraction and 16′ of radius. */
    private static final double RISE_DEG = -50.0 / 60;
    /** End of civil twilight. */
    private static final double CIVIL_DEG = -6;

    private final List<LightAt> light;
    private final ZonedDateTime first;
    private final double stepSeconds;

    SunHeight(List<LightAt> light) {
        this.light = light;
        this.first = light.get(0).sun().time();
        this.stepSeconds = Duration.between(first, light.get(1).sun().time()).toSeconds();
    }

    /** Its centre, degrees. */
    double altitudeDeg(ZonedDateTime time) {
        double row = Math.max(0, Math.min(light.size() - 1, Duration.between(first, time).toSeconds() / stepSeconds));
        int before = Math.min(light.size() - 2, (int) row);
        double share = row - before;
        return light.get(before).sun().altitudeDeg() * (1 - share) + light.get(before + 1).sun().altitudeDeg() * share;
    }

    boolean up(ZonedDateTime time) {
        return altitudeDeg(time) >= RISE_DEG;
    }

    /** Dark by the sun itself: a dusk of the night before and a polar day or night make no difference to it. */
    boolean dark(ZonedDateTime time) {
        return altitudeDeg(time) < CIVIL_DEG;
    }
}
