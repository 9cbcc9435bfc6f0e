package understorey.scene.chart;

import java.util.ArrayList;
import java.util.List;

/** Rows in which things of stated width are laid out so that no two touch. */
final class Lanes {

    private static final double GAP = 8;

    private record Taken(int lane, double from, double to) {
    }

    private final List<Taken> taken = new ArrayList<>();

    /** The first lane, from 0, in which the stretch is free; it is taken from then on. */
    int place(double from, double to) {
        int lane = 0;
        while (!free(lane, from, to)) {
            lane++;
        }
        taken.add(new Taken(lane, from, to));
        return lane;
    }

    /** How many lanes are in use. */
    int count() {
        return taken.stream().mapToInt(stretch -> stretch.lane + 1).max().orElse(0);
    }

    private boolean free(int lane, double from, double to) {
        return taken.stream().noneMatch(other -> other.lane == lane && from < other.to + GAP && to > other.from - GAP);
    }
}
