/**
 * From a {@link understorey.brief.Brief Brief} to the files of the site. {@link understorey.pages.SitePages SitePages} makes the
 * pages of a trip, {@link understorey.pages.SharedPages SharedPages} those that trips share, and
 * {@link understorey.pages.DaysList DaysList} the list of days for the terminal. Each kind of file has a room of its own; the
 * words for figures and reasons are in {@link understorey.pages.words}. Nothing is computed here.
 */
@NullMarked
package understorey.pages;

import org.jspecify.annotations.NullMarked;
