/**
 * Charts over a scale: the light of a day, the sun over the skyline, the running order, the season, and the spots to
 * scale. Each chart has a static method that takes results and returns a {@link understorey.scene.Scene Scene}.
 */
@NullMarked
package understorey.scene.chart;

import org.jspecify.annotations.NullMarked;
