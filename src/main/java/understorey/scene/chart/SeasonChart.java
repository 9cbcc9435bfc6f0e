package understorey.scene.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.plan.Season;
import understorey.scene.Drawing;
import understorey.scene.Drawing.Anchor;
import understorey.scene.Drawing.Box;
import understorey.scene.Drawing.Dot;
import understorey.scene.Drawing.Hatch;
import understorey.scene.Drawing.Label;
import understorey.scene.Drawing.Line;
import understorey.scene.Drawing.Mark;
import understorey.scene.Drawing.Point;
import understorey.scene.Fact;
import understorey.scene.Lettering;
import understorey.scene.Scene;
import understorey.scene.Wording;
import understorey.season.FloweringWindow;

/**
 * The season: past years' flowering as strips over this year's calendar, beneath them the chance of full flower day by
 * day, and the day chosen as a line through all of them. A strip is thin from the first flowers to the last and thick
 * in full flower, so that it reads without colour.
 */
public final class SeasonChart {

    private static final double WIDTH = 330;
    private static final double BESIDE_YEARS = 14;
    private static final double RIGHT = 322;
    private static final double TOP = 30;
    private static final double ROW = 19;
    private static final double STRIP = 10;
    private static final double CURVE = 54;
    private static final int MOST_YEARS = 12;
    private static final int BESIDE_D = 6;
    /** Between the words of two dates. */
    private static final double ASIDE = 10;

    private final FloweringWindow window;
    private final LocalDate chosen;
    private final boolean monthAlone;
    private final Wording words;
    private final String chosenSays;
    private final List<FloweringWindow.Past> past;
    private final LocalDate from;
    private final LocalDate to;
    private final double left;
    private final List<Mark> marks = new ArrayList<>();

    private SeasonChart(FloweringWindow window, LocalDate chosen, boolean monthAlone, Wording words) {
        this.window = window;
        this.chosen = chosen;
        this.monthAlone = monthAlone;
        this.words = words;
        this.chosenSays = words.of(monthAlone ? new Fact.MidMonth(chosen.getMonth()) : new Fact.TripDay(chosen));
        int n = window.past().size();
        this.past = window.past().subList(Math.max(0, n - MOST_YEARS), n);
        List<LocalDate> shown = new ArrayList<>(List.of(window.first().from(), window.over().to(), chosen));
        past.forEach(year -> shown.addAll(dates(year)));
        this.from = Collections.min(shown).minusDays(BESIDE_D);
        this.to = Collections.max(shown).plusDays(BESIDE_D);
        this.left = BESIDE_YEARS + Stream.concat(past.stream().map(this::yearOf), Stream.of(named(0)))
                .mapToDouble(Lettering::width).max().orElseThrow();
    }

    /**
     * The chart of a window and the day planned.
     *
     * @param monthAlone names the month of the day only
     */
    public static Scene of(FloweringWindow window, LocalDate chosen, boolean monthAlone) {
        return words -> new SeasonChart(window, chosen, monthAlone, words).draw();
    }

    private Drawing draw() {
        double y = TOP;
        for (FloweringWindow.Past year : past) {
            strip(year, y);
            y += ROW;
        }
        double floor = y + 22 + CURVE;
        double axis = floor + 26;
        dates(floor, axis + 20);
        estimate(y + 22, floor);
        day(floor);
        return new Drawing(WIDTH, axis + 28, words.of(new Fact.SeasonOf(window.subject().name())),
                words.of(says()), List.copyOf(marks));
    }

    private void strip(FloweringWindow.Past year, double y) {
        marks.add(new Label("figure", Anchor.END, new Point(left - 10, y + STRIP + 1), yearOf(year)));
        List<LocalDate> dates = dates(year);
        double begin = x(dates.get(0));
        double right = x(dates.get(dates.size() - 1));
        if (right - begin > 1) {
            marks.add(new Line("season-strip", List.of(new Point(begin, y + STRIP / 2), new Point(right, y + STRIP / 2))));
        }
        if (year.full() != null) {
            double fullLeft = year.first() == null ? x(year.full()) - 3
                    : x(year.full()) - (x(year.full()) - begin) / 3;
            double fullRight = year.over() == null ? x(year.full()) + 3
                    : x(year.full()) + (right - x(year.full())) / 3;
            marks.add(new Box("season-full", fullLeft, y, fullRight - fullLeft, STRIP));
        } else {
            for (LocalDate date : dates) {
                marks.add(new Dot("season-full", new Point(x(date), y + STRIP / 2), 4));
            }
        }
    }

