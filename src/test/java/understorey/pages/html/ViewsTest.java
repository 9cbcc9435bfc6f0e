package understorey.pages.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.brief.Brief;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.Trips;
import understorey.pages.markdown.Prose;
import understorey.pages.tables.Row;
import understorey.pages.tables.Tables;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.Share;
import understorey.plan.Site;

class ViewsTest {

    private static final Prose PROSE = new Prose();

    @Test
    void theLightTableHasTheHalfHoursOfALongVisit() {
        Brief brief = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));
        List<Map<String, String>> table = Tables.rows(light(brief).table());
        assertEquals(13, table.size());
        assertEquals("05:00", table.get(0).get("Time"));
        assertEquals("11:00", table.get(12).get("Time"));
        for (Map<String, String> line : table) {
            assertEquals(line.get("skyline").equals("above"), !line.get("Open ground: sun").equals("—"), line.toString());
            assertTrue(line.get("Forest floor: sun").equals("—") || line.get("skyline").equals("above"), line.toString());
            assertEquals(line.get("height").startsWith("−"), line.get("skyline").equals("set"), line.toString());
        }
    }

    /** A hill hides the sun for longer than a level horizon does. */
    @Test
    void theTableOfTheSunSaysWhichHorizonItMeans() {
        Brief brief = Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT));
        Map<String, String> sun = light(brief).sun().stream().collect(Collectors.toMap(Row::name, Row::text));
        assertTrue(sun.containsKey("Sunrise, sunset (level horizon)"), sun.toString());
        assertEquals("Footbridge, Hollow, Stone bank " + view(brief).places().get(0).sunlit(), sun.get("Sun above the skyline"));
    }

    @Test
    void daysWithoutRiseOrSetSayWhy() {
        LightView night = light(Trips.brief(Trips.full(Places.POLAR_NIGHT, Trips.EXACT)));
        assertEquals("does not rise on this day", night.sun().get(0).text());
        Map<String, String> sun = night.sun().stream().collect(Collectors.toMap(Row::name, Row::text));
        assertEquals("Footbridge, Hollow, Stone bank never", sun.get("Sun above the skyline"));
        assertEquals("—, —", sun.get("Sunrise, sunset (level horizon)"));
        LightView day = light(Trips.brief(Trips.full(Places.POLAR_DAY, Trips.EXACT)));
        assertEquals("does not set on this day", day.sun().get(0).text());
    }

    @Test
    void aPlaceTellsNoMoreThanItsAudienceMayKnow() {
        Site site = Trips.site(Places.MID_LATITUDE);
        assertEquals("52.0000, -3.5000", facts(site, Share.Precision.EXACT).get("Position"));
        assertEquals("approximate, to protect the site: about 52.0, −3.5", facts(site, Share.Precision.COARSE).get("Position"));
        assertEquals("hidden, to protect the site", facts(site, Share.Precision.HIDDEN).get("Position"));
        assertEquals("180 m", facts(site, Share.Precision.EXACT).get("Elevation"));
        assertEquals("no opening hours given", facts(site, Share.Precision.EXACT).get("Open"));
        assertEquals("Footbridge", facts(site, Share.Precision.EXACT).get("Car park"));
    }

    @Test
    void treesAreDescribedAsFarAsTheAuthorDid() {
        assertEquals("open ground", trees(Canopy.NONE));
        assertEquals("trees, in full leaf (default)", trees(new Canopy(null, null, null)));
        assertEquals("deciduous trees, 18\u00a0m tall, at half-leaf",
                trees(new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.HALF_LEAF, 18.0)));
        assertEquals("mixed trees, leafless", trees(new Canopy(Canopy.Trees.MIXED, Foliage.Stage.LEAFLESS, null)));
        assertEquals("evergreen trees, plant area index 2.1",
                trees(new Canopy(Canopy.Trees.EVERGREEN, new Foliage.Index(2.1), null)));
        assertEquals("trees, leaves open from 28 April 2027",
                trees(new Canopy(null, new Foliage.LeafOut(LocalDate.of(2027, 4, 28)), null)));
    }

    @Test
    void aSpotTellsItsGround() {
        List<Map<String, String>> spots = Tables.rows(PlaceView.of(Trips.site(Places.MID_LATITUDE),
                Share.Precision.EXACT, false, PROSE, Sentences.builtIn()).spots());
        assertEquals(List.of("Footbridge", "Stone bank", "Hollow"), spots.stream().map(spot -> spot.get("Spot")).toList());
        assertEquals("clearing, trees 12\u00a0m away", spots.get(1).get("Ground"));
        assertEquals("—", spots.get(2).get("Position"));
        assertEquals("51.9995, -3.4996", spots.get(0).get("Position"));
    }

    @Test
    void aBagTellsEveryLensOnItsBody() {
        BagView bag = BagView.of(Trips.dayBag(), Sentences.builtIn());
        Map<String, String> zoom = Tables.rows(bag.cameras()).get(0);
        assertEquals("24–70\u00a0mm", zoom.get("Equivalent"));
        assertEquals("f/4", zoom.get("Aperture"));
        assertEquals("430\u00a0g", zoom.get("Weight"));
        assertEquals("74°–29°", zoom.get("View"));
        assertEquals("64\u00a0GB + 64\u00a0GB", bag.cards());
        assertTrue(Tables.rows(bag.others()).contains(Map.of("Item", "Ring 62 to 72", "Kind", "step-up ring", "Weight", "—")));
        BagView phone = BagView.of(Trips.phone(), Sentences.builtIn());
        assertEquals(List.of("main", "wide"), Tables.rows(phone.cameras()).stream().map(row -> row.get("Lens")).toList());
        assertEquals("190\u00a0g", Tables.rows(phone.cameras()).get(0).get("Weight"));
        assertNull(phone.cards());
        assertNull(phone.batteries());
        assertTrue(BagView.of(Trips.empty(), Sentences.builtIn()).cameras().lines().isEmpty());
    }

    @Test
    void aPictureWithoutACameraHasNoSettings() {
        PlanView plan = view(Trips.brief(Trips.bare(Places.MID_LATITUDE, Trips.empty())));
        for (ShotView shot : plan.shots()) {
            assertEquals("cannot", shot.verdict());
            assertTrue(shot.facts().isEmpty() && shot.otherLight().lines().isEmpty());
            assertNull(shot.settings());
            assertNull(shot.camera());
        }
        assertTrue(plan.findings().get(0).warning());
    }

    @Test
    void aPictureIsToldWithItsUnits() {
        ShotView floor = view(Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT))).shots().get(0);
        Map<String, String> facts = map(floor.facts());
        assertTrue(facts.get("Lens").endsWith(" at 50 mm"), facts.get("Lens"));
        assertTrue(facts.get("Aim").matches("ENE \\(68°\\), (level|\\d+° down)"), facts.get("Aim"));
        assertEquals("Carbon legs, lens 1.5 m high", facts.get("Support"));
        assertTrue(facts.get("Focus").matches(".* m, sharp .* to .*"), facts.get("Focus"));
        assertTrue(floor.settings().line().matches("f/[\\d.]+ · [\\d./]+\u00a0(s|min) · ISO\u00a0\\d+"), floor.settings().line());
        assertEquals(List.of("clear, in the shade", "broken", "overcast"),
                Tables.rows(floor.otherLight()).stream().limit(3).map(row -> row.get("Light")).toList());
        Map<String, String> light = map(floor.light().rows());
        assertTrue(light.get("Light wanted").startsWith("low sun, backlight: " + floor.light().grade() + ". "), light.get("Light wanted"));
        assertTrue(light.get("White balance").startsWith("Start at "), light.get("White balance"));
        assertFalse(light.containsKey("Weather"), "the hours of the visit tell it once for all pictures");
    }

    @Test
    void thePlanTellsWarningsFirstAndNoContactInPublic() {
        for (Brief brief : Briefs.all()) {
            PlanView plan = view(brief);
            boolean noteSeen = false;
            for (PlanView.Remark remark : plan.findings()) {
                assertFalse(noteSeen && remark.warning(), remark.text());
                noteSeen |= !remark.warning();
            }
            if (brief.trip().audience() == Share.Audience.PUBLIC) {
                assertNull(plan.contact());
            }
            assertEquals(brief.timed().size(), plan.taken().size() + plan.notTaken().size());
            String spoilers = plan.spoilers();
            assertTrue(spoilers.matches(".*\\d.*") && !spoilers.matches("(?i).*\\b(nothing|no known)\\b.*"), spoilers);
        }
        PlanView party = view(Trips.brief(Trips.full(Places.MID_LATITUDE, Trips.EXACT)));
        assertEquals("my sister, by text; check-in by 12:00", party.contact());
    }

    @Test
    void figureAndUnitNeverPart() {
        Pattern parted = Pattern.compile("\\d (?:mm|cm|m|kg|g|s|min|GB|Mpx|%|m/s|dpt|stops?)\\b|\\bEV −?\\d");
        for (Places place : Places.ALL) {
            for (Page page : Briefs.pages(List.of(Trips.full(place, Trips.EXACT), Trips.bare(place, Trips.phone())),
                    List.of(Trips.dayBag()))) {
                // The subjects' places and cautions stand as the catalogue has them; what is to be typed has no hard blanks.
                if (page.path().endsWith(".html") && !page.path().equals("subjects.html") && !Briefs.manual(page)) {
                    String text = page.content().replaceAll("(?s)<style>.*?</style>|<[^>]*>", "");
                    assertFalse(parted.matcher(text).find(), () -> page.path() + ": "
                            + parted.matcher(text).results().map(found -> found.group()).toList());
                }
            }
        }
    }

    @Test
    void aSiteSeenBySeveralAudiencesShowsTheMostPublicOne() {
        List<Page> pages = Briefs.pages(List.of(Trips.full(Places.MID_LATITUDE, Trips.EXACT),
                Trips.trip(Places.MID_LATITUDE, Trips.HIDDEN, Trips.phone(), Trips.pictures(), LocalTime.of(6, 0),
                        LocalTime.of(9, 0), List.of())), List.of());
        List<Page> sites = pages.stream().filter(page -> page.path().startsWith("sites/")).toList();
        assertEquals(1, sites.size());
        assertTrue(sites.get(0).content().contains("hidden, to protect the site"));
        assertFalse(sites.get(0).content().contains("52.0"));
    }

    private static LightView light(Brief brief) {
        return view(brief).light();
    }

    private static PlanView view(Brief brief) {
        return PlanView.of(brief, Templates.html(""), Sentences.builtIn(), PROSE, new PlanView.Around(null, null, null));
    }

    private static Map<String, String> facts(Site site, Share.Precision precision) {
        return map(PlaceView.of(site, precision, false, PROSE, Sentences.builtIn()).facts());
    }

    private static Map<String, String> map(List<Row> rows) {
        return rows.stream().collect(Collectors.toMap(Row::name, row -> row.text().replace('\u00a0', ' ')));
    }

    @Test
    void takesTheFirstSentenceToTheEndOfItAndNotOfAnAbbreviation() {
        assertEquals(List.of("Daisy: subsp. alba is protected.", "Keep out.", "One only. 2", "No stop"),
                PlanView.leads(List.of("Daisy: subsp. alba is protected. Look, do not touch.", "Keep out. Stay out.", "One only. 2", "No stop")));
    }

    private static String trees(Canopy canopy) {
        return PlaceView.trees(canopy, Sentences.builtIn());
    }
}
