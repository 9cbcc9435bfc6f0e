package understorey.share;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import understorey.plan.Canopy;
import understorey.plan.Companion;
import understorey.plan.Foliage;
import understorey.plan.Position;
import understorey.plan.Season;
import understorey.plan.Share;
import understorey.plan.Share.Audience;
import understorey.plan.Share.Precision;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.plan.When;

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
    void keepsNothingOfASensitivePlaceForThePublic(Precision precision) {
        Trip shared = Sharing.forAudience(Secrets.quiet(new Share(Audience.PUBLIC, precision)));
        assertHolds(Secrets.OF_PEOPLE, shared, false);
        assertHolds(Secrets.OF_THE_PLACE, shared, false);
        Site site = shared.site();
        assertEquals(List.of(), site.skyline());
        assertEquals(List.of(), site.edges());
        assertEquals(new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.HALF_LEAF, 20.0), site.canopy());
        assertEquals(List.of(), site.walks());
        assertNull(site.opening());
        assertNull(site.parking());
        for (Spot spot : site.spots()) {
            assertEquals(new Spot(spot.name(), null, null, spot.canopy(), null, null, null, null, null), spot);
        }
    }

    /** Free text goes through, since {@link Leaks} stops what it may not hold. */
    @Test
    void rewritesNoText() {
        Trip before = Secrets.trip(true, PUBLIC_NAME, new Share(Audience.PUBLIC, Precision.COARSE));
        Trip shared = Sharing.forAudience(before);
        assertEquals(before.title(), shared.title());
        assertEquals(before.story(), shared.story());
        assertEquals(before.shots().get(0).notes(), shared.shots().get(0).notes());
        assertEquals(before.shots().get(0).compose(), shared.shots().get(0).compose());
        assertEquals(before.site().cautions(), shared.site().cautions());
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
    }

    @Test
    void tellsAHiddenPlaceByItsDegreeItsMonthAndItsOffset() {
        Trip shared = Sharing.forAudience(Secrets.quiet(new Share(Audience.PUBLIC, Precision.HIDDEN)));
        assertEquals(new Position(52, -4), shared.site().position());
        assertEquals(new When.On(LocalDate.of(2027, 5, 15)), shared.when());
        assertEquals(ZoneId.of("UTC+01:00"), shared.site().zone());
        assertEquals(List.of(), shared.site().seasons());
        assertNull(shared.site().country());
        assertEquals(LocalTime.of(6, 15), shared.shots().get(0).start());
    }

    @Test
    void roundsTimesAndSeasonsOfACoarsePlace() {
        Trip shared = Sharing.forAudience(Secrets.quiet(new Share(Audience.PUBLIC, Precision.COARSE)));
        assertEquals(LocalTime.of(6, 15), shared.shots().get(0).start());
        assertEquals(new When.On(LocalDate.of(2027, 5, 8)), shared.when());
        for (Season.Flowering year : shared.site().seasons().get(0).records()) {
            assertEquals(0, year.first().toEpochDay() % 7);
            assertEquals(0, year.full().toEpochDay() % 7);
        }
        assertEquals(20.0, shared.site().canopy().heightM());
        assertEquals("GB", shared.site().country());
    }

    @Test
    void callsASensitivePlaceWithoutPublicNameAWood() {
        Site site = Sharing.forAudience(Secrets.site(true, null), Audience.PUBLIC, Precision.COARSE);
        assertEquals("A wood", site.name());
        assertEquals("a-wood", site.slug());
    }

    @Test
    void numbersTheSpotsOfASensitivePlaceAlikeEverywhere() {
        Trip shared = shared(true, Audience.PUBLIC, Precision.COARSE);
        assertEquals(List.of("Spot 1", "Spot 2", "Spot 3"), shared.site().spots().stream().map(Spot::name).toList());
        assertEquals("Spot 2", shared.shots().get(0).spot());
        assertNull(shared.shots().get(2).spot());
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

    /** The trip's slug is the name that the author gave the file; the tool does not invent another. */
    @Test
    void keepsTheTripsOwnSlug() {
        assertEquals("dawn", shared(true, Audience.PUBLIC, Precision.HIDDEN).slug());
        assertFalse(shared(true, Audience.PUBLIC, Precision.HIDDEN).site().slug().contains("gorsewell"));
    }
}
