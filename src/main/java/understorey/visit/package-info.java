/**
 * The day of a trip: {@link understorey.visit.Day Day} has its sun and moon, the hours of the visit, the light at each spot and
 * the walks between them; {@link understorey.visit.Safety Safety} gets the photographer out of the wood in time. Walks have
 * the author's times or published functions of the slope (Tobler 1993 and others, see {@link understorey.visit.Pace Pace}). Distances are
 * metres, minutes count from the start of the local day.
 */
@NullMarked
package understorey.visit;

import org.jspecify.annotations.NullMarked;
