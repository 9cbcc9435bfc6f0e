package understorey.plan;

/**
 * Slope of the ground at a spot.
 *
 * @param angleDeg from level, 0 to 90
 * @param facesDeg bearing of the downhill direction
 */
public record Slope(double angleDeg, double facesDeg) {
}
