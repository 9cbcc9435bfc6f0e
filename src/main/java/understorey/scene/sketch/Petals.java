package understorey.scene.sketch;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Curves;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;

/** Petals laid down one over the other; those of one tone that follow each other are one mark. */
final class Petals {

    private final String suffix;
    private final List<Mark> marks;
    private String tone = "";
    private List<List<Point>> run = new ArrayList<>();

    Petals(String suffix, List<Mark> marks) {
        this.suffix = suffix;
        this.marks = marks;
    }

    void add(List<Floret.Petal> petals) {
        for (Floret.Petal petal : petals) {
            if (!petal.tone().equals(tone)) {
                end();
                tone = petal.tone();
            }
            run.add(petal.outline());
        }
    }

    /** After the last petal, and where the next must lie over those before. */
    void end() {
        if (!run.isEmpty()) {
            marks.add(new Curves(tone + suffix, 0, run));
            run = new ArrayList<>();
        }
    }
}
