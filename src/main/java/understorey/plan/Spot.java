package understorey.plan;

import java.util.List;

/**
 * A place to stand within a site; what it leaves out, the site answers.
 *
 * @param name            as shots and walks call it
 * @param at              null when only the site's position is known
 * @param elevationM      above sea level; null for the site's
 * @param canopy          null for the site's
 * @param skyline         null for the site's
 * @param slope           null for level ground
 * @param clearingRadiusM distance to the edge of the trees; null when not in a clearing
 * @param notes           Markdown; null when there are none
 */
public record Spot(String name, Position at, Double elevationM, Canopy canopy, List<SkylinePoint> skyline,
                   Slope slope, Double clearingRadiusM, String notes) {
}
