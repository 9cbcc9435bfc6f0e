package understorey.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import understorey.plan.Canopy;
import understorey.plan.Companion;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Share.Audience;
import understorey.plan.Share.Precision;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.plan.Walk;

class SharingTest {

    private static final String PUBLIC_NAME = "A wooded dingle in the hills";

    private static Trip shared(boolean sensitive, Audience audience, Precision precision) {
        return Sharing.forAudience(Secrets.trip(sensitive, PUBLIC_NAME, new Share(audience, precision)));
    }

    private static void assertHolds(List<String> secrets, Object records, boolean held) {
        String text = records.toString().toLowerCase(Locale.ROOT);
        for (String secret : secrets) {
            assertEquals(held, text.contains(secret.toLowerCase(Locale.ROOT)), secret + " in " + text);
        }
    }

    /** Else the leak tests below could pass for want of anything to leak. */
    @Test
    void hasEverySecretToBeginWith() {
        Trip trip = Secrets.trip(true, PUBLIC_NAME, new Share(Audience.PUBLIC, Precision.EXACT));
        assertHolds(Secrets.OF_PEOPLE, trip, true);
        assertHolds(Secrets.OF_THE_PLACE, trip, true);
    }

    @ParameterizedTest
    @EnumSource(Precision.class)
    void leaksNothingOfASensitivePlaceToThePublic(Precision precision) {
        Trip shared = shared(true, Audience.PUBLIC, precision);
        assertHolds(Secrets.OF_PEOPLE, shared, false);
        assertHolds(Secrets.OF_THE_PLACE, shared, false);
        assertHolds(Secrets.OF_THE_PLACE,
                Sharing.forAudience(Secrets.site(true, PUBLIC_NAME), Audience.PUBLIC, precision), false);
    }

    @Test
    void tellsASensitivePlaceByItsPublicNameAndATenthOfADegree() {
        Trip shared = shared(true, Audience.PUBLIC, Precision.EXACT);
        Site site = shared.site();
        assertEquals(PUBLIC_NAME, site.name());
        assertEquals("a-wooded-dingle-in-the-hills", site.slug());
        assertEquals(new Position(52.3, -3.5), site.position());
        assertEquals(200.0, site.elevationM());
        assertEquals(new Share(Audience.PUBLIC, Precision.COARSE), shared.share());
        assertEquals("Dawn in A wooded dingle in the hills", shared.title());
        assertEquals("A wooded dingle in the hills, week by week", shared.series());
    }

    @Test
    void callsASensitivePlaceWithoutPublicNameAWood() {
        Site site = Sharing.forAudience(Secrets.site(true, null), Audience.PUBLIC, Precision.COARSE);
        assertEquals("A wood", site.name());
        assertEquals("a-wood", site.slug());
        assertHolds(Secrets.OF_THE_PLACE, site, false);
    }

    @Test
    void numbersTheSpotsOfASensitivePlaceAlikeEverywhere() {
        Trip shared = shared(true, Audience.PUBLIC, Precision.COARSE);
        Site site = shared.site();
        assertEquals(List.of("Spot 1", "Spot 2", "Spot 3"), site.spots().stream().map(Spot::name).toList());
        assertEquals(List.of(new Walk("Spot 1", "Spot 2", Duration.ofMinutes(9))), site.walks());
        assertEquals(new Parking("Spot 1", site.parking().closes(), null), site.parking());
        Shot floor = shared.shots().get(0);
        assertEquals("Spot 2", floor.spot());
        assertEquals("The floor from the Spot 2", floor.name());
        assertEquals(floor.name(), shared.shots().get(1).after());
        assertEquals("Lead in from Spot 3", floor.notes());
        assertEquals("Else go back to the Spot 1.", floor.otherwise());
        assertNull(shared.shots().get(2).spot());
        assertEquals(List.of("Stay on the path below the Spot 2."), site.cautions());
    }

    @Test
    void keepsWhatTheLightAndTheSeasonNeed() {
        Site before = Secrets.site(true, PUBLIC_NAME);
        Site after = Sharing.forAudience(before, Audience.PUBLIC, Precision.HIDDEN);
        assertEquals(before.skyline(), after.skyline());
        assertEquals(before.canopy(), after.canopy());
        assertEquals(before.zone(), after.zone());
        assertEquals(before.opening(), after.opening());
        assertEquals(before.seasons(), after.seasons());
        assertEquals("Keep off the leaves.", after.subjects().get(0).care());
        Spot bank = after.spot("Spot 3");
        assertEquals(before.spot("Upper bank").skyline(), bank.skyline());
        assertEquals(before.spot("Upper bank").slope(), bank.slope());
        assertEquals(Canopy.NONE, bank.canopy());
        assertEquals(12.0, after.spot("Spot 2").clearingRadiusM());
    }

