package understorey.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import understorey.plan.Season;
import understorey.season.model.Course;
import understorey.season.model.PastYears;
import understorey.season.model.SeasonScale;

/**
 * What was seen of a season, as a record for the years to come: the first day with first flowers, the middle one of the
 * days in full flower, the first on which it was over. Buds and fading flowers date nothing.
 *
 * @param subject its key
 * @param records one for each season with sightings and without a record, in order; empty if there is nothing to add
 */
public record SeenYear(String subject, List<Season.Flowering> records) {

    public static SeenYear of(Season season) {
        return new SeenYear(season.subject(), records(season));
    }

    private static List<Season.Flowering> records(Season season) {
        if (season.seen().isEmpty()) {
            return List.of();
        }
        List<LocalDate> dates = new ArrayList<>();
        season.records().forEach(record -> dates.add(PastYears.peak(record, Course.USUAL)));
        if (dates.isEmpty()) {
            season.seen().forEach(sighting -> dates.add(sighting.date()));
        }
        SeasonScale scale = SeasonScale.around(dates);
        TreeMap<Integer, List<Season.Sighting>> seasons = new TreeMap<>();
        for (Season.Sighting sighting : season.seen()) {
            seasons.computeIfAbsent(scale.seasonOf(sighting.date()), year -> new ArrayList<>()).add(sighting);
        }
        for (Season.Flowering record : season.records()) {
            seasons.remove(scale.seasonOf(PastYears.peak(record, Course.USUAL)));
        }
        List<Season.Flowering> records = new ArrayList<>();
        for (List<Season.Sighting> seen : seasons.values()) {
            Season.Flowering record = new Season.Flowering(day(seen, Season.Stage.FIRST_FLOWERS, false),
                    day(seen, Season.Stage.FULL_FLOWER, true), day(seen, Season.Stage.OVER, false));
            if ((record.first() != null || record.full() != null || record.over() != null) && rises(record)) {
                records.add(record);
            }
        }
        return List.copyOf(records);
    }

    private static @Nullable LocalDate day(List<Season.Sighting> seen, Season.Stage stage, boolean middle) {
        List<LocalDate> days = seen.stream().filter(sighting -> sighting.stage() == stage).map(Season.Sighting::date).sorted().toList();
        return days.isEmpty() ? null : days.get(middle ? (days.size() - 1) / 2 : 0);
    }

    /** Sightings that contradict each other make no record. */
    private static boolean rises(Season.Flowering record) {
        LocalDate before = null;
        for (LocalDate day : new LocalDate[] {record.first(), record.full(), record.over()}) {
            if (day != null && before != null && day.isBefore(before)) {
                return false;
            }
            before = day == null ? before : day;
        }
        return true;
    }
}
