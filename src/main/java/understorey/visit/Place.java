package understorey.visit;

import java.util.List;
import understorey.light.LightAt;
import understorey.light.Mist;
import understorey.light.Standpoint;
import understorey.sky.Interval;
import understorey.sky.SunAt;

/**
 * The light where pictures are taken. Spots with the same skyline under the same trees share one place.
 *
 * @param spots     their names; empty for the site itself
 * @param likeSite  the light is the site's own
 * @param stand     what surrounds it and is above it
 * @param light     over the whole local day, every 15 minutes
 * @param track     the sun, row by row
 * @param sunlit    stretches in which the sun is above the skyline
 * @param overTrees stretches in which it is also above the treetops around a clearing; null without one
 * @param mist      how likely it is there at dawn
 */
public record Place(List<String> spots, boolean likeSite, Standpoint stand, List<LightAt> light, List<SunAt> track,
                    List<Interval> sunlit, List<Interval> overTrees, Mist mist) {

    /** True where no skyline is known. */
    public boolean levelHorizon() {
        return stand.skyline().isLevel();
    }

    /** True for the place of that spot; null names the site itself. */
    boolean holds(String spot) {
        return spot == null ? likeSite : spots.contains(spot);
    }
}
