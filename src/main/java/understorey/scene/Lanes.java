package understorey.scene;

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
        int count = 0;
        for (Taken stretch : taken) {
            count = Math.max(count, stretch.lane + 1);
        }
        return count;
    }

    private boolean free(int lane, double from, double to) {
        for (Taken other : taken) {
            if (other.lane == lane && from < other.to + GAP && to > other.from - GAP) {
                return false;
            }
        }
        return true;
    }

    /**
     * Width of a text of 16 px, px: wider than any system face sets it, on the average letter. A letter of the wide
     * scripts and a pictograph take more than a square.
     */
    static double textWidth(String text) {
        double width = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            width += width(text.codePointAt(i));
        }
        return width;
    }

    private static double width(int point) {
        return point < 0x1100 || point >= 0x2000 && point < 0x2600 ? 9.2 : 19;
    }

    /** The text, cut off with an ellipsis where it is wider than that, px. */
    static String shortened(String text, double width) {
        double before = 0;
        int fits = 0;
        for (int i = 0; i < text.length(); i = text.offsetByCodePoints(i, 1)) {
            if (before + width('…') <= width) {
                fits = i;
            }
            before += width(text.codePointAt(i));
            if (before > width) {
                return text.substring(0, fits).stripTrailing() + "…";
            }
        }
        return text;
    }
}
