package understorey.brief;

import java.util.List;
import understorey.exposure.Settings;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.kit.Verdict;
import understorey.light.LightAt;
import understorey.plan.SkyWord;
import understorey.reason.Reason;
import understorey.sky.Interval;

/**
 * All there is to say about one picture.
 *
 * @param number        in the author's order, from 1
 * @param time          when it is taken; null when the visit leaves no time for it
 * @param light         at its spot in the middle of that time, or of the visit
 * @param lightAngleDeg between the lens axis and the sun, by bearing: 0 into the sun, 180 with it behind you;
 *                      null when the shot faces nowhere in particular or the sun is down
 * @param settings      for the sky expected; null when no camera can take it
 * @param otherSkies    the same picture under a clear, a broken and an overcast sky
 * @param companions    how each companion's bag serves it
 */
public record ShotBrief(int number, Intent intent, ShotFit fit, Interval time, LightAt light, Double lightAngleDeg,
                        Settings settings, List<InSky> otherSkies, List<ForCompanion> companions) {

    /** Settings for one sky. */
    public record InSky(SkyWord sky, Settings settings) {
    }

    /** The best lens of someone else's bag; null when that bag holds no camera. */
    public record ForCompanion(String name, LensFit best) {
    }

    /** What would help; nothing where the picture can be had as it was asked for. */
    public List<Reason> helps() {
        return verdict() == Verdict.FITS ? List.of() : fit.helps();
    }

    /** Lens and light together. */
    public Verdict verdict() {
        LensFit best = fit.best();
        return best == null ? Verdict.CANNOT : best.verdict().and(settings.verdict());
    }
}
