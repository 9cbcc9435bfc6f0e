package understorey.plan;

/**
 * One point of the skyline.
 *
 * @param bearingDeg from true north, clockwise, 0 to 360
 * @param angleDeg   above the level horizon; negative if the land is lower there
 */
public record SkylinePoint(double bearingDeg, double angleDeg) {
}
