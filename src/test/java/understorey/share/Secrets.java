package understorey.share;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import understorey.plan.Bag;
import understorey.plan.Canopy;
import understorey.plan.Companion;
import understorey.plan.Compose;
import understorey.plan.Contact;
import understorey.plan.Edge;
import understorey.plan.Foliage;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Role;
import understorey.plan.Season;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.Walk;
import understorey.plan.When;

/** An invented trip with something to hide in every place where an author can write. */
final class Secrets {

    /** What a public page of the sensitive site must never hold, wherever it was written. */
    static final List<String> OF_THE_PLACE = List.of("52.337", "3.548", "52.33", "3.55", "52.3361", "3.5502", "187",
            "183.5", "Gorsewell", "Footbridge", "Upper bank", "Bank", "bearing left", "behind the barn",
            "park by the chapel", "example.org/ask", "two coins", "old quarry");

    /** What no public page holds. */
    static final List<String> OF_PEOPLE = List.of("my sister", "13:07", "Rosalind", "Tobias");

    private Secrets() {
    }

    static Trip trip(boolean sensitive, String publicName, Share share) {
        return new Trip("Dawn in Gorsewell Dingle", "dawn", "gorsewell dingle, week by week", site(sensitive, publicName),
                new When.On(LocalDate.of(2027, 5, 8)), LocalTime.of(5, 0), LocalTime.of(11, 0), bag("Day bag"),
                List.of(new Companion("Rosalind", bag("Pocket phone")), new Companion("Tobias", bag("Old kit"))),
                new Contact("my sister, by text", LocalTime.of(13, 7)), null, List.of(),
                "From the GORSEWELL-DINGLE floor\nto the upper **bank** of Gorsewell\nDingle.",
                List.of(shot("The floor from the footbridge", "Footbridge", null),
                        shot("One head", "Upper bank", "The floor from the footbridge"),
                        shot("Last light", null, null)),
                share);
    }

    /** The same trip in words that name no place. */
    static Trip quiet(Share share) {
        Trip t = trip(true, "A wooded dingle in the hills", share);
        Site s = t.site();
        Site site = new Site(s.name(), s.slug(), s.publicName(), s.position(), s.elevationM(), s.zone(), s.skyline(),
                s.canopy(), s.spots(), s.walks(), s.opening(), s.parking(), s.seasons(), List.of(), s.access(), s.reports(),
                true, List.of("Stay on the path."), s.notes(), s.edges(), s.country());
        return new Trip("Dawn", t.slug(), "Week by week", site, t.when(), t.arrive(), t.leave(), t.gear(), t.companions(),
                t.contact(), t.sky(), t.forecast(), "White flowers.", List.of(quiet("The floor", "Footbridge", null),
                        quiet("One head", "Upper bank", "The floor"), quiet("Last light", null, null)), t.share());
    }

    private static Shot quiet(String name, String spot, String after) {
        return new Shot(name, Role.DETAIL, new Subject("ramsons", "Ramsons", null, null, false, 4, 6, null, null, 0.2, 0.45,
                16.0, 10, null, Subject.Reflectance.WHITE, "white", "wet woods", null, null, null), spot, null, null, null,
                50.0, null, 60.0, List.of(), null, Duration.ofMinutes(20), 3, null, null, null, LocalTime.of(6, 13), after, null,
                new Compose("leaves", null, null, null, List.of()));
    }

    static Site site(boolean sensitive, String publicName) {
        return new Site("Gorsewell Dingle", "gorsewell-dingle", publicName, new Position(52.337, -3.548), 187.0,
                ZoneId.of("Europe/London"), List.of(new SkylinePoint(0, 14), new SkylinePoint(180, 11)),
                new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.HALF_LEAF, 18.0, 6.25, 315.0, 0.345),
                List.of(new Spot("Bank", new Position(52.3361, -3.5502), 183.5, null, null, null, null, "bearing left", null),
                        new Spot("Footbridge", new Position(52.337, -3.5481), null, null, null, null, 12.0, null, null),
                        new Spot("Upper bank", new Position(52.3376, -3.5469), null, Canopy.NONE,
                                List.of(new SkylinePoint(180, 28)), new Slope(15, 225), null, "behind the barn",
                                List.of(new Edge(271, 19.5)))),
                List.of(new Walk("Bank", "Footbridge", Duration.ofMinutes(9))),
                new Opening(LocalTime.of(5, 0), LocalTime.of(20, 0)),
                new Parking("Bank", LocalTime.of(20, 0), "two coins at Bank"),
                List.of(new Season("ramsons", List.of(new Season.Flowering(LocalDate.of(2024, 4, 12),
                        LocalDate.of(2024, 4, 29), null)), null, List.of())),
                List.of(ramsons()), "park by the chapel", "https://example.org/ask", sensitive,
                List.of("Stay on the path below the Footbridge."), "once an old quarry", List.of(new Edge(271, 43)), "GB");
    }

    static Subject ramsons() {
        return new Subject("ramsons", "Ramsons", "Allium ursinum", null, false, 4, 6, null, null, 0.2, 0.45, 16.0, 10,
                null, Subject.Reflectance.WHITE, "white", "wet floor of Gorsewell Dingle", "Keep off the leaves.", null,
                null);
    }

    private static Shot shot(String name, String spot, String after) {
        return new Shot(name, Role.DETAIL, ramsons(), spot, null, null, null, 50.0, null, 60.0, List.of(), null,
                Duration.ofMinutes(20), 3, "Lead in from upper bank", "Else go back to the Bank.", null, null, after,
                null, new Compose("leaves", "the floor", "trees above the Footbridge", "lower left", List.of("bins of Gorsewell")));
    }

    private static Bag bag(String name) {
        return new Bag(name, null, List.of(), List.of(), List.of(), List.of(), false, List.of(), 0, List.of());
    }
}
