/**
 * What a camera of the bag is, before any picture: a body with a lens and what stands between them
 * ({@link understorey.kit.camera.Camera Camera}), from where to where it focuses ({@link understorey.kit.camera.Reach Reach}), which
 * polariser goes on, and what it can fall short of ({@link understorey.kit.camera.Shortfall Shortfall}). Distances are mm.
 */
@NullMarked
package understorey.kit.camera;

import org.jspecify.annotations.NullMarked;
