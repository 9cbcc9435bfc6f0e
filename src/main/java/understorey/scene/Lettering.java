package understorey.scene;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Mark;

/** The words of a drawing, of 16 px: finds out whether there is room for one more. */
final class Lettering {

    private static final double ABOVE = 13;
    private static final double BELOW = 4;

    /** Where a label's letters stand, by its estimated width. */
    record Stretch(double left, double top, double right, double bottom) {

        static Stretch of(Label label) {
            double width = Lanes.textWidth(label.text());
            double left = label.at().x() - switch (label.anchor()) {
                case START -> 0;
                case MIDDLE -> width / 2;
                case END -> width;
            };
            return new Stretch(left, label.at().y() - ABOVE, left + width, label.at().y() + BELOW);
        }

        boolean touches(Stretch other) {
            return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
        }
    }

    private final List<Stretch> taken = new ArrayList<>();

    /** Lettering with the labels among these marks. */
    static Lettering of(List<Mark> marks) {
        Lettering lettering = new Lettering();
        for (Mark mark : marks) {
            if (mark instanceof Label label) {
                lettering.taken.add(Stretch.of(label));
            }
        }
        return lettering;
    }

    /** True when the label touches no other; it is taken from then on. */
    boolean place(Label label) {
        Stretch stretch = Stretch.of(label);
        boolean free = taken.stream().noneMatch(stretch::touches);
        if (free) {
            taken.add(stretch);
        }
        return free;
    }
}
