package understorey.plan;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;

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
 */
public record Shot(String name, Role role, Subject subject, String spot, Viewpoint viewpoint,
                   Orientation orientation, Sharp sharp, Double focalEquivalentMm, Frame frame, Double facingDeg,
                   List<LightWish> light, Boolean polariser, Duration duration, Integer priority, String notes,
                   String otherwise, Double tiltDeg, LocalTime start, String after, Double printWidthM) {
}
