/**
 * Reads sites: spots, walks, skylines, canopies, flowering records and temperatures. Start at
 * {@link understorey.reading.site.SiteReader SiteReader}; {@link understorey.reading.site.SiteRead SiteRead} is a site with the names
 * that a trip can use.
 */
@NullMarked
package understorey.reading.site;

import org.jspecify.annotations.NullMarked;
