package understorey.pages;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.pages.tables.Row;
import understorey.pages.words.Dates;
import understorey.plan.Share;
import understorey.plan.Trip;

/**
 * The trips before and after each trip, by date. A page leads only to trips that everyone who may see it may see: a public page
 * never names a private trip.
 */
public final class Neighbours {

    /**
     * What is kept of a trip.
     *
     * @param day as its audience gets it
     */
    public record Dated(String slug, String title, Share.Audience audience, LocalDate date, String day) {

        /** A trip, ready for its audience, on its date. */
        public static Dated of(Trip trip, LocalDate date) {
            return new Dated(trip.slug(), trip.title(), trip.audience(), date, Dates.shortDay(trip, date));
        }
    }

    /** The trips before and after one; null where there is none. */
    public record Beside(@Nullable Row before, @Nullable Row after) {
    }

    private final Map<Share.Audience, List<Dated>> seen = new EnumMap<>(Share.Audience.class);
    private final Map<Share.Audience, Map<String, Integer>> places = new EnumMap<>(Share.Audience.class);

    public Neighbours(List<Dated> trips) {
        List<Dated> ordered = trips.stream().sorted(Comparator.comparing(Dated::date).thenComparing(Dated::slug)).toList();
        for (Share.Audience audience : Share.Audience.values()) {
            List<Dated> open = ordered.stream().filter(trip -> trip.audience().compareTo(audience) >= 0).toList();
            Map<String, Integer> place = new HashMap<>();
            open.forEach(trip -> place.put(trip.slug(), place.size()));
            seen.put(audience, open);
            places.put(audience, place);
        }
    }

    /** The neighbours of a trip. */
    public Beside of(Trip trip) {
        return new Beside(beside(trip, -1), beside(trip, 1));
    }

    private @Nullable Row beside(Trip trip, int step) {
        List<Dated> open = seen.getOrDefault(trip.audience(), List.of());
        Integer place = places.getOrDefault(trip.audience(), Map.of()).get(trip.slug());
        int beside = place == null ? -1 : place + step;
        return beside < 0 || beside >= open.size() ? null
                : new Row(open.get(beside).day() + ", " + open.get(beside).title(), "../" + open.get(beside).slug() + "/index.html");
    }
}
