/**
 * Charts over a scale: the light of a day, the sun over the skyline, the running order, the season, and the spots to
 * scale. Each has a static method that takes results and returns a {@link understorey.scene.Scene Scene}. The
 * {@link understorey.scene.chart.YearStrip YearStrip} is for a page to lay out, at any width.
 */
@NullMarked
package understorey.scene.chart;

import org.jspecify.annotations.NullMarked;
