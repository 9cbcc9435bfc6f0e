package understorey.plan;

/**
 * A bank.
 *
 * @param angleDeg from level, 0 to 90
 * @param facesDeg the bearing that it falls towards
 */
public record Slope(double angleDeg, double facesDeg) {
}
