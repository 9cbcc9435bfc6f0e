/**
 * How long a hand holds still, and how long a stem in the wind does. {@link understorey.exposure.motion.HandHeld HandHeld} limits
 * the shutter time by the posture, {@link understorey.exposure.motion.StemSway StemSway} by the wind among the plants.
 * {@link understorey.exposure.motion.Lulls Lulls} says how long to wait for a lull. Times are seconds, wind is metres a second,
 * sway and blur are millimetres.
 */
@NullMarked
package understorey.exposure.motion;

import org.jspecify.annotations.NullMarked;
