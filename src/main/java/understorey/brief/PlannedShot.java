package understorey.brief;

import org.jspecify.annotations.Nullable;
import understorey.scene.Scene;
import understorey.scene.sketch.DistanceScale;

/**
 * A picture, answered.
 *
 * @param sketch   the frame as its lens would draw it; null when no camera can take it
 * @param sideView camera, subject and what is sharp, from the side; null with the sketch
 * @param scale    distances round the sketch; null with the sketch
 * @param cover    how dense a carpet of flowers looks by focal length; null where there is none, or nothing to compare
 */
public record PlannedShot(TimedShot timed, @Nullable Scene sketch, @Nullable Scene sideView, @Nullable DistanceScale scale, @Nullable Scene cover) {
}
