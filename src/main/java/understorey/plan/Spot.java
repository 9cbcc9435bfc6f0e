package understorey.plan;

import java.util.List;
import org.jspecify.annotations.Nullable;

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
 * @param notes           Markdown
 * @param edges           null for the site's
 */
public record Spot(String name, @Nullable Position at, @Nullable Double elevationM, @Nullable Canopy canopy,
                   @Nullable List<SkylinePoint> skyline, @Nullable Slope slope, @Nullable Double clearingRadiusM,
                   @Nullable String notes, @Nullable List<Edge> edges) {
}
