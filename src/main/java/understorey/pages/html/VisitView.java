package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.order.Leg;
import understorey.pages.words.Sentences;
import understorey.pages.words.Units;
import understorey.pages.words.Words;
import understorey.scene.Fact;
import understorey.scene.Wording;
import understorey.scene.chart.VisitFigure;
import understorey.scene.chart.VisitLight;
import understorey.visit.WeatherHour;

/**
 * The visit as one figure: shapes as shares of its width, words beside them.
 *
 * @param leads   from each shot of the strip down to its row; null where the strip has more than one line
 * @param back    the walk back, and when it ends; null if there is none
 * @param grid    the events as upright lines
 * @param hours   along the foot
 * @param lanes   how many rows of event names each medium needs, as CSS variables
 * @param weather a row each of what the forecast gives
 * @param place   the one with the light in the figure; null where there is only one place
 * @param says    the figure in sentences
 */
public record VisitView(@Nullable String leads, List<RowView> rows, @Nullable Back back, String grid, LightPaths light, List<Tick> hours,
                        List<Event> events, String lanes, List<WeatherRow> weather, @Nullable String place, String says) {

    /** A stretch of a row: what it is, from where, how wide. */
    public record Bar(String look, String left, String width) {
    }

    /** A shot's row. */
    public record RowView(int number, List<Bar> bars, String picture, String pictureWidth) {
    }

    /** The way back. */
    public record Back(String left, String width, String end, boolean before, String says) {
    }

    /** A word at a place. */
    public record Tick(String at, String text) {
    }

    /** An event's name; its lanes are CSS classes and variables. */
    public record Event(String left, String text, String anchors, String rows) {
    }

    /** One kind of weather over the hours. */
    public record WeatherRow(String unit, String name, List<Tick> values) {
    }

    /** Of the figure beside the strip, px. */
    private static final double SCREEN = 1136;
    private static final int MOST_HOURS = 8;
    private static final int MOST_COLUMNS = 6;
    private static final int LEAST_COLUMNS = 3;
    private static final double GAP = 18;
    /** Share of a phone's width that half of a clock time needs. */
    private static final double EDGE = 0.06;
    /** Share of the width after which the way back is named on its left. */
    private static final double LATE = 0.6;

    /** Null when no shot is taken. */
    static @Nullable VisitView of(Brief brief, Sentences sentences) {
        if (brief.visit() == null) {
            return null;
        }
        Wording words = sentences;
        VisitFigure figure = brief.visit().figure(words);
        List<ZonedDateTime> hours = hours(figure);
        return new VisitView(leads(figure), figure.rows().stream().map(VisitView::row).toList(),
                ifKnown(figure.back(), back -> back(back, words.of(new Fact.BackAt(brief.order().back())))),
                figure.events().stream().map(event -> "M" + px(event.at() * VisitLight.WIDTH) + " 0V" + VisitLight.HEIGHT)
                        .collect(Collectors.joining()),
                LightPaths.of(figure.light()), hours.stream().filter(hour -> figure.at(hour) >= EDGE && figure.at(hour) <= 1 - EDGE)
                        .map(hour -> new Tick(Words.width(figure.at(hour)), sentences.clock().hour(hour))).toList(),
                figure.events().stream().map(VisitView::event).toList(),
                rows(figure.lanes().screen(), figure.lanes().phone(), figure.lanes().paper()), weather(brief, figure, hours, sentences.units()),
                brief.places().size() == 1 ? null : figure.light().place().name(brief.trip().site()), figure.says());
    }

    private static List<ZonedDateTime> hours(VisitFigure figure) {
        List<ZonedDateTime> hours = new ArrayList<>();
        ZonedDateTime first = figure.from().truncatedTo(ChronoUnit.HOURS);
        first = first.isBefore(figure.from()) ? first.plusHours(1) : first;
        long all = ChronoUnit.HOURS.between(first, figure.to());
        for (ZonedDateTime hour = first; !hour.isAfter(figure.to()); hour = hour.plusHours(1 + all / MOST_HOURS)) {
            hours.add(hour);
        }
        return hours;
    }

    /** From the middle of each column of the strip to the middle of its shot. */
    private static @Nullable String leads(VisitFigure figure) {
        int count = figure.rows().size();
        if (count > MOST_COLUMNS) {
            return null;
        }
        int columns = Math.max(LEAST_COLUMNS, count);
        double column = (SCREEN - (columns - 1) * GAP) / columns;
        StringBuilder leads = new StringBuilder();
        for (int i = 0; i < count; i++) {
            double from = (i * (column + GAP) + column / 2) / SCREEN * VisitLight.WIDTH;
            double to = middle(figure.rows().get(i)) * VisitLight.WIDTH;
            leads.append('M').append(px(from)).append(" 0V8L").append(px(to)).append(" 24V30");
        }
        return leads.toString();
    }

    private static VisitFigure.Stretch shooting(VisitFigure.Row row) {
        return row.tasks().stream().filter(task -> task.what() == Leg.What.SHOOT).map(VisitFigure.Task::when).findFirst().orElseThrow();
    }

    private static double middle(VisitFigure.Row row) {
        return shooting(row).left() + shooting(row).width() / 2;
    }

    private static RowView row(VisitFigure.Row row) {
        List<Bar> bars = new ArrayList<>();
        row.windows().forEach(window -> bars.add(bar("window", window)));
        for (VisitFigure.Task task : row.tasks()) {
            switch (task.what()) {
                case WALK -> bars.add(bar("walk", task.when()));
                case SET_UP -> bars.add(bar("set-up", task.when()));
                case WAIT -> bars.add(bar("wait", task.when()));
                case SHOOT -> { }
            }
        }
        VisitFigure.Stretch shoot = shooting(row);
        return new RowView(row.number(), bars, Words.width(shoot.left()), Words.width(shoot.width()));
    }

    private static Bar bar(String look, VisitFigure.Stretch stretch) {
        return new Bar(look, Words.width(stretch.left()), Words.width(stretch.width()));
    }

    private static Back back(VisitFigure.Stretch back, String says) {
        double end = back.left() + back.width();
        return new Back(Words.width(back.left()), Words.width(back.width()), Words.width(end), end > LATE, says);
    }

    private static Event event(VisitFigure.Named event) {
        return new Event(Words.width(event.at()), event.name(), anchor("d", event.screen()) + " " + anchor("m", event.phone()) + " "
                + anchor("p", event.paper()), rows(event.screen().row(), event.phone().row(), event.paper().row()));
    }

    private static String anchor(String medium, VisitFigure.Lane lane) {
        return medium + "-" + lane.anchor().name().toLowerCase(Locale.ROOT);
    }

    private static String rows(int screen, int phone, int paper) {
        return "--d:" + screen + ";--m:" + phone + ";--p:" + paper;
    }

    private static List<WeatherRow> weather(Brief brief, VisitFigure figure, List<ZonedDateTime> hours, Units units) {
        List<WeatherHour> shown = brief.weather().stream().filter(hour -> hours.contains(hour.time()) && figure.at(hour.time()) <= 1 - EDGE / 2).toList();
        List<WeatherRow> rows = new ArrayList<>();
        add(units.unit(Measure.CELSIUS), "air", shown, figure,
                hour -> ifKnown(hour.weather().temperatureC(), air -> units.plain(air, Measure.CELSIUS)), rows);
        add(units.unit(Measure.METRES_PER_SECOND), "wind", shown, figure,
                hour -> ifKnown(hour.weather().windMs(), wind -> units.plain(wind, Measure.METRES_PER_SECOND)), rows);
        add("okta", "cloud", shown, figure, hour -> ifKnown(hour.weather().okta(), okta -> Words.number(okta, 1)), rows);
        if (shown.stream().anyMatch(WeatherHour::wet)) {
            add(units.unit(Measure.RAIN), "rain", shown, figure,
                    hour -> ifKnown(hour.weather().rainMm(), rain -> units.plain(rain, Measure.RAIN)), rows);
        }
        return rows;
    }

    private static void add(String unit, String name, List<WeatherHour> hours, VisitFigure figure,
                            Function<WeatherHour, @Nullable String> value, List<WeatherRow> rows) {
        List<Tick> values = new ArrayList<>();
        for (WeatherHour hour : hours) {
            String text = value.apply(hour);
            if (text != null) {
                values.add(new Tick(Words.width(figure.at(hour.time())), text));
            }
        }
        if (!values.isEmpty()) {
            rows.add(new WeatherRow(unit, name, values));
        }
    }

    static String px(double value) {
        return Words.number(value, 1);
    }
}
