package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.pages.html.Published;
import understorey.pages.words.Words;

/**
 * The index: the latest years with their strip and plates, the years before them as lists, and what belongs to the trips.
 *
 * @param lead   how many trips and woods there are
 * @param manual chapters of it; empty for a site that others see
 */
public record IndexPage(TemplateHTMLOutputModel css, String title, String lead, List<Year> years, List<Entry> woods, List<Entry> bags,
                        List<Entry> flowers, int builtIn, List<Entry> manual, @Nullable Published published) {

    /** Plates with a sketch: more would make a page of megabytes. */
    static final int MOST_PLATES = 24;
    /** Years with a strip and plates: trips are planned at the turn of a year too. */
    private static final int DRAWN_YEARS = 2;

    /** Trips as the index takes them: the latest year first, in it by date. */
    static final Comparator<TripLine> ORDER = Comparator.comparing((TripLine trip) -> -trip.date().getYear())
            .thenComparing(TripLine::date).thenComparing(trip -> trip.card().slug());

    /**
     * A year.
     *
     * @param name  null where there is only one
     * @param strip null for an early year
     */
    public record Year(@Nullable String name, @Nullable YearView strip, List<Group> groups) {
    }

    /**
     * Trips of one series, or all single ones.
     *
     * @param name  null where there is no series
     * @param level of the headings of its trips
     * @param rest  trips beyond the plates
     */
    public record Group(@Nullable String name, int level, List<Plate> plates, List<TripLine.Card> rest) {
    }

    /** A trip with its opening sketch; none where no camera can take that picture. */
    public record Plate(TripLine.Card card, @Nullable TemplateHTMLOutputModel sketch) {
    }

    /** A wood, a bag, a flower or a chapter; without a link where it has no page. */
    public record Entry(String name, @Nullable String href, String note) {
    }

    static String title(List<TripLine> trips) {
        List<Integer> years = trips.stream().map(trip -> trip.date().getYear()).distinct().sorted().toList();
        return "Woods in flower" + (years.isEmpty() ? "" : ", " + years.get(0)
                + (years.size() == 1 ? "" : " to " + years.get(years.size() - 1)));
    }

    /** {@code 4 trips to 3 woods, 23 April to 11 September}; the days alone of one year. */
    static String lead(List<TripLine> trips) {
        if (trips.isEmpty()) {
            return "No trips yet.";
        }
        TripLine first = Collections.min(trips, Comparator.comparing(TripLine::date));
        TripLine last = Collections.max(trips, Comparator.comparing(TripLine::date));
        String days = first.date().getYear() != last.date().getYear() ? "" : ", " + first.card().day()
                + (first.card().day().equals(last.card().day()) ? "" : " to " + last.card().day());
        return Words.count(trips.size(), "trip") + " to " + Words.count((int) trips.stream().map(TripLine::site).distinct().count(), "wood")
                + days + ".";
    }

    /**
     * The years.
     *
     * @param sketches by name of the trip
     */
    static List<Year> years(List<TripLine> trips, Map<String, TemplateHTMLOutputModel> sketches) {
        List<TripLine> ordered = trips.stream().sorted(ORDER).toList();
        List<String> plates = ordered.stream().limit(MOST_PLATES).map(trip -> trip.card().slug()).toList();
        Map<Integer, List<TripLine>> byYear = ordered.stream()
                .collect(Collectors.groupingBy(trip -> trip.date().getYear(), LinkedHashMap::new, Collectors.toList()));
        List<Year> years = new ArrayList<>();
        byYear.forEach((year, of) -> {
            boolean drawn = years.size() < DRAWN_YEARS;
            years.add(new Year(byYear.size() == 1 ? null : String.valueOf(year), drawn ? YearView.of(of) : null,
                    groups(of, byYear.size() == 1 ? 2 : 3, drawn ? plates : List.of(), sketches)));
        });
        return years;
    }

    /** A series of one trip is among the single ones. */
    private static List<Group> groups(List<TripLine> trips, int level, List<String> plates, Map<String, TemplateHTMLOutputModel> sketches) {
        Map<String, Long> sizes = trips.stream().filter(trip -> trip.series() != null)
                .collect(Collectors.groupingBy(TripLine::series, Collectors.counting()));
        Function<TripLine, String> series = trip -> sizes.getOrDefault(trip.series(), 1L) > 1 ? trip.series() : "";
        Map<String, List<TripLine>> groups = trips.stream()
                .collect(Collectors.groupingBy(series, LinkedHashMap::new, Collectors.toList()));
        boolean plain = groups.size() == 1 && groups.containsKey("");
        return groups.entrySet().stream().map(group -> new Group(
                plain ? null : group.getKey().isEmpty() ? "Single trips" : group.getKey(), plain ? level : level + 1,
                group.getValue().stream().map(TripLine::card).filter(card -> plates.contains(card.slug()))
                        .map(card -> new Plate(card, sketches.get(card.slug()))).toList(),
                group.getValue().stream().map(TripLine::card).filter(card -> !plates.contains(card.slug())).toList())).toList();
    }

    /** Subjects of the trips, by name. */
    static List<Entry> flowers(List<TripLine> trips) {
        SortedMap<String, List<String>> days = new TreeMap<>();
        Map<String, String> keys = new LinkedHashMap<>();
        for (TripLine trip : trips) {
            for (TripLine.Flower flower : trip.flowers()) {
                days.computeIfAbsent(flower.name(), name -> new ArrayList<>()).add(trip.card().day());
                if (flower.builtIn()) {
                    keys.put(flower.name(), "subjects.html#" + flower.key());
                }
            }
        }
        return days.entrySet().stream().map(flower -> new Entry(Words.capital(flower.getKey()), keys.get(flower.getKey()),
                some(flower.getValue(), ", "))).toList();
    }

    /** The first three, and how many more. */
    static String some(List<String> texts, String between) {
        int shown = texts.size() <= 4 ? texts.size() : 3;
        return String.join(between, texts.subList(0, shown)) + (shown == texts.size() ? "" : " and " + (texts.size() - shown) + " more");
    }
}
