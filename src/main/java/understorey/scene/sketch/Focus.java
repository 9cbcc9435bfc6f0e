package understorey.scene.sketch;

import understorey.optics.BackgroundBlur;

/**
 * What a lens makes sharp and how far the rest dissolves, worked out once a picture: a drawing asks at each plant.
 *
 * @param focalMm     of the thin lens that acts
 * @param fNumber     of that lens
 * @param usedWidthMm of the part of the sensor that is used
 * @param sharpFromM  nearest sharp point, from the lens
 * @param sharpToM    farthest sharp point, up to infinity
 */
record Focus(double focalMm, double fNumber, double focusM, double usedWidthMm, double sharpFromM, double sharpToM) {

    boolean sharp(double depthM) {
        return depthM >= sharpFromM && depthM <= sharpToM;
    }

    /** Diameter of the blur of a point, share of the frame's width; 0 where it is sharp. */
    double blurShare(double depthM) {
        return sharp(depthM) ? 0 : BackgroundBlur.discMm(focalMm, fNumber, focusM * 1000, depthM * 1000) / usedWidthMm;
    }
}
