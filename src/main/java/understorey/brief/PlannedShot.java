package understorey.brief;

import org.jspecify.annotations.Nullable;
import understorey.scene.Scene;

/**
 * A picture, answered.
 *
 * @param sketch   the frame as its lens would draw it; null when no camera can take it
 * @param sideView camera, subject and what is sharp, from the side; null with the sketch
 * @param scale    distances and bearings round the sketch; null with the sketch
 */
public record PlannedShot(TimedShot timed, @Nullable Scene sketch, @Nullable Scene sideView, @Nullable Scene scale) {
}
