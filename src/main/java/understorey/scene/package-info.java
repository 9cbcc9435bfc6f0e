/**
 * What drawings are made of, without words. A {@link understorey.scene.Scene Scene} is given the words for its
 * {@link understorey.scene.Fact facts} and becomes a {@link understorey.scene.Drawing Drawing}: plain marks on a sheet
 * of stated size. Coordinates are CSS pixels from the top left corner, rounded to a tenth; text is 16 px, so that a
 * drawing 720 wide prints at more than 10 points on A4 and Letter.
 */
@NullMarked
package understorey.scene;

import org.jspecify.annotations.NullMarked;
