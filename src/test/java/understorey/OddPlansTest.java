package understorey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.exposure.Settings;
import understorey.pages.Briefs;
import understorey.pages.Page;
import understorey.pages.SitePages;
import understorey.plan.Display;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.share.Sharing;

/** Odd plans that are allowed: each builds, and no page shows what is no number. */
class OddPlansTest {

    private static final String PHONE = "phone";
    private static final String LONG_LENS = "{gear: Bag, bodies: [{name: Body, sensor: full-frame, pixels: 24 Mpx, mount: A}], "
            + "lenses: [{name: Long, mount: A, focal: 100-3000 mm, aperture: f/4, closest: 0.2 m}]}";
    private static final String TINY_LENS = "{gear: Bag, bodies: [{name: Body, sensor: full-frame, pixels: 24 Mpx, mount: A}], "
            + "lenses: [{name: Tiny, mount: A, focal: 0.5 mm, aperture: f/12, closest: 2 mm}], supports: [{name: Legs, kind: tripod}]}";

    @TempDir
    private Path folder;

    @Test
    void buildsADayOfTwentySixHours() throws IOException {
        Brief brief = built(site("-72.01, longitude: 2.53", "Antarctica/Troll", ""), "2027-10-31", PHONE, "light: [low-sun]");
        assertEquals(26 * 4, brief.day().light().size());
    }

    @Test
    void buildsADayOfFortySevenHoursAndLeavesAfterTheArrival() throws IOException {
        Brief brief = built(site("-89.7, longitude: 167.4", "Pacific/Kwajalein", ""), "1969-09-30", PHONE, "light: [low-sun]");
        assertEquals(47 * 4, brief.day().light().size());
        assertFalse(brief.order().leave().isBefore(brief.order().arrive()));
    }

    @Test
    void looksNoFurtherUpThanStraightUpOnTheSteepestSlope() throws IOException {
        Brief brief = built(site("52.337, longitude: -3.548", "Europe/London", ", spots: [{name: Bank, slope: {angle: 80, faces: SW}}]"),
                "2027-05-08", LONG_LENS.replace("100-3000 mm", "10 mm"), "spot: Bank, facing: NE, orientation: portrait, "
                + "focal_equivalent: 10 mm, sharp: {near: 50 m, far: infinity}");
        assertTrue(brief.timed().get(0).fit().best().tiltDeg() >= -90);
    }

    @Test
    void holdsADepthThatReachesTheHorizonInOneFrame() throws IOException {
        Settings settings = built(wood(), "2027-05-08", TINY_LENS, "sharp: {depth: 1000 m}, frame: {fills: 1 %, distance: 2 mm}")
                .timed().get(0).settings();
        assertNull(settings.stack());
        assertEquals(Double.POSITIVE_INFINITY, settings.sharpToM());
    }

    @Test
    void focusesNoNearerThanALensForItsFrameCan() throws IOException {
        var fit = built(wood(), "2027-05-08", LONG_LENS, "sharp: {near: 0.1 m, far: 0.3 m}, frame: {width: 1 m, distance: 100 m}")
                .timed().get(0).fit().best();
        assertTrue(fit.focusM() * 1000 > fit.actingFocalMm(), fit.focusM() + " m");
    }

    @Test
    void blursStemsByNoLessThanNothing() throws IOException {
        String lens = "focal: 0.5 mm, aperture: f/45, closest: 3 mm, magnification: 2";
        Settings settings = built(wood(), "2027-05-08", TINY_LENS.replace("focal: 0.5 mm, aperture: f/12, closest: 2 mm", lens),
                "sharp: {depth: 1 m}, print: 2 cm, frame: {width: 18 mm}").timed().get(0).settings();
        assertTrue(settings.swayBlurMm() >= 0, settings.swayBlurMm() + " mm");
    }

    private static String wood() {
        return site("52.337, longitude: -3.548", "Europe/London", "");
    }

    private static String site(String position, String zone, String more) {
        return "{site: Any wood, latitude: " + position + ", time_zone: " + zone + more + "}";
    }

    private Brief built(String site, String date, String gear, String shot) throws IOException {
        Files.writeString(folder.resolve("any-trip.yaml"), "trip: Any trip\nsite: " + site + "\ndate: " + date + "\ngear: " + gear
                + "\nforecast: [{time: \"05:00\", wind: 5 m/s, gust: 9 m/s}]\nshots:\n  - {name: Any picture, subject: ramsons, " + shot + "}\n");
        Plans plans = PlansReader.read(folder);
        assertFalse(plans.hasErrors(), () -> plans.findings().toString());
        Brief brief = Planner.brief(Sharing.forAudience(plans.trips().get(0)));
        for (Page page : Briefs.pages(SitePages.open(null, null, Display.USUAL), List.of(brief), List.of(), List.of(), List.of())) {
            assertFalse(page.content().contains("NaN") || page.content().contains("Infinity"), page.path());
        }
        return brief;
    }
}
