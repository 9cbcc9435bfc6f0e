package understorey.scene.chart;

import java.util.ArrayList;
import java.util.List;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Wording;

/** Names of events in rows, so that on a wide screen, a phone and paper none touches another or leaves the figure. */
final class EventNames {

    /** Widths of the figure, px. */
    private static final double SCREEN = 1136;
    private static final double PHONE = 288;
    private static final double PAPER = 700;
    private static final double GAP = 16;
    /** The names are set in 15 px; widths are estimated for 16 px and the widest face. */
    private static final double NARROWER = 0.82;

    private final Wording words;
    private final List<VisitFigure.Named> events = new ArrayList<>();
    private final List<Double> screen = new ArrayList<>();
    private final List<Double> phone = new ArrayList<>();
    private final List<Double> paper = new ArrayList<>();

    EventNames(Wording words) {
        this.words = words;
    }

    /** The next event, at a share of the width. */
    void add(double at, Fact fact) {
        String name = words.of(fact);
        double width = Lettering.width(name) * NARROWER;
        events.add(new VisitFigure.Named(at, name, lane(screen, at * SCREEN, SCREEN, width), lane(phone, at * PHONE, PHONE, width),
                lane(paper, at * PAPER, PAPER, width)));
    }

    /** The first row whose last name ends before this one begins. */
    private static VisitFigure.Lane lane(List<Double> ends, double at, double medium, double width) {
        Anchor anchor = at + width <= medium ? Anchor.START : at >= width ? Anchor.END : Anchor.MIDDLE;
        double from = switch (anchor) {
            case START -> at;
            case MIDDLE -> at - width / 2;
            case END -> at - width;
        };
        int row = 0;
        while (row < ends.size() && ends.get(row) > from) {
            row++;
        }
        if (row == ends.size()) {
            ends.add(0.0);
        }
        ends.set(row, from + width + GAP);
        return new VisitFigure.Lane(row, anchor);
    }

    List<VisitFigure.Named> events() {
        return List.copyOf(events);
    }

    VisitFigure.Lanes lanes() {
        return new VisitFigure.Lanes(screen.size(), phone.size(), paper.size());
    }
}
