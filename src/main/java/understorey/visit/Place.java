package understorey.visit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.light.Standpoint;
import understorey.plan.Site;
import understorey.sky.Interval;
import understorey.sky.SunAt;
import understorey.weather.Mist;

/**
 * A place where pictures are taken, with its light. Spots with the same skyline under the same trees share one place.
 *
 * @param spots     their names; empty for the site itself
 * @param likeSite  the light is the site's own
 * @param stand     its skyline and its trees
 * @param light     over the day, every 15 minutes
 * @param track     the sun, row by row
 * @param sunlit    stretches in which the sun is above the skyline
 * @param overTrees stretches in which the sun is also above the treetops around a clearing; null without a clearing
 * @param mist      how likely it is there at dawn
 */
public record Place(List<String> spots, boolean likeSite, Standpoint stand, List<LightAt> light, List<SunAt> track,
                    List<Interval> sunlit, @Nullable List<Interval> overTrees, Mist mist) {

    /** The names of its spots, or that of the site. */
    public String name(Site site) {
        return spots.isEmpty() ? site.name() : String.join(", ", spots);
    }

    /** True where no skyline is known. */
    public boolean levelHorizon() {
        return stand.skyline().isLevel();
    }

    /** True for the place of that spot; null is the site itself. */
    boolean holds(@Nullable String spot) {
        return spot == null ? likeSite : spots.contains(spot);
    }
}
