/**
 * Reads trips: dates, forecast, shots. Start at {@link understorey.reading.trip.TripReader TripReader};
 * {@link understorey.reading.trip.Library Library} has the sites and bags that trips name,
 * {@link understorey.reading.trip.AuthorLinks AuthorLinks} checks the links in their texts.
 */
@NullMarked
package understorey.reading.trip;

import org.jspecify.annotations.NullMarked;
