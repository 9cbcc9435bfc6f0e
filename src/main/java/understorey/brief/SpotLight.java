package understorey.brief;

import java.util.List;
import understorey.light.LightAt;
import understorey.light.Mist;
import understorey.light.Standpoint;
import understorey.scene.Drawing;
import understorey.sky.Interval;

/**
 * The light where pictures are taken. Spots that see the same land under the same trees share one.
 *
 * @param spots     their names; empty for the site itself
 * @param place     what stands round and over them
 * @param light     over the whole local day, every 15 minutes
 * @param sunlit    stretches in which the sun stands clear of the land
 * @param overTrees stretches in which it stands over the tree tops round a clearing too; null without one
 * @param mist      how likely it lies there at dawn
 */
public record SpotLight(List<String> spots, Standpoint place, List<LightAt> light, List<Interval> sunlit,
                        List<Interval> overTrees, Mist mist, Drawing dayLight, Drawing skyline) {
}
