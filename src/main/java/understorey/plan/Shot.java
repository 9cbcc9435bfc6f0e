package understorey.plan;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One planned picture. Only name and subject are always present; every other component is null (or an empty list) if the
 * author left it out.
 *
 * @param spot              name of a spot of the site; null for the site itself
 * @param focalEquivalentMm full-frame equivalent focal length
 * @param facingDeg         bearing of the lens axis
 * @param polariser         whether to use one
 * @param priority          1 nice, 2 wanted, 3 must
 * @param tiltDeg           of the lens axis below the horizontal
 * @param start             fixed time, local
 * @param after             name of the shot that must come first
 * @param printWidthM       of the print that the picture is for
 * @param chosen            camera that the author decided on
 * @param set               what the author sets on the camera
 */
public record Shot(String name, @Nullable Role role, Subject subject, @Nullable String spot, @Nullable Viewpoint viewpoint,
                   @Nullable Orientation orientation, @Nullable Sharp sharp, @Nullable Double focalEquivalentMm,
                   @Nullable Frame frame, @Nullable Double facingDeg, List<LightWish> light, @Nullable Boolean polariser,
                   @Nullable Duration duration, @Nullable Integer priority, @Nullable String notes, @Nullable String otherwise,
                   @Nullable Double tiltDeg, @Nullable LocalTime start, @Nullable String after, @Nullable Double printWidthM,
                   @Nullable Compose compose, ChosenCamera chosen, CameraSettings set) {

    /** A shot whose camera and settings are left to the plan. */
    public Shot(String name, @Nullable Role role, Subject subject, @Nullable String spot, @Nullable Viewpoint viewpoint,
                @Nullable Orientation orientation, @Nullable Sharp sharp, @Nullable Double focalEquivalentMm, @Nullable Frame frame,
                @Nullable Double facingDeg, List<LightWish> light, @Nullable Boolean polariser, @Nullable Duration duration,
                @Nullable Integer priority, @Nullable String notes, @Nullable String otherwise, @Nullable Double tiltDeg,
                @Nullable LocalTime start, @Nullable String after, @Nullable Double printWidthM, @Nullable Compose compose) {
        this(name, role, subject, spot, viewpoint, orientation, sharp, focalEquivalentMm, frame, facingDeg, light, polariser, duration,
                priority, notes, otherwise, tiltDeg, start, after, printWidthM, compose, ChosenCamera.NONE,
                CameraSettings.NONE);
    }

    public boolean wishesForSun() {
        return light.stream().anyMatch(LightWish::needsSun);
    }

    /** The same shot with camera settings. */
    public Shot with(CameraSettings settings) {
        return new Shot(name, role, subject, spot, viewpoint, orientation, sharp, focalEquivalentMm, frame, facingDeg, light, polariser,
                duration, priority, notes, otherwise, tiltDeg, start, after, printWidthM, compose, chosen, settings);
    }
}
