package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Places;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.light.LightAt;
import understorey.plan.LightWish;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.visit.Place;

/** The light of whole days and of a whole year, as it reaches the pages. */
class YearOfLightTest {

    /** Two pictures that between them wish for everything, one that faces somewhere and one that does not. */
    private static List<Shot> wishful() {
        return List.of(
                Trips.shot("Somewhere", null, "Footbridge", null, null, 24.0, null, 100.0, Arrays.asList(LightWish.values()), true),
                Trips.shot("Anywhere", null, "Stone bank", null, null, 90.0, null, null, Arrays.asList(LightWish.values()), true));
    }

    @ParameterizedTest
    @CsvSource({"70, 26, Europe/Oslo", "0, 37, Africa/Nairobi", "-45, 170, Pacific/Auckland", "-67, -68, America/Argentina/Ushuaia"})
    void buildsOnEveryDayOfAYear(double latitude, double longitude, String zone) {
        for (LocalDate date = LocalDate.of(2027, 1, 1); date.getYear() == 2027; date = date.plusDays(1)) {
            Places place = new Places(new Position(latitude, longitude), ZoneId.of(zone), date);
            Trip full = Trips.full(place, Trips.EXACT);
            Brief brief = Trips.brief(Trips.trip(place, Trips.EXACT, Trips.dayBag(), wishful(), LocalTime.of(5, 0),
                    LocalTime.of(19, 0), date.getDayOfMonth() % 2 == 0 ? full.forecast() : List.of()));
            for (TimedShot shot : brief.timed()) {
                shot.wished().forEach(wished -> assertTrue(wished.outlook().quality() >= 0 && wished.outlook().quality() <= 1));
            }
            if (date.getDayOfMonth() == 15) {
                assertEquals(23, Briefs.pages(List.of(brief.trip()), List.of(Trips.dayBag())).size(), date.toString());
            }
        }
    }

    /**
     * From midnight to midnight: dark at both ends, brightest in the middle, and no step of more than 1.7 EV per degree
     * of solar altitude and 0.3 over, except where direct sun begins or ends.
     */
    @Test
    void theFloorOfTheDemoReadsSensiblyAtEveryStep() {
        int steps = 0;
        for (Trip trip : Briefs.demo().trips()) {
            Brief brief = Trips.brief(trip);
            List<List<LightAt>> tables = new ArrayList<>(List.of(brief.day().light()));
            brief.day().places().stream().map(Place::light).forEach(tables::add);
            for (List<LightAt> table : tables) {
                assertTrue(table.get(0).floor().overcast() < -8 && table.get(table.size() - 1).floor().overcast() < -4);
                LightAt highest = table.stream().max((a, b) -> Double.compare(a.sun().altitudeDeg(), b.sun().altitudeDeg())).orElseThrow();
                assertTrue(highest.floor().shade() > 7 && highest.floor().shade() < 13, highest.floor().toString());
                for (int i = 1; i < table.size(); i++) {
                    steps += smooth(table.get(i - 1), table.get(i));
                }
            }
        }
        assertTrue(steps > 2000, "" + steps);
    }

    private static int smooth(LightAt from, LightAt to) {
        double limit = 1.7 * Math.abs(to.sun().altitudeDeg() - from.sun().altitudeDeg()) + 0.3;
        boolean sunComesOrGoes = from.aboveSkyline() != to.aboveSkyline();
        List<Function<LightAt, Double>> columns = new ArrayList<>(List.of(row -> row.open().shade(),
                row -> row.open().overcast(), row -> row.floor().shade(), row -> row.floor().overcast()));
        if (!sunComesOrGoes) {
            columns.addAll(List.of(row -> row.open().sun(), row -> row.open().broken(), row -> row.floor().broken(),
                    row -> row.floor().fleck()));
        }
        int steps = 0;
        for (Function<LightAt, Double> column : columns) {
            Double before = column.apply(from);
            Double after = column.apply(to);
            if (before != null && after != null) {
                assertTrue(Math.abs(after - before) <= limit, from + " to " + to);
                steps++;
            }
        }
        return steps;
    }

    /** What people meter, front lit at midday: bright sun 15, open shade about 12, a leafed floor 8 to 10; common practice, no source. */
    @Test
    void theDemoComesOutAtWhatPeopleMeter() {
        int rows = 0;
        int leafed = 0;
        for (Trip trip : Briefs.demo().trips()) {
            for (LightAt row : Trips.brief(trip).day().light()) {
                if (row.sun().altitudeDeg() > 35) {
                    assertEquals(15, row.open().sun(), 0.6);
                    assertEquals(12.2, row.open().shade(), 0.6);
                    rows++;
                    if (row.plantAreaIndex() > 2) {
                        assertEquals(9.5, row.floor().shade(), 1);
                        leafed++;
                    }
                }
            }
        }
        assertTrue(rows > 60 && leafed > 20, rows + " " + leafed);
    }
}
