/**
 * Drawings as inline SVG 1.1: {@link understorey.pages.svg.Svg Svg} writes the marks of a
 * {@link understorey.scene.Drawing Drawing} in its own units, to a tenth. Colours and widths are in the style sheet.
 */
@NullMarked
package understorey.pages.svg;

import org.jspecify.annotations.NullMarked;
