/**
 * Sketches of one picture, to scale: {@link understorey.scene.sketch.ViewfinderSketch} as its lens draws it, and
 * {@link understorey.scene.sketch.SideView} from the side. Both start from a {@link understorey.scene.sketch.Setup}.
 * Lengths are in metres, the frame in pixels; what looks like chance follows from a seed.
 */
@NullMarked
package understorey.scene.sketch;

import org.jspecify.annotations.NullMarked;
