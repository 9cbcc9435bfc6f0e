package understorey.plan;

import org.jspecify.annotations.Nullable;

/**
 * What the author of a shot sets on the camera; each null if it is left to the plan.
 *
 * @param fNumber  as set on the lens
 * @param shutterS seconds
 * @param stacked  false for one frame, whatever the depth of field asked
 */
public record CameraSettings(@Nullable Double fNumber, @Nullable Double shutterS, @Nullable Integer iso, @Nullable Boolean stacked) {

    public static final CameraSettings NONE = new CameraSettings(null, null, null, null);
}
