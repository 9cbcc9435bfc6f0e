package understorey.pages.html;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import understorey.brief.Brief;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;

/**
 * The visit as a rail: blocks for the pictures, dashes for walks, and a labelled tick for each event. Positions and widths
 * are shares of its length. A block is at least as wide as its number, and no two meet.
 *
 * @param rows of labels below the rail
 */
public record SheetRail(int rows, List<Mark> hours, List<Mark> walks, List<Mark> blocks, List<Label> events) {

    public record Mark(String at, String width, String text) {
    }

    /**
     * An event.
     *
     * @param edge share from the left to the beginning of the label, or from the right to its end
     * @param end  the label ends at its tick, because it would run off the rail
     */
    public record Label(String at, int row, String edge, boolean end, String time, String name) {
    }

    /** Two figures need this share of the rail of a phone. */
    private static final double LEAST_BLOCK = 0.054;
    private static final double BETWEEN_BLOCKS = 0.003;
    /** Hours closer to each other than this are labelled every second or third time. */
    private static final double LEAST_HOUR = 0.08;
    /** A letter of a label on paper and on a desk, as a share of the rail. */
    private static final double LETTER = 0.0095;
    private static final double BETWEEN_LABELS = 0.018;

    private record Event(ZonedDateTime time, String clock, String name) {
    }

    private record Scale(ZonedDateTime from, ZonedDateTime to) {

        double at(ZonedDateTime time) {
            double whole = Math.max(60, Duration.between(from, to).toSeconds());
            return Math.max(0, Math.min(1, Duration.between(from, time).toSeconds() / whole));
        }
    }

    static SheetRail of(Brief brief, Sentences sentences) {
        RunningOrder order = brief.order();
        List<Event> events = brief.events().stream().map(event -> new Event(event.time(), sentences.clock().of(event.time()),
                sentences.of(event.what()))).toList();
        ZonedDateTime from = events.isEmpty() || order.arrive().isBefore(events.get(0).time()) ? order.arrive() : events.get(0).time();
        Scale scale = new Scale(from, order.leave().isBefore(order.back()) ? order.back() : order.leave());
        List<Label> labels = labels(events, scale);
        return new SheetRail(labels.stream().mapToInt(label -> label.row() + 1).max().orElse(0), hours(scale, sentences.clock()), walks(order, scale),
                blocks(brief, scale), labels);
    }

    private static List<Mark> hours(Scale scale, ClockWords clock) {
        double hour = scale.at(scale.from().plusHours(1));
        int step = (int) Math.max(1, Math.ceil(LEAST_HOUR / Math.max(0.001, hour)));
        List<Mark> hours = new ArrayList<>();
        ZonedDateTime time = scale.from().truncatedTo(ChronoUnit.HOURS).plusHours(1);
        for (; time.isBefore(scale.to()); time = time.plusHours(1)) {
            if (time.getHour() % step == 0) {
                hours.add(new Mark(Words.width(scale.at(time)), "0", clock.hourFigure(time)));
            }
        }
        return hours;
    }

    private static List<Mark> walks(RunningOrder order, Scale scale) {
        return order.legs().stream().filter(leg -> leg.what() == Leg.What.WALK)
                .map(leg -> new Mark(Words.width(scale.at(leg.from())), Words.width(scale.at(leg.to()) - scale.at(leg.from())), "")).toList();
    }

    /** Each to the right of the one before; where that runs off the rail, each to the left of the one after. */
    private static List<Mark> blocks(Brief brief, Scale scale) {
        List<Leg> legs = brief.order().shooting();
        double least = Math.min(LEAST_BLOCK, 1.0 / Math.max(1, legs.size()) - BETWEEN_BLOCKS);
        double[] at = new double[legs.size()];
        double[] width = new double[legs.size()];
        for (int i = 0; i < at.length; i++) {
            width[i] = Math.max(least, scale.at(legs.get(i).to()) - scale.at(legs.get(i).from()));
            at[i] = Math.max(scale.at(legs.get(i).from()), i == 0 ? 0 : at[i - 1] + width[i - 1] + BETWEEN_BLOCKS);
        }
        double end = 1;
        for (int i = at.length - 1; i >= 0; i--) {
            at[i] = Math.max(0, Math.min(at[i], end - width[i]));
            end = at[i] - BETWEEN_BLOCKS;
        }
        List<Mark> blocks = new ArrayList<>();
        for (int i = 0; i < at.length; i++) {
            blocks.add(new Mark(Words.width(at[i]), Words.width(width[i]), String.valueOf(brief.shot(legs.get(i).shot()).number())));
        }
        return blocks;
    }

    /**
     * Labels begin at their ticks, and end there near the right edge. Each is in the first free row, the outer ones first, so
     * that a line to a tick rarely crosses a label.
     */
    private static List<Label> labels(List<Event> events, Scale scale) {
        int ends = firstEnd(events, scale);
        Rows rows = new Rows(new ArrayList<>());
        List<Label> labels = new ArrayList<>();
        for (int i = ends; i < events.size(); i++) {
            double at = scale.at(events.get(i).time());
            labels.add(label(events.get(i), at, rows.place(at, at - width(events.get(i)), at), true));
        }
        for (int i = ends - 1; i >= 0; i--) {
            double at = scale.at(events.get(i).time());
            labels.add(0, label(events.get(i), at, rows.place(at, at, at + width(events.get(i))), false));
        }
        return labels;
    }

    /** The first event whose label would run off the rail, or lies in the way of such a label. */
    private static int firstEnd(List<Event> events, Scale scale) {
        int first = events.size();
        double left = 1 + BETWEEN_LABELS;
        for (int i = events.size() - 1; i >= 0 && scale.at(events.get(i).time()) > 0.5; i--) {
            double at = scale.at(events.get(i).time());
            if (at + width(events.get(i)) > left) {
                first = i;
                left = Math.min(left, at - width(events.get(i)));
            }
        }
        return first;
    }

    private static double width(Event event) {
        return LETTER * (event.clock().length() + 1 + event.name().length()) + BETWEEN_LABELS;
    }

    private static Label label(Event event, double at, int row, boolean end) {
        return new Label(Words.width(at), row, Words.width(end ? 1 - at : at), end, event.clock(), event.name());
    }

    /** Labels placed, each as row, tick, left and right edge. */
    private record Rows(List<double[]> placed) {

        private static final int FEW = 3;

        int place(double at, double left, double right) {
            int row = 0;
            while (taken(row, left, right) || row < FEW && !taken(row + 1, left, right) && crossed(row, left, right)) {
                row++;
            }
            placed.add(new double[] {row, at, left, right});
            return row;
        }

        private boolean taken(int row, double left, double right) {
            return placed.stream().anyMatch(label -> label[0] == row && label[2] < right && left < label[3]);
        }

        /** By the line to a tick of a lower row. */
        private boolean crossed(int row, double left, double right) {
            return placed.stream().anyMatch(label -> label[0] > row && label[1] > left && label[1] < right);
        }
    }
}
