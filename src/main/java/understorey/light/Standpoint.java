package understorey.light;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import understorey.light.illuminance.CanopyLight;
import understorey.optics.Incline;
import understorey.plan.Site;
import understorey.plan.Slope;
import understorey.plan.Spot;
import understorey.sky.Skyline;

/**
 * Skyline and canopy of a place on a date, with the shares of the sky that they leave.
 *
 * @param openSky      share of an evenly bright sky that reaches open ground
 * @param uniformSky   share of an evenly bright sky that reaches the ground under the canopy
 * @param overcastSky  share of the standard overcast sky that reaches the ground under the canopy
 * @param overcastOpen share of the standard overcast sky that reaches open ground
 */
public record Standpoint(Skyline skyline, CanopyLight canopy, LocalDate date, double openSky,
                         double uniformSky, double overcastSky, double overcastOpen) {

    /** A place under a canopy; the ground has the slope of the skyline. */
    public static Standpoint of(Skyline skyline, CanopyLight canopy, LocalDate date) {
        double landDeg = skyline.evenDeg();
        Slope slope = skyline.slope();
        double leaning = slope == null ? 1 : Incline.skyShare(slope.angleDeg());
        return new Standpoint(skyline, canopy, date, leaning * CanopyLight.NONE.uniformSky(landDeg),
                leaning * canopy.uniformSky(landDeg), leaning * canopy.overcastSky(landDeg),
                leaning * CanopyLight.NONE.overcastSky(landDeg));
    }

    /** A spot of a site on a date; the site itself if the spot is null. */
    public static Standpoint of(Site site, @Nullable Spot spot, LocalDate date) {
        Slope slope = spot == null ? null : spot.slope();
        return of(Skyline.of(site.skylineAt(spot), slope), CanopyLight.of(site.canopyAt(spot),
                spot == null ? null : spot.clearingRadiusM(), site.edgesAt(spot), date), date);
    }

    /** This spot on another date: the shares are computed again only if the leaves have changed. */
    public Standpoint on(LocalDate other, Site site, @Nullable Spot spot) {
        CanopyLight leaves = CanopyLight.of(site.canopyAt(spot), spot == null ? null : spot.clearingRadiusM(), site.edgesAt(spot), other);
        return leaves.equals(canopy)
                ? new Standpoint(skyline, canopy, other, openSky, uniformSky, overcastSky, overcastOpen)
                : of(skyline, leaves, other);
    }

    /** Cosine of the angle between the sun's rays and the normal of the ground; 0 for a sun behind it. */
    public double incidence(double azimuthDeg, double altitudeDeg) {
        Slope slope = skyline.slope();
        return slope == null ? Math.max(0, Math.sin(Math.toRadians(altitudeDeg)))
                : Incline.incidence(slope.angleDeg(), slope.facesDeg(), azimuthDeg, altitudeDeg);
    }
}
