/**
 * What a drawing shows, projected and ready: a {@link understorey.scene.Drawing Drawing} is a list of plain
 * marks on a sheet of stated size. Coordinates are CSS pixels from the top left corner, rounded to a tenth;
 * text is 16 px, so that a drawing 720 wide prints at more than 10 points on A4 and Letter.
 */
@NullMarked
package understorey.scene;

import org.jspecify.annotations.NullMarked;
