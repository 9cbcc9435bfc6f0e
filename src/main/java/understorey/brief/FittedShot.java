package understorey.brief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.optics.Projection;
import understorey.visit.Place;

/**
 * A picture with its spot and its lens.
 *
 * @param number     in the author's order, from 1
 * @param place      where it is taken, with the light there over the day
 * @param fit        of the lenses of the bag, the carried ones first
 * @param companions how each companion's bag serves it
 */
public record FittedShot(int number, Place place, ShotFit fit, List<ForCompanion> companions) {

    /** What the best lens has before it; null if there is none, or the picture faces nowhere in particular. */
    public @Nullable Projection camera() {
        Double facingDeg = fit.intent().shot().facingDeg();
        LensFit best = fit.best();
        return best == null || facingDeg == null ? null : Projection.of(facingDeg, best.tiltDeg(), best.view());
    }

    /** The best lens of a companion's bag; null when that bag holds no camera. */
    public record ForCompanion(String name, @Nullable LensFit best) {
    }
}
