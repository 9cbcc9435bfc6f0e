package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * Framing that the author asks for: exactly one of width, height and fills; each can have a distance.
 *
 * @param widthM    of the picture at the subject, along the frame's own width
 * @param heightM   of the picture at the subject
 * @param fills     share of the frame height that the subject fills, 0 to 1
 * @param distanceM from lens to subject; null if the tool chooses
 */
public record Frame(@Nullable Double widthM, @Nullable Double heightM, @Nullable Double fills, @Nullable Double distanceM) {
}
