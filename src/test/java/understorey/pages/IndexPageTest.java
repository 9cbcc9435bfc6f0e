package understorey.pages;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Places;
import understorey.Samples;
import understorey.plan.Display;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.schema.Reference;
import understorey.visit.Day;

class IndexPageTest {

    private static TripLine trip(String slug, LocalDate date, @Nullable String series) {
        TripLine.Card card = new TripLine.Card(slug, slug, "date", date.getDayOfMonth() + " " + date.getMonthValue(), "Wood", "ramsons", null,
                "05:00–09:00", "1 picture", "Bag, 1 kg", "1 kg", true);
        return new TripLine(card, date, series, "wood", null, List.of(),
                List.of(new TripLine.Flower("ramsons", "ramsons", true, null, 0, 0)), List.of());
    }

    private static List<String> groups(IndexPage.Year year) {
        return year.groups().stream().map(group -> group.name() + " " + group.plates().size() + "+" + group.rest().size()).toList();
    }

    @Test
    void hasNoHeadingOverSingleTripsOfOneYear() {
        List<TripLine> trips = List.of(trip("b", LocalDate.of(2027, 5, 8), "Spring"), trip("a", LocalDate.of(2027, 4, 8), null));
        List<IndexPage.Year> years = IndexPage.years(trips, Map.of());
        assertEquals(1, years.size());
        assertEquals(null, years.get(0).name());
        assertEquals(List.of("null 2+0"), groups(years.get(0)));
        assertEquals(List.of("a", "b"), years.get(0).groups().get(0).plates().stream().map(plate -> plate.card().slug()).toList());
        assertEquals("Woods in flower, 2027", IndexPage.title(trips));
        assertEquals("2 trips to 1 wood, 8 4 to 8 5.", IndexPage.lead(trips));
        assertEquals("Woods in flower", IndexPage.title(List.of()));
    }

    @Test
    void headsASeriesOfSeveralTrips() {
        List<TripLine> trips = List.of(trip("a", LocalDate.of(2027, 4, 8), "Spring"), trip("b", LocalDate.of(2027, 5, 8), "Spring"),
                trip("c", LocalDate.of(2027, 4, 9), null));
        assertEquals(List.of("Spring 2+0", "Single trips 1+0"), groups(IndexPage.years(trips, Map.of()).get(0)));
    }

    @Test
    void drawsTheLatestTwoYears() {
        List<TripLine> trips = List.of(trip("a", LocalDate.of(2025, 4, 8), null), trip("b", LocalDate.of(2026, 5, 8), null),
                trip("c", LocalDate.of(2027, 4, 9), null));
        List<IndexPage.Year> years = IndexPage.years(trips, Map.of());
        assertEquals(List.of("2027", "2026", "2025"), years.stream().map(IndexPage.Year::name).toList());
        assertEquals(List.of("null 1+0"), groups(years.get(1)));
        assertEquals(List.of("null 0+1"), groups(years.get(2)));
        assertEquals(null, years.get(2).strip());
        assertEquals("Woods in flower, 2025 to 2027", IndexPage.title(trips));
    }

