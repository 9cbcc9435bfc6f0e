/**
 * The part of a plan that its audience may see. {@link understorey.share.Sharing Sharing} turns a plan into the plan for
 * its audience before anything is computed, so that no later room ever has the rest.
 * {@link understorey.share.Leaks Leaks} finds what the author's texts give away of a sensitive place; it rewrites nothing.
 *
 * <table>
 * <caption>What each audience gets; "public" is of a sensitive site. Other public pages follow the first column, but for
 * contact and companions, and with a coarse position 0.01°</caption>
 * <tr><th>Field<th>private, party<th>public, coarse (exact counts as coarse)<th>public, hidden
 * <tr><td>position<td>as written; coarse 0.01°, hidden 0.1°<td>centre of a cell of 0.1°<td>centre of a cell of 1°, not shown
 * <tr><td>elevation<td>as written; 100 m if not exact<td>100 m<td>100 m
 * <tr><td>time zone<td>as written<td>as written<td>offset from UTC on the day
 * <tr><td>country<td>as written<td>as written<td>none
 * <tr><td>date<td>as written<td>as written<td>month; computed for its 15th
 * <tr><td>weekdays, days to avoid, warmth of the spring<td>as written<td>as written<td>none
 * <tr><td>computed and written times<td>to the minute<td>5 minutes<td>15 minutes
 * <tr><td>skyline, edges, slope, clearing, spot positions and heights<td>as written<td>none<td>none
 * <tr><td>walks, opening hours, parking<td>as written<td>none<td>none
 * <tr><td>canopy<td>as written<td>height to 5 m, no trunks<td>height to 5 m, no trunks
 * <tr><td>flowering records<td>as written<td>to a week, for the window only<td>none: the catalogue's months
 * <tr><td>daily temperatures, sightings<td>as written<td>none<td>none
 * <tr><td>forecast<td>as written<td>1 °C, 1 m/s, 1 okta, 10 %, 0.5 mm<td>none
 * <tr><td>site name, slug of its page<td>as written<td>public name<td>public name
 * <tr><td>spot names<td>as written<td>numbers<td>numbers
 * <tr><td>access, reports, notes of site and spots<td>as written<td>none<td>none
 * <tr><td>contact<td>as written<td>none<td>none
 * <tr><td>names of companions<td>as written<td>numbers<td>numbers
 * <tr><td>bearing of a picture, light wished for, settings<td>as written<td>as written<td>as written
 * <tr><td>every other text, names of trip and bag files<td>as written<td>as written, if no leak<td>as written, if no leak
 * <tr><td>calendar, waypoints<td>yes<td>yes, without a spot<td>no file
 * </table>
 *
 * <p>Positions are generalised, never shifted at random: A. D. Chapman, <cite>Current Best Practices for
 * Generalizing Sensitive Species Occurrence Data</cite>, GBIF, 2020, Table 7, categories 2 (0.1°) and 3 (0.01°).
 * Rounding is decimal, half away from zero. The other steps are common practice, no source.
 */
@NullMarked
package understorey.share;

import org.jspecify.annotations.NullMarked;
