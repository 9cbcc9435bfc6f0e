package understorey.scene.chart;

import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.scene.Lettering;
import understorey.season.FloweringWindow;

/**
 * A year of trips on one axis of months: a row per wood and subject with its flowering window, the date of each trip as an upright.
 * Positions are percent of the width of the strip, so that it fits phone, desk and paper with letters of one size. Where labels
 * are apart on the narrowest strip, they are apart on any.
 */
public record YearStrip(List<Tick> months, List<Row> rows) {

    /** Width of the strip on a phone, px. */
    private static final double NARROWEST_PX = 340;
    /** A short month name and the space after it, px. */
    private static final double MONTH_PX = 46;
    private static final int MOST_NAMED = 12;
    /** From the upright to its label, with the padding of the label, px. */
    private static final double BESIDE_PX = 10;
    private static final int LANES = 2;

    /**
     * What is kept of a flowering window.
     *
     * @param earliest start of the likely span of the first flowers
     * @param latest   end of the likely span of the last flowers
     */
    public record Window(LocalDate earliest, LocalDate first, LocalDate fullFrom, LocalDate fullTo, LocalDate over, LocalDate latest) {

        public static Window of(FloweringWindow window) {
            return new Window(window.first().from(), window.first().day(), window.fullFrom(), window.fullTo(), window.over().day(),
                    window.over().to());
        }
    }

    /** A trip on its date. */
    public record Visit(LocalDate date, String label) {
    }

    /** A wood and a subject; the window is null when its season is unknown. */
    public record Bloom(@Nullable Window window, List<Visit> visits) {
    }

    /** The first of a month; on a phone only some have room for a name. */
    public record Tick(Month month, double left, boolean named, boolean namedOnPhones) {
    }

    public record Span(double left, double width) {
    }

    /** The likely span around the flowering, the flowering, and full flower. */
    public record Bars(Span likely, Span flowering, Span full) {
    }

    /** Where a label is. */
    public enum Side { LEFT, RIGHT }

    /**
     * A trip.
     *
     * @param lane 0 above the bars, 1 below them
     * @param side null where the label has no room
     */
    public record Upright(double left, int lane, @Nullable Side side, String label) {
    }

    public record Row(@Nullable Bars bars, List<Upright> uprights) {
    }

    /** The strip; without any date it is empty. */
    public static YearStrip of(List<Bloom> blooms) {
        List<LocalDate> dates = blooms.stream().flatMap(YearStrip::dates).toList();
        if (dates.isEmpty()) {
            return new YearStrip(List.of(), List.of());
        }
        Axis axis = new Axis(Collections.min(dates).withDayOfMonth(1), Collections.max(dates).withDayOfMonth(1).plusMonths(1));
        return new YearStrip(months(axis), blooms.stream().map(bloom -> row(bloom, axis)).toList());
    }

    private static Stream<LocalDate> dates(Bloom bloom) {
        Window window = bloom.window();
        return Stream.concat(bloom.visits().stream().map(Visit::date), window == null ? Stream.of() : Stream.of(window.earliest(), window.latest()));
    }

    private record Axis(LocalDate from, LocalDate to) {

        /** Percent of the width; a date beyond an end is at that end. */
        double at(LocalDate date) {
            double share = (double) ChronoUnit.DAYS.between(from, date) / ChronoUnit.DAYS.between(from, to);
            return tenth(100 * Math.max(0, Math.min(1, share)));
        }

        /** Both days included. */
        Span span(LocalDate first, LocalDate last) {
            double left = at(first);
            return new Span(left, tenth(at(last.plusDays(1)) - left));
        }
    }

    private static double tenth(double percent) {
        return Math.round(percent * 10) / 10.0;
    }

    private static List<Tick> months(Axis axis) {
        int count = (int) ChronoUnit.MONTHS.between(axis.from(), axis.to());
        int step = (int) Math.ceil(MONTH_PX * count / NARROWEST_PX);
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            LocalDate first = axis.from().plusMonths(i);
            boolean always = i % step == 0;
            ticks.add(new Tick(first.getMonth(), axis.at(first), always || count <= MOST_NAMED, always));
        }
        return List.copyOf(ticks);
    }

    private static Row row(Bloom bloom, Axis axis) {
        Window window = bloom.window();
        Bars bars = window == null ? null : new Bars(axis.span(window.earliest(), window.latest()),
                axis.span(window.first(), window.over()), axis.span(window.fullFrom(), window.fullTo()));
        List<Upright> uprights = new ArrayList<>();
        for (int i = 0; i < bloom.visits().size(); i++) {
            uprights.add(upright(bloom.visits(), i, axis, uprights));
        }
        return new Row(bars, List.copyOf(uprights));
    }

    /** The first free place for the label, in the order: above right, above left, below right, below left. */
    private static Upright upright(List<Visit> visits, int index, Axis axis, List<Upright> placed) {
        Visit visit = visits.get(index);
        double left = axis.at(visit.date());
        for (int lane = 0; lane < LANES; lane++) {
            for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
                Upright upright = new Upright(left, lane, side, visit.label());
                if (isFree(upright, placed)) {
                    return upright;
                }
            }
        }
        return new Upright(left, 0, null, visit.label());
    }

    private static boolean isFree(Upright upright, List<Upright> placed) {
        double from = from(upright);
        double to = to(upright);
        return from >= 0 && to <= NARROWEST_PX && placed.stream()
                .noneMatch(other -> other.lane() == upright.lane() && from < to(other) && to > from(other));
    }

    /** Left end of the upright and its label on the narrowest strip, px. */
    private static double from(Upright upright) {
        return px(upright) - (upright.side() == Side.LEFT ? BESIDE_PX + Lettering.width(upright.label()) : 0);
    }

    private static double to(Upright upright) {
        return px(upright) + (upright.side() == Side.RIGHT ? BESIDE_PX + Lettering.width(upright.label()) : 0);
    }

    private static double px(Upright upright) {
        return upright.left() / 100 * NARROWEST_PX;
    }
}
