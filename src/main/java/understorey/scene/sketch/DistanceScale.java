package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Fact;

/**
 * Distances at the right edge of a large sketch: the rows in which the ground has some distances from the lens, as shares of
 * the height from the top.
 *
 * @param ticks     none close up
 * @param sharpTop  where the ground stops being sharp
 * @param sharpFoot where it begins to be sharp; above {@code sharpTop} where no ground in the frame is
 */
public record DistanceScale(List<Tick> ticks, double sharpTop, double sharpFoot) {

    /** Between two distances. */
    private static final double APART = 0.1;
    private static final double EDGE = 0.01;

    /** A distance of the ground. */
    public record Tick(double top, Fact what, boolean focus) {
    }

    /** The scale of a sketch. */
    public static DistanceScale of(Setup setup) {
        if (setup.close()) {
            return new DistanceScale(List.of(), 0, 0);
        }
        Perspective perspective = Perspective.of(setup);
        List<Tick> ticks = new ArrayList<>();
        double focusM = setup.fit().focusM();
        double nearestM = perspective.groundM(perspective.height);
        add(row(perspective, focusM), new Fact.FocusAt(focusM), true, ticks);
        add(row(perspective, setup.sharpFromM()), new Fact.FocusLimit(setup.sharpFromM()), false, ticks);
        add(row(perspective, setup.sharpToM()), new Fact.FocusLimit(setup.sharpToM()), false, ticks);
        add(row(perspective, nearestM), new Fact.Distance(nearestM), false, ticks);
        return new DistanceScale(List.copyOf(ticks), within(row(perspective, setup.sharpToM())), within(row(perspective, setup.sharpFromM())));
    }

    /** Of the ground at a depth along the lens axis. */
    private static double row(Perspective perspective, double depthM) {
        return perspective.groundY(depthM) / perspective.height;
    }

    /** Where the ground of that distance is in the frame and no other distance is. */
    private static void add(double top, Fact what, boolean focus, List<Tick> ticks) {
        if (top >= -EDGE && top <= 1 + EDGE && ticks.stream().noneMatch(other -> Math.abs(other.top() - top) < APART)) {
            ticks.add(new Tick(within(top), what, focus));
        }
    }

    private static double within(double share) {
        return Math.max(0, Math.min(1, share));
    }
}
