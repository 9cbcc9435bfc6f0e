package understorey.plan;

/**
 * Framing that the author asks for: exactly one of width, height and fills; each can have a distance.
 *
 * @param widthM    of the picture at the subject, along the frame's own width; null when not given
 * @param heightM   of the picture at the subject; null when not given
 * @param fills     share of the frame height that the subject fills, 0 to 1; null if not given
 * @param distanceM from lens to subject; null if the tool chooses
 */
public record Frame(Double widthM, Double heightM, Double fills, Double distanceM) {
}
