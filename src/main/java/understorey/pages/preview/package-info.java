/**
 * The picture that other sites show beside a link to a plan: {@link understorey.pages.preview.PreviewImage PreviewImage} draws the
 * opening sketch and the title as PNG. Only builds with an address use it, because the desktop module is slow to start.
 */
@NullMarked
package understorey.pages.preview;

import org.jspecify.annotations.NullMarked;
