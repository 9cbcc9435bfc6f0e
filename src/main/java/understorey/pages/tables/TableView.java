package understorey.pages.tables;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as templates show it; without lines there is nothing to show.
 *
 * @param groups heads over the heads, and the heads without one above, which reach over both rows; empty where no column has one above
 * @param heads  under the groups; all of them without groups
 * @param flat   heads in one row, with the group before the first of its heads
 */
public record TableView(String caption, List<Head> groups, List<Head> heads, List<Head> flat, List<Line> lines) {

    /**
     * A head.
     *
     * @param span columns that it is over; 0 for a head without a group
     */
    public record Head(String text, boolean figure, int span) {
    }

    public record Line(List<Cell> cells) {
    }

    /** A cell; lines of its text are apart by a line break. */
    public record Cell(String text, boolean figure, boolean strong) {
    }

    static TableView of(String caption, List<Column<?>> columns, List<Line> lines) {
        List<Head> groups = new ArrayList<>();
        List<Head> under = new ArrayList<>();
        List<Head> flat = new ArrayList<>();
        String last = null;
        for (Column<?> column : columns) {
            String group = column.group();
            boolean figure = column.measure().isFigure();
            if (group == null) {
                groups.add(new Head(column.name(), figure, 0));
            } else {
                under.add(new Head(column.name(), figure, 0));
                int before = group.equals(last) ? groups.remove(groups.size() - 1).span() : 0;
                groups.add(new Head(group, false, before + 1));
            }
            flat.add(new Head(group == null || group.equals(last) ? column.name() : group + ": " + column.name(), figure, 0));
            last = group;
        }
        return under.isEmpty() ? new TableView(caption, List.of(), groups, flat, lines) : new TableView(caption, groups, under, flat, lines);
    }
}
