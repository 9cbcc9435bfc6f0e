package understorey.pages;

import java.time.Month;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.pages.words.Dates;
import understorey.pages.words.Words;
import understorey.scene.chart.YearStrip;

/**
 * The strip of a year in words.
 *
 * @param more how many rows are left out; null if none
 */
public record YearView(List<MonthName> months, List<Line> lines, @Nullable String more) {

    /** Rows beyond this are left out: the strip is to be read in one look. */
    private static final int MOST_ROWS = 24;

    public record MonthName(String name, double left, boolean onPhones) {
    }

    /**
     * One wood and subject.
     *
     * @param name  of the subject
     * @param under name of the wood, and how sure the dates are
     * @param says  the row in a sentence
     */
    public record Line(String name, String under, YearStrip.@Nullable Bars bars, List<Mark> marks, String says) {
    }

    /**
     * The date of a trip.
     *
     * @param look  classes of the style sheet: where its label is
     * @param label empty where it has no room
     */
    public record Mark(double left, String look, String label) {
    }

    private record Trip(TripLine line, TripLine.Flower flower) {
    }

    /** The strip of some trips, by date. */
    static YearView of(List<TripLine> trips) {
        Map<List<String>, List<Trip>> rows = new LinkedHashMap<>();
        for (TripLine trip : trips) {
            for (TripLine.Flower flower : trip.flowers()) {
                rows.computeIfAbsent(List.of(trip.site(), flower.name()), row -> new ArrayList<>()).add(new Trip(trip, flower));
            }
        }
        List<List<Trip>> shown = rows.values().stream().limit(MOST_ROWS).toList();
        YearStrip strip = YearStrip.of(shown.stream().map(YearView::bloom).toList());
        List<Line> lines = new ArrayList<>();
        for (List<Trip> row : shown) {
            lines.add(line(row, strip.rows().get(lines.size())));
        }
        return new YearView(strip.months().stream().filter(YearStrip.Tick::named)
                .map(tick -> new MonthName(shortName(tick.month()), tick.left(), tick.namedOnPhones())).toList(), lines,
                rows.size() == shown.size() ? null : String.valueOf(rows.size() - shown.size()));
    }

    private static YearStrip.Bloom bloom(List<Trip> row) {
        return new YearStrip.Bloom(row.get(0).flower().window(), row.stream()
                .map(trip -> new YearStrip.Visit(trip.line().date(), label(trip))).toList());
    }

    private static String label(Trip trip) {
        Month month = trip.line().date().getMonth();
        String day = trip.line().card().day().replace(Words.name(month), shortName(month));
        return trip.flower().window() == null ? day : day + ", " + Words.percent(trip.flower().chance());
    }

    private static Line line(List<Trip> row, YearStrip.Row drawn) {
        TripLine.Flower flower = row.get(0).flower();
        String site = row.get(0).line().card().site();
        return new Line(Words.capital(flower.name()), site + (flower.window() == null ? ", dates unknown"
                : ", ±" + Words.days(flower.errorD())), drawn.bars(), drawn.uprights().stream().map(YearView::mark).toList(), says(row, site));
    }

    private static Mark mark(YearStrip.Upright upright) {
        String look = upright.side() == null ? "bare" : (upright.lane() == 0 ? "over" : "under")
                + (upright.side() == YearStrip.Side.LEFT ? " before" : "");
        return new Mark(upright.left(), look, upright.side() == null ? "" : upright.label());
    }

    private static String says(List<Trip> row, String site) {
        TripLine.Flower flower = row.get(0).flower();
        StringBuilder says = new StringBuilder(Words.capital(flower.name())).append(", ").append(site).append(": ");
        YearStrip.Window window = flower.window();
        says.append(window == null ? "no flowering dates known" : "first flowers " + Dates.dayMonth(window.first()) + ", full flower "
                + Dates.dates(window.fullFrom(), window.fullTo()) + ", over " + Dates.dayMonth(window.over())).append('.');
        for (Trip trip : row) {
            says.append(" Trip: ").append(trip.line().card().day()).append(window == null ? "" : ", "
                    + Words.percent(trip.flower().chance()) + " chance of full flower").append('.');
        }
        return says.toString();
    }

    /** {@code April} as {@code Apr}, {@code September} as {@code Sept}; short names are left as they are. */
    private static String shortName(Month month) {
        String name = Words.name(month);
        return name.length() <= 4 ? name : name.substring(0, month == Month.SEPTEMBER ? 4 : 3);
    }
}