    @Test
    void tellsAnOpenPlaceToThePublicAsTheAuthorAsks() {
        Trip exact = shared(false, Audience.PUBLIC, Precision.EXACT);
        assertHolds(Secrets.OF_PEOPLE, exact, false);
        assertEquals(Secrets.site(false, PUBLIC_NAME), exact.site());
        assertEquals(Secrets.trip(false, PUBLIC_NAME, null).shots(), exact.shots());

        Trip coarse = shared(false, Audience.PUBLIC, Precision.COARSE);
        assertEquals(new Position(52.34, -3.55), coarse.site().position());
        assertEquals("Gorsewell Dingle", coarse.site().name());
        assertEquals("Footbridge", coarse.shots().get(0).spot());
        assertEquals("bearing left", coarse.site().spot("Bank").notes());
        assertUnplaced(coarse);

        Trip hidden = shared(false, Audience.PUBLIC, Precision.HIDDEN);
        assertEquals(new Position(52.3, -3.5), hidden.site().position());
        assertEquals(Precision.HIDDEN, hidden.precision());
        assertUnplaced(hidden);
    }

    private static void assertUnplaced(Trip trip) {
        assertTrue(trip.site().spots().stream().allMatch(spot -> spot.at() == null && spot.elevationM() == null));
        assertEquals(200.0, trip.site().elevationM());
        assertHolds(List.of("52.337", "3.548", "52.3361", "3.5502", "183.5"), trip, false);
    }

    @Test
    void numbersCompanionsForThePublicAndKeepsTheirBags() {
        List<Companion> companions = shared(false, Audience.PUBLIC, Precision.EXACT).companions();
        assertEquals(List.of("Companion", "Companion 2"), companions.stream().map(Companion::name).toList());
        assertEquals(List.of("Pocket phone", "Old kit"), companions.stream().map(c -> c.gear().name()).toList());
    }

    @Test
    void tellsThePartyWhoKnowsAndEveryName() {
        Trip before = Secrets.trip(true, PUBLIC_NAME, new Share(Audience.PARTY, Precision.EXACT));
        assertEquals(before, Sharing.forAudience(before));
        Trip coarse = shared(true, Audience.PARTY, Precision.COARSE);
        assertNotNull(coarse.contact());
        assertEquals("Gorsewell Dingle", coarse.site().name());
        assertEquals(new Position(52.34, -3.55), coarse.site().position());
        assertUnplaced(coarse);
    }

    @Test
    void leavesATripThatSaysNothingOfSharingAsItIs() {
        Trip before = Secrets.trip(true, PUBLIC_NAME, null);
        assertEquals(before, Sharing.forAudience(before));
    }

    @Test
    void saysHowManyDecimalsAPageMayPrint() {
        Site sensitive = Secrets.site(true, PUBLIC_NAME);
        Site open = Secrets.site(false, PUBLIC_NAME);
        assertEquals(1, Sharing.decimals(sensitive, Audience.PUBLIC, Precision.EXACT));
        assertEquals(2, Sharing.decimals(sensitive, Audience.PARTY, Precision.COARSE));
        assertEquals(2, Sharing.decimals(open, Audience.PUBLIC, Precision.COARSE));
        assertEquals(1, Sharing.decimals(open, Audience.PRIVATE, Precision.HIDDEN));
        assertNull(Sharing.decimals(open, Audience.PUBLIC, Precision.EXACT));
        Trip shared = shared(true, Audience.PUBLIC, Precision.EXACT);
        assertEquals(1, Sharing.decimals(shared.site(), shared.audience(), shared.precision()));
    }

    /** The trip's slug is the name that the author gave the file; the tool does not invent another. */
    @Test
    void keepsTheTripsOwnSlug() {
        assertEquals("dawn", shared(true, Audience.PUBLIC, Precision.HIDDEN).slug());
        assertFalse(shared(true, Audience.PUBLIC, Precision.HIDDEN).site().slug().contains("gorsewell"));
    }
}
