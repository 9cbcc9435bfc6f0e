package understorey.season;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import understorey.plan.Position;
import understorey.plan.Season;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Temperatures;

/** Invented woods with a past. */
final class Woods {

    static final Subject RAMSONS = subject("ramsons", false, 4, 6);

    private Woods() {
    }

    static Subject subject(String key, boolean southern, Integer first, Integer last) {
        return new Subject(key, key, null, null, southern, first, last, null, null, null, null, null, null, null, null,
                null, null, null, null, null, 53.0, null);
    }

    static Site wood(double latitude, Double elevationM, Season... seasons) {
        return new Site("Testing Wood", "testing-wood", null, new Position(latitude, 0), elevationM, ZoneId.of("UTC"),
                List.of(), null, List.of(), List.of(), null, null, List.of(seasons), List.of(), null, null, false,
                List.of(), null, List.of(), null);
    }

    static Season records(String... full) {
        return season(null, List.of(), full);
    }

    static Season season(Temperatures temperatures, List<Season.Sighting> seen, String... full) {
        List<Season.Flowering> records = new ArrayList<>();
        for (String date : full) {
            LocalDate day = LocalDate.parse(date);
            records.add(new Season.Flowering(day.minusDays(12), day, day.plusDays(18)));
        }
        return new Season("ramsons", records, temperatures, seen);
    }

    static Season.Sighting seen(String date, Season.Stage stage) {
        return new Season.Sighting(LocalDate.parse(date), stage);
    }

    static FloweringWindow ramsons(Season season, String near) {
        return FloweringWindow.of(wood(53, 200.0, season), RAMSONS, LocalDate.parse(near), null);
    }
}