    @Test
    void keepsAThousandTripsToTwoDozenPlatesAndRows() {
        List<TripLine> trips = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            TripLine line = trip("t" + i, LocalDate.of(2027, 3, 1).plusDays(i % 200), null);
            trips.add(new TripLine(line.card(), line.date(), null, "wood" + i % 100, null, List.of(), line.flowers(), List.of()));
        }
        IndexPage.Year year = IndexPage.years(trips, Map.of()).get(0);
        assertEquals(List.of("null 24+976"), groups(year));
        assertEquals(24, year.strip().lines().size());
        assertEquals("76", year.strip().more());
        assertEquals("1 3, 2 3, 3 3 and 997 more", IndexPage.flowers(trips).get(0).note());
    }

    /** Only as many sketches are drawn as have a plate, in whatever order the trips come. */
    @Test
    void drawsNoSketchOfATripWithoutAPlate() {
        SharedPages shared = SitePages.open(null, null, Display.USUAL).shared();
        Visited place = SitePages.open(null, null, Display.USUAL)
                .trip(Trips.brief(Trips.bare(Places.MID_LATITUDE, Trips.phone())), new Neighbours(List.of())).place();
        List<String> drawn = new ArrayList<>();
        IntStream.range(0, 200).forEach(i -> shared.add(trip("t" + i, LocalDate.of(2027, 3, 1).plusDays(i), null), place, id -> {
            drawn.add(id);
            return "<svg id=\"" + id + "\"></svg>";
        }));
        assertEquals(IndexPage.MOST_PLATES, drawn.size());
        String index = SitePagesTest.page(shared.pages(List.of(), List.of(), List.of(), new Manual(new Reference(List.of(), List.of()), List.of())), "index.html");
        assertEquals(IndexPage.MOST_PLATES, SitePagesTest.all("<svg id=\"(sketch-t\\d+)\"", index).size());
        assertTrue(index.contains("id=\"sketch-t0\"") && !index.contains("id=\"sketch-t24\""));
    }

    /** At 56° N, 10° E in late April the sun is up from about 06:00 to 20:30 and highest about 13:20, summer time (from memory). */
    @ParameterizedTest
    @CsvSource({"05:00, 09:00, dawn", "08:00, 11:00, morning", "11:00, 15:00, midday", "15:00, 18:00, afternoon", "18:30, 21:00, evening",
        "05:00, 21:00, all day", "22:30, 23:30, night"})
    void namesThePartOfTheDay(String from, String to, String part) {
        Trip trip = Briefs.demo().trips().stream().filter(demo -> demo.slug().startsWith("anemones")).findFirst().orElseThrow();
        Day day = Day.of(trip, LocalDate.of(2027, 4, 24));
        LocalDate date = day.date();
        assertEquals(part, PartOfDay.of(day.sun(), date.atTime(LocalTime.parse(from)).atZone(trip.site().zone()),
                date.atTime(LocalTime.parse(to)).atZone(trip.site().zone())));
    }

    /** Sunset is about 20:45 there. */
    @ParameterizedTest
    @CsvSource({"22:30, 03:00, night", "21:00, 05:30, all night", "20:00, 00:30, evening"})
    void namesThePartOfTheNight(String from, String to, String part) {
        Trip demo = Briefs.demo().trips().stream().filter(one -> one.slug().startsWith("anemones")).findFirst().orElseThrow();
        Trip trip = Samples.trip(demo.site(), LocalDate.of(2027, 4, 24), from, to, List.of(), Samples.picture("a").shot());
        Day day = Day.of(trip, LocalDate.of(2027, 4, 24));
        assertEquals(part, PartOfDay.of(day.sun(), day.hours().arrive(), day.hours().leave()));
    }

    private static Trip demo(int month, String slug, Share share) {
        Trip trip = Trips.bare(Places.MID_LATITUDE, Trips.phone());
        return new Trip("Trip " + slug, slug, null, trip.site(), new When.On(LocalDate.of(2027, month, 8)), null, null, trip.gear(), List.of(), null,
                null, List.of(), null, trip.shots(), share);
    }

    /** A page leads only to trips that all its readers may see. */
    @Test
    void aPublicPlanNamesNoPrivateTrip() {
        Share open = new Share(Share.Audience.PUBLIC, Share.Precision.EXACT);
        Neighbours trips = new Neighbours(List.of(demo(3, "a", open), demo(4, "b", null), demo(5, "c", open), demo(6, "d", Trips.EXACT)).stream()
                .map(trip -> Neighbours.Dated.of(trip, trip.when().days().get(0))).toList());
        assertEquals("8 May, Trip c", trips.of(demo(3, "a", open)).after().name());
        assertEquals("../c/index.html", trips.of(demo(3, "a", open)).after().text());
        assertEquals("8 March, Trip a", trips.of(demo(4, "b", null)).before().name());
        assertEquals("8 April, Trip b", new Neighbours(List.of(Neighbours.Dated.of(demo(4, "b", null), LocalDate.of(2027, 4, 8)),
                Neighbours.Dated.of(demo(5, "c", null), LocalDate.of(2027, 5, 8)))).of(demo(5, "c", null)).before().name());
        assertEquals(null, trips.of(demo(5, "c", open)).after());
        assertEquals("8 May, Trip c", trips.of(demo(6, "d", Trips.EXACT)).before().name());
        assertEquals(null, new Neighbours(List.of()).of(demo(3, "a", open)).before());
    }

    @Test
    void tellsOtherSitesAboutAPageOnlyWithAnAddress() {
        Trip trip = Trips.full(Places.MID_LATITUDE, Trips.EXACT);
        List<Page> with = Briefs.pages(SitePages.open(null, Address.of("https://example.org/woods"), Display.USUAL),
                List.of(Trips.brief(trip)), List.of(), List.of(), List.of());
        String plan = SitePagesTest.page(with, "first-light/index.html");
        assertTrue(plan.contains("<link rel=\"canonical\" href=\"https://example.org/woods/first-light/\">"));
        assertTrue(plan.contains("content=\"https://example.org/woods/first-light/preview.png\""));
        assertTrue(SitePagesTest.page(with, "index.html").contains("<link rel=\"canonical\" href=\"https://example.org/woods/\">"));
        List<Page> without = Briefs.pages(List.of(trip), List.of());
        assertFalse(without.stream().anyMatch(page -> page.path().endsWith(".png") || page.content().contains("og:")));
        assertEquals(null, Address.of("example.org"));
        assertEquals(null, Address.of("ftp://example.org/"));
        assertEquals(null, Address.of("https://example.org/?page=1"));
        assertEquals("https://example.org/", Address.of("https://example.org").base());
    }
}
