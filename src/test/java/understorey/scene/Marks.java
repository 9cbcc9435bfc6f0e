package understorey.scene;

import java.util.ArrayList;
import java.util.List;

/** What is on a drawing, by kind. */
public final class Marks {

    private Marks() {
    }

    public static List<Drawing.Label> labels(Drawing drawing) {
        return drawing.marks().stream().filter(Drawing.Label.class::isInstance).map(Drawing.Label.class::cast).toList();
    }

    /** Where the words stand. */
    public static List<Lettering.Stretch> words(Drawing drawing) {
        return drawing.marks().stream().filter(Drawing.Text.class::isInstance).map(mark -> Lettering.Stretch.of((Drawing.Text) mark))
                .toList();
    }

    public static List<String> upright(Drawing drawing) {
        return drawing.marks().stream().filter(Drawing.Upright.class::isInstance).map(mark -> ((Drawing.Upright) mark).text())
                .toList();
    }

    /** The ends of all strokes of a hatching, pair by pair. */
    public static List<Drawing.Point> strokes(Drawing drawing, String style) {
        List<Drawing.Point> ends = new ArrayList<>();
        for (Drawing.Mark mark : drawing.marks()) {
            if (mark instanceof Drawing.Hatch hatch && mark.style().equals(style)) {
                ends.addAll(hatch.ends());
            }
        }
        return ends;
    }

    public static List<Drawing.Area> areas(Drawing drawing, String style) {
        return drawing.marks().stream().filter(mark -> mark instanceof Drawing.Area area && area.style().equals(style))
                .map(Drawing.Area.class::cast).toList();
    }

    public static List<Drawing.Line> lines(Drawing drawing, String style) {
        return drawing.marks().stream().filter(mark -> mark instanceof Drawing.Line && mark.style().equals(style))
                .map(Drawing.Line.class::cast).toList();
    }

    public static List<Drawing.Point> points(Drawing drawing) {
        List<Drawing.Point> points = new ArrayList<>();
        for (Drawing.Mark mark : drawing.marks()) {
            if (mark instanceof Drawing.Line line) {
                points.addAll(line.points());
            } else if (mark instanceof Drawing.Area area) {
                points.addAll(area.points());
            } else if (mark instanceof Drawing.Hatch hatch) {
                points.addAll(hatch.ends());
            } else if (mark instanceof Drawing.Box box) {
                points.add(new Drawing.Point(box.x(), box.y()));
                points.add(new Drawing.Point(box.x() + box.width(), box.y() + box.height()));
            } else if (mark instanceof Drawing.Dot dot) {
                points.add(dot.at());
            }
        }
        return points;
    }
}
