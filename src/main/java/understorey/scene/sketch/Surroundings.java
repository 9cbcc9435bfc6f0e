package understorey.scene.sketch;

import org.jspecify.annotations.Nullable;
import understorey.sky.Skyline;

/**
 * What stands behind a carpet.
 *
 * @param leaves  share of their full leaves that the trees have, 0 to 1
 * @param skyline of the place; null where it is not known
 */
public record Surroundings(double leaves, @Nullable Skyline skyline) {

    /** A bare wood and a level horizon. */
    public static final Surroundings BARE = new Surroundings(0, null);
}