    /** The chance of full flower, the likely span of the peak beneath it, and what was seen. */
    private void estimate(double top, double floor) {
        marks.add(new Label("words", Anchor.END, new Point(left - 10, (top + floor) / 2 + 6), named(0)));
        List<Point> outline = new ArrayList<>();
        outline.add(new Point(x(from), floor));
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            outline.add(new Point(x(date), floor - window.chanceOn(date) * CURVE));
        }
        outline.add(new Point(x(to), floor));
        marks.add(new Drawing.Area("band", outline));
        marks.add(new Line("light", outline.subList(1, outline.size() - 1)));
        double span = floor + 14;
        List<Point> ends = new ArrayList<>(List.of(new Point(x(window.peak().from()), span),
                new Point(x(window.peak().to()), span)));
        for (LocalDate end : List.of(window.peak().from(), window.peak().to(), window.peak().day())) {
            ends.add(new Point(x(end), span - 6));
            ends.add(new Point(x(end), span + 6));
        }
        marks.add(new Hatch("bracket", ends));
        for (Season.Sighting seen : window.seen()) {
            if (!seen.date().isBefore(from) && !seen.date().isAfter(to)) {
                marks.add(new Dot("hour", new Point(x(seen.date()), floor), 5));
            }
        }
    }

    /** The axis of dates below everything: as many as stand apart. */
    private void dates(double floor, double y) {
        marks.add(new Line("axis", List.of(new Point(left, floor), new Point(RIGHT, floor))));
        double apart = widest() + ASIDE;
        // From the 21st of February to the first of March it is eight days, from the 16th thirteen.
        int step = perDay() * 8 >= apart ? 10 : perDay() * 13 >= apart ? 15 : 31;
        int months = Math.max(1, (int) Math.ceil(apart / (perDay() * 28)));
        List<Point> ticks = new ArrayList<>();
        for (LocalDate date = from; !date.isAfter(to); date = date.plusDays(1)) {
            int day = date.getDayOfMonth();
            boolean named = day == 1 ? step < 31 || date.getMonthValue() % months == 0
                    : step < 31 && (day - 1) % step == 0 && day <= 21;
            double half = Lettering.width(date(date)) / 2;
            if (named) {
                ticks.add(new Point(x(date), TOP - 8));
                ticks.add(new Point(x(date), y - 16));
            }
            if (named && x(date) - half >= left - 4 && x(date) + half <= WIDTH) {
                marks.add(new Label("figure", Anchor.MIDDLE, new Point(x(date), y), date(date)));
            }
        }
        marks.add(0, new Hatch("hair", ticks));
    }

    private double widest() {
        double widest = 0;
        for (LocalDate date = from.withDayOfMonth(21); !date.isAfter(to); date = date.plusMonths(1)) {
            widest = Math.max(widest, Lettering.width(date(date)));
        }
        return widest;
    }

    private void day(double floor) {
        List<Point> line = List.of(new Point(x(chosen), TOP - 10), new Point(x(chosen), floor));
        marks.add(new Line("season-halo", line));
        marks.add(new Line("season-day", line));
        double half = Lettering.width(chosenSays) / 2;
        marks.add(new Label("words", Anchor.MIDDLE,
                new Point(Math.max(left + half, Math.min(RIGHT - half, x(chosen))), TOP - 14), chosenSays));
        String chance = words.of(new Fact.Share(window.chanceOn(chosen)));
        boolean before = x(chosen) + Lettering.width(chance) + ASIDE > WIDTH;
        marks.add(new Label("season-chance", before ? Anchor.END : Anchor.START, new Point(x(chosen) + (before ? -6 : 6), floor - CURVE - 2), chance));
    }

    private Fact says() {
        List<Fact> says = new ArrayList<>();
        for (FloweringWindow.Past year : past) {
            List<Fact> dates = new ArrayList<>();
            add(year.record().first(), Fact.FirstFlowers::new, dates);
            add(year.record().full(), Fact.FullFlower::new, dates);
            add(year.record().over(), Fact.FlowersOver::new, dates);
            says.add(new Fact.PastYear(yearOf(year), dates.stream().reduce(Fact.Item::new).orElseThrow()));
        }
        says.add(new Fact.FullFlowerExpected(named(0), window.fullFrom(), window.fullTo(), window.peak().from(),
                window.peak().to()));
        window.seen().forEach(seen -> says.add(new Fact.Seen(seen.date(), seen.stage())));
        double chance = window.chanceOn(chosen);
        says.add(monthAlone ? new Fact.ChanceInMidMonth(chosen.getMonth(), chance) : new Fact.ChanceOnTripDay(chosen, chance));
        return Fact.text(says);
    }

    private static void add(@Nullable LocalDate date, Function<LocalDate, Fact> fact, List<Fact> facts) {
        if (date != null) {
            facts.add(fact.apply(date));
        }
    }

    private String yearOf(FloweringWindow.Past year) {
        Season.Flowering record = year.record();
        return named(known(record.first(), record.full(), record.over()).get(0).getYear() - dates(year).get(0).getYear());
    }

    /** A season some years from this one: by both years where it crosses the turn of the year, {@code 2026/27}. */
    private String named(int later) {
        int first = window.first().day().getYear() + later;
        int last = window.over().day().getYear() + later;
        return first == last ? String.valueOf(first) : first + "/" + (last % 100 < 10 ? "0" : "") + last % 100;
    }

    /** Those that are known, on this season's calendar, in order. */
    private static List<LocalDate> dates(FloweringWindow.Past year) {
        return known(year.first(), year.full(), year.over());
    }

    private static List<LocalDate> known(@Nullable LocalDate first, @Nullable LocalDate full, @Nullable LocalDate over) {
        return Stream.of(Optional.ofNullable(first), Optional.ofNullable(full), Optional.ofNullable(over))
                .flatMap(Optional::stream).toList();
    }

    private String date(LocalDate date) {
        return words.of(new Fact.Day(date));
    }

    private double perDay() {
        return (RIGHT - left) / ChronoUnit.DAYS.between(from, to);
    }

    private double x(LocalDate date) {
        return left + perDay() * ChronoUnit.DAYS.between(from, date);
    }
}
