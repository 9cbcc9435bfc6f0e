package understorey.plan;

/**
 * A direction in which the trees end, at the edge of the wood or at a ride.
 *
 * @param bearingDeg from true north, clockwise, 0 to 360
 * @param distanceM  to the last tree, along the ground
 */
public record Edge(double bearingDeg, double distanceM) {
}
