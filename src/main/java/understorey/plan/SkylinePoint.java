package understorey.plan;

/**
 * One point of the land's own horizon.
 *
 * @param bearingDeg from true north, clockwise, 0 to 360
 * @param angleDeg   above the level horizon; negative where the land falls away
 */
public record SkylinePoint(double bearingDeg, double angleDeg) {
}
