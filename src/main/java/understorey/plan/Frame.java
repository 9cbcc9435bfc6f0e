package understorey.plan;

/**
 * How the author frames: exactly one of width, height and fills; the distance may go with any.
 *
 * @param widthM    of the picture at the subject, along the frame's own width; null when not given
 * @param heightM   of the picture at the subject; null when not given
 * @param fills     share of the frame's height that the subject takes, 0 to 1; null when not given
 * @param distanceM from lens to subject; null when the tool may choose
 */
public record Frame(Double widthM, Double heightM, Double fills, Double distanceM) {
}
