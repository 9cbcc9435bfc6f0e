package understorey.kit;

import understorey.optics.FlowerCover;
import understorey.optics.GroundView;

/**
 * Carpet of flowers through one lens at one focal length, framed as planned.
 *
 * @param fit       of the lens, as tried on the picture
 * @param focalMm   as set on the lens
 * @param cropTimes linear; 1 for the whole frame, as all but the planned choice have it
 * @param planned   true for the lens and focal length that serve the picture best
 * @param ground    how the camera stands and is aimed
 * @param typical   cover in a good stand
 * @param thick     cover in the densest patches
 */
public record CoverChoice(LensFit fit, double focalMm, double cropTimes, boolean planned, GroundView ground,
                          FlowerCover typical, FlowerCover thick) {

    /** Distance from the nearest flowers to the first trunks, metres: common practice, no source. */
    public static final double TRUNK_BEHIND_M = 10;

    /** Full-frame equivalent of the picture as cropped, mm. */
    public double equivalentMm() {
        return focalMm * fit.camera().sensor().crop() * cropTimes;
    }

    /** Distance from the lens to the nearest flowers in the frame, metres. */
    public double nearestM() {
        return typical.nearestM();
    }

    /** Depth of the ground in the frame, metres. */
    public double depthM() {
        return typical.depthM();
    }

    /**
     * Scale of a trunk {@value #TRUNK_BEHIND_M} m behind the nearest flowers against theirs: n / (n + 10 m), 0 to 1,
     * from distance alone. The longer lens stands further back, so that trees grow against the flowers.
     */
    public double trunkScale() {
        return nearestM() / (nearestM() + TRUNK_BEHIND_M);
    }
}
