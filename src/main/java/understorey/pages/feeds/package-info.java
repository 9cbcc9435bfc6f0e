/**
 * A trip for the calendar and the map: {@link understorey.pages.feeds.TripCalendar TripCalendar} writes iCalendar (RFC 5545),
 * with times in UTC, and {@link understorey.pages.feeds.Waypoints Waypoints} writes GPX 1.1, in degrees of WGS 84 and metres.
 * Both give positions only as exactly as the audience may know them.
 */
@NullMarked
package understorey.pages.feeds;

import org.jspecify.annotations.NullMarked;
