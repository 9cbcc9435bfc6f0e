package understorey.visit;

import org.jspecify.annotations.Nullable;

/**
 * The way back from the farthest spot visited, at the end of the visit.
 *
 * @param spot           null for the site itself
 * @param minutes        as planned
 * @param longestMinutes by the slowest of the published functions of pace; as planned if the author timed the walk
 * @param dark           whether any of it is dark
 */
public record WalkOut(@Nullable String spot, int minutes, int longestMinutes, boolean dark) {
}
