package understorey.plan;

import java.util.List;

/**
 * A place for the camera within a site. The site gives what a spot leaves out.
 *
 * @param name            as in shots and walks
 * @param at              null if only the position of the site is known
 * @param elevationM      above sea level; null for the site's
 * @param canopy          null for the site's
 * @param skyline         null for the site's
 * @param slope           null for level ground
 * @param clearingRadiusM distance to the edge of the trees; null if not in a clearing
 * @param notes           Markdown; null when there are none
 */
public record Spot(String name, Position at, Double elevationM, Canopy canopy, List<SkylinePoint> skyline,
                   Slope slope, Double clearingRadiusM, String notes) {
}
