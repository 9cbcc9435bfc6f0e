/**
 * The markings of a camera: third-stop scales of aperture, shutter time and ISO
 * ({@link understorey.exposure.scale.StopScale StopScale}), the shutter ({@link understorey.exposure.scale.Shutter Shutter}) and the
 * frames of a bracket ({@link understorey.exposure.scale.Bracket Bracket}).
 */
@NullMarked
package understorey.exposure.scale;

import org.jspecify.annotations.NullMarked;
