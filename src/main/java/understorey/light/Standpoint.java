package understorey.light;

import java.time.LocalDate;
import understorey.plan.Site;
import understorey.plan.Slope;
import understorey.plan.Spot;
import understorey.sky.Skyline;

/**
 * Where light falls: what stands round a place and over it on a date, with what that leaves of the sky worked out
 * once.
 *
 * @param openSky      share of an evenly bright sky that the land leaves to open ground
 * @param uniformSky   the same under the canopy
 * @param overcastSky  share of the standard overcast sky under the canopy
 * @param overcastOpen the same on open ground
 */
public record Standpoint(Skyline skyline, CanopyLight canopy, LocalDate date, double openSky,
                         double uniformSky, double overcastSky, double overcastOpen) {

    /** A place under a canopy; the ground leans as the skyline's own does. */
    public static Standpoint of(Skyline skyline, CanopyLight canopy, LocalDate date) {
        double landDeg = skyline.evenDeg();
        Slope slope = skyline.slope();
        double leaning = slope == null ? 1 : (1 + Math.cos(Math.toRadians(slope.angleDeg()))) / 2;
        return new Standpoint(skyline, canopy, date, leaning * CanopyLight.NONE.uniformSky(landDeg),
                leaning * canopy.uniformSky(landDeg), leaning * canopy.overcastSky(landDeg),
                leaning * CanopyLight.NONE.overcastSky(landDeg));
    }

    /** A spot of a site on a date; the site itself when the spot is null. */
    public static Standpoint of(Site site, Spot spot, LocalDate date) {
        Slope slope = spot == null ? null : spot.slope();
        return of(Skyline.of(site.skylineAt(spot), slope), CanopyLight.of(site.canopyAt(spot),
                spot == null ? null : spot.clearingRadiusM(), date), date);
    }

    /** The same spot on another date: what is left of the sky is worked out anew only where the leaves have changed. */
    public Standpoint on(LocalDate other, Site site, Spot spot) {
        CanopyLight leaves = CanopyLight.of(site.canopyAt(spot), spot == null ? null : spot.clearingRadiusM(), other);
        return leaves.equals(canopy)
                ? new Standpoint(skyline, canopy, other, openSky, uniformSky, overcastSky, overcastOpen)
                : of(skyline, leaves, other);
    }

    /**
     * Cosine of the angle between the sun's rays and the upright on the ground, from the sun's bearing and the
     * altitude at which it is seen; 0 for a sun behind the bank. Spherical cosine rule, as in Reda and Andreas,
     * NREL/TP-560-34302, eq. 47.
     */
    public double incidence(double azimuthDeg, double altitudeDeg) {
        double h = Math.toRadians(altitudeDeg);
        Slope slope = skyline.slope();
        if (slope == null) {
            return Math.max(0, Math.sin(h));
        }
        double s = Math.toRadians(slope.angleDeg());
        return Math.max(0, Math.sin(h) * Math.cos(s)
                + Math.cos(h) * Math.sin(s) * Math.cos(Math.toRadians(azimuthDeg - slope.facesDeg())));
    }
}
