package understorey.exposure.scale;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Which frames hold a scene whose light differs too much for one. All of it common practice, no source: a RAW file
 * holds about ten stops with detail, what camera software makes of it about eight; petals and wet bark in one light
 * are six apart, so four and two are left for the light to differ. A white petal in the light metered is one
 * stop below the brightest that is held.
 */
public final class Bracket {

    private static final double RAW_STOPS = 10;
    private static final double FINISHED_STOPS = 8;
    private static final double SURFACES_STOPS = 6;
    private static final double HEADROOM_STOPS = 1;
    private static final int STEP_STOPS = 2;
    /** Four stops of exposures and what a file holds leave out the sun's own disc alone, which a stem covers. */
    public static final int MOST_STEPS = 2;

    private Bracket() {
    }

    /** Stops that the light may differ by within one frame. */
    static double heldStops(boolean raw) {
        return (raw ? RAW_STOPS : FINISHED_STOPS) - SURFACES_STOPS;
    }

    /**
     * Stops against the light metered, one frame each, the darkest first; {@code [0]} where one frame holds it all.
     *
     * @param above how far the brightest light is above the one metered
     * @param below how far the darkest is below it
     * @param most  steps between the frames; the dark end is left out first
     */
    public static List<Integer> stops(double above, double below, boolean raw, int most) {
        double held = heldStops(raw);
        if (above + below <= held && below <= held - HEADROOM_STOPS) {
            return List.of(0);
        }
        int darker = Math.min(most, steps(above - HEADROOM_STOPS));
        int brighter = Math.min(most - darker, steps(below - (held - HEADROOM_STOPS)));
        List<Integer> stops = new ArrayList<>();
        for (int i = -darker; i <= brighter; i++) {
            stops.add(i * STEP_STOPS);
        }
        return Collections.unmodifiableList(stops);
    }

    /** Stops to give less than metered, so that one frame holds the brightest petals too; 0 when it does as metered. */
    public static double lessStops(double above) {
        return Math.max(0, above - HEADROOM_STOPS);
    }

    private static int steps(double stops) {
        return (int) Math.max(0, Math.ceil(stops / STEP_STOPS - 1e-9));
    }
}
