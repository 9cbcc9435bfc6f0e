package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.DirectionAdvice;
import understorey.advice.TripAdvice;
import understorey.light.LightAt;
import understorey.light.Outlook;
import understorey.light.Side;
import understorey.plan.SkyWord;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.sky.Interval;
import understorey.sky.SunAt;
import understorey.visit.Place;

/** The light of each spot and on each picture, from what an author writes. */
class SpotLightTest {

    private static final String SITE = """
            site:
              site: Invented Clough
              latitude: 52.337
              longitude: -3.548
              time_zone: Europe/London
              skyline: [{bearing: N, angle: 10}, {bearing: E, angle: 12}, {bearing: S, angle: 9}, {bearing: W, angle: 14}]
              canopy: {trees: deciduous, stage: half-leaf, height: 18 m}
              spots:
                - {name: Ford}
                - {name: Stile}
                - {name: Glade, clearing: {radius: 40 m}}
                - {name: Bank, slope: {angle: 30, faces: W}}
                - {name: Top, canopy: none, skyline: [{bearing: N, angle: 0}]}
            gear: phone
            date: 2027-05-08
            arrive: "06:00"
            leave: "12:00"
            """;

    @TempDir
    private Path folder;

    private Brief brief(String more) throws IOException {
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + SITE + more);
        Plans plans = PlansReader.read(folder);
        assertEquals(List.of(), plans.findings());
        return Planner.brief(plans.trips().get(0));
    }

    private static Place at(Brief brief, String spot) {
        return brief.day().places().stream().filter(place -> place.spots().contains(spot)).findFirst().orElseThrow();
    }

    private static String shots(String... spots) {
        StringBuilder shots = new StringBuilder("shots:\n");
        for (String spot : spots) {
            shots.append("  - {name: At ").append(spot).append(", subject: ramsons, spot: ").append(spot)
                    .append(", facing: E, duration: 5 min}\n");
        }
        return shots.toString();
    }

    @Test
    void spotsOfWhichNothingIsToldShareTheLightOfTheSite() throws IOException {
        Brief brief = brief(shots("Ford", "Glade", "Stile", "Top"));
        assertEquals(List.of(List.of("Ford", "Stile"), List.of("Glade"), List.of("Top")),
                brief.day().places().stream().map(Place::spots).toList());
        assertSame(brief.day().light(), brief.day().places().get(0).light());
        assertEquals(List.of(), brief("shots: [{name: Anywhere, subject: ramsons}]\n").day().places().get(0).spots());
    }

    /** A spot 30 km off has its own sun, though nothing else is told of it. */
    @Test
    void aFarSpotHasLightOfItsOwn() throws IOException {
        String far = SITE.replace("- {name: Stile}", "- {name: Stile, at: [52.337, -3.1]}");
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + far + shots("Ford", "Stile"));
        Brief brief = Planner.brief(PlansReader.read(folder).trips().get(0));
        assertEquals(List.of(List.of("Ford"), List.of("Stile")), brief.day().places().stream().map(Place::spots).toList());
        assertTrue(at(brief, "Stile").sunlit().get(0).from().isBefore(at(brief, "Ford").sunlit().get(0).from()));
    }

    /** The way leads under the darkest of the places visited, and mist clears with the valley, not with the bank. */
    @Test
    void takesTheDarkestPlaceForTheLampAndTheValleyForTheMist() throws IOException {
        String open = SITE.replace("canopy: {trees: deciduous, stage: half-leaf, height: 18 m}", "canopy: none")
                .replace("- {name: Stile}", "- {name: Stile, canopy: {trees: evergreen, plant_area_index: 4}}")
                .replace("leave: \"12:00\"", "leave: \"21:25\"");
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + open + shots("Top"));
        ZonedDateTime without = Planner.brief(PlansReader.read(folder).trips().get(0)).day().headTorch().from();
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + open + shots("Top", "Stile", "Bank"));
        Brief brief = Planner.brief(PlansReader.read(folder).trips().get(0));
        assertTrue(without == null || brief.day().headTorch().from().isBefore(without));
        assertSame(at(brief, "Top").mist(), at(brief, "Bank").mist());
    }

    @Test
    void eachSpotSeesTheSunOverItsOwnLand() throws IOException {
        Brief brief = brief(shots("Ford", "Bank", "Top", "Glade"));
        ZonedDateTime ford = at(brief, "Ford").sunlit().get(0).from();
        ZonedDateTime bank = at(brief, "Bank").sunlit().get(0).from();
        ZonedDateTime top = at(brief, "Top").sunlit().get(0).from();
        assertTrue(top.isBefore(ford) && ford.isBefore(bank), top + " " + ford + " " + bank);
        // A bank of 30° that falls to the west is in its own shade until the sun stands some 30° high in the east.
        assertTrue(SunAt.of(brief.trip().site().position(), bank).apparentAltitudeDeg() > 25);
        assertNull(at(brief, "Ford").overTrees());
        Interval overTrees = at(brief, "Glade").overTrees().get(0);
        assertTrue(overTrees.from().isAfter(at(brief, "Glade").sunlit().get(0).from()));
        // Trees 18 m tall, 40 m away, stand 24.2° high.
        assertEquals(24.2, SunAt.of(brief.trip().site().position(), overTrees.from()).apparentAltitudeDeg(), 0.1);
    }

    @Test
    void theFloorIsBrighterInAClearingAndInTheOpen() throws IOException {
        Brief brief = brief(shots("Ford", "Glade", "Top"));
        for (int i = 0; i < brief.day().light().size(); i++) {
            LightAt wood = at(brief, "Ford").light().get(i);
            LightAt glade = at(brief, "Glade").light().get(i);
            assertTrue(glade.floor().shade() > wood.floor().shade() + 1, glade.toString());
            assertTrue(at(brief, "Top").light().get(i).floor().overcast() > glade.floor().overcast());
            assertTrue(glade.fleckShare() >= wood.fleckShare());
        }
    }

    @Test
    void aClearingWithoutTheHeightOfItsTreesIsRemarked() throws IOException {
        String unknown = SITE.replace(", height: 18 m", "");
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + unknown + shots("Glade"));
        Brief brief = Planner.brief(PlansReader.read(folder).trips().get(0));
        assertTrue(kinds(brief).contains(TripAdvice.ClearingWithoutHeight.class));
        assertNull(brief.day().places().get(0).overTrees());
    }

    private static List<Class<?>> kinds(Brief brief) {
        return brief.findings().stream().<Class<?>>map(Advice::getClass).toList();
    }

    @Test
    void aPictureIsToldWhereItsLightComesFrom() throws IOException {
        Brief brief = brief("sky: clear\nshots: [{name: Into the sun, subject: ramsons, spot: Top, facing: E, start: \"07:30\", "
                + "light: [backlight]}, {name: In its back, subject: ramsons, spot: Top, facing: W, start: \"08:30\", light: [backlight]}]\n");
        TimedShot into = brief.timed().get(0);
        assertEquals(Side.BACK, into.sunlight().now().side());
        assertEquals(Outlook.Grade.GOOD, into.outlook().grade());
        assertTrue(into.sunlight().reasons().stream().anyMatch(reason -> reason instanceof DirectionAdvice.SunAhead));
        assertTrue(into.outlook().windows().get(0).contains(into.time().from()));
        TimedShot away = brief.timed().get(1);
        assertEquals(Side.FRONT, away.sunlight().now().side());
        assertEquals(Outlook.Grade.POOR, away.outlook().grade());
        assertTrue(kinds(brief).contains(TripAdvice.LightAfterTheVisit.class));
        assertTrue(away.outlook().windows().get(0).from().getHour() >= 15, away.outlook().windows().toString());
    }

    /** Low sun comes into a wood along a ride and from the edge, and without one not at all: common practice, no source. */
    @ParameterizedTest
    @CsvSource(nullValues = "unknown", value = {"'[{bearing: WNW, distance: 40 m}]',GOOD,SunIsLow", "unknown,FAIR,NeedsOpening",
        "'[{bearing: E, distance: 40 m}]',POOR,FlecksTooFew", "'[{bearing: WNW, distance: 900 m}]',POOR,FlecksTooFew"})
    void lowSunComesIntoAWoodFromItsEdge(@Nullable String edges, Outlook.Grade grade, String kind) throws IOException {
        String evening = SITE.replaceAll("skyline: .*]\n", edges == null ? "sensitive: no\n" : "edges: " + edges + "\n")
                .replace("leave: \"12:00\"", "leave: \"21:00\"");
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + evening
                + "sky: clear\nshots: [{name: A, subject: ramsons, facing: WNW, light: [low-sun, backlight], start: \"20:10\", duration: 5 min}]\n");
        Outlook outlook = Planner.brief(PlansReader.read(folder).trips().get(0)).timed().get(0).outlook();
        assertEquals(grade, outlook.grade(), outlook.toString());
        assertTrue(outlook.because().stream().anyMatch(why -> why.getClass().getSimpleName().equals(kind)), outlook.because().toString());
    }

    /** It may come: a picture of the low sun waits for it under an unknown sky, as under a clear one (common practice, no source). */
    @Test
    void waitsForTheLowSunWhereTheSkyIsUnknown() throws IOException {
        String evening = SITE.replaceAll("skyline: .*]\n", "edges: [{bearing: WNW, distance: 40 m}]\n")
                .replace("\"06:00\"", "\"18:00\"").replace("\"12:00\"", "\"21:00\"");
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + evening
                + "shots: [{name: A, subject: ramsons, facing: WNW, light: [low-sun, backlight]}]\n");
        TimedShot.Wished clear = Planner.brief(PlansReader.read(folder).trips().get(0)).timed().get(0).wished().get(0);
        assertEquals(SkyWord.CLEAR, clear.sky());
        assertEquals(Outlook.Grade.GOOD, clear.outlook().grade(), clear.toString());
    }

    @Test
    void saysHowGoodTheLightIsThatTheVisitMisses() throws IOException {
        Files.writeString(folder.resolve("trip.yaml"), "trip: Invented\n" + SITE.replaceAll("skyline: .*]\n", "sensitive: no\n")
                + "sky: clear\nshots: [{name: A, subject: ramsons, facing: WNW, light: [low-sun, backlight]}]\n");
        Brief brief = Planner.brief(PlansReader.read(folder).trips().get(0));
        assertEquals(Outlook.Grade.FAIR, Samples.the(TripAdvice.LightAfterTheVisit.class, brief.findings()).grade());
    }

    @Test
    void lightThatIsPoorUnderEverySkyIsRemarkedThoughNobodySaidWhichComes() throws IOException {
        Brief brief = brief("shots: [{name: A, subject: ramsons, facing: W, light: [backlight], start: \"08:00\"}, "
                + "{name: B, subject: ramsons, facing: E, light: [backlight], start: \"07:30\"}]\n");
        assertTrue(brief.shot("A").poorLight());
        assertFalse(brief.shot("B").poorLight(), "it is good if clear");
        assertEquals(1, kinds(brief).stream().filter(kind -> kind.equals(TripAdvice.LightAfterTheVisit.class)).count());
    }

    @Test
    void withoutAWordOnTheSkyAllSkiesAreToldAndNoneIsGuessed() throws IOException {
        Brief brief = brief("shots: [{name: A, subject: ramsons, facing: E, light: [backlight], start: \"08:00\"}]\n");
        TimedShot shot = brief.timed().get(0);
        assertFalse(shot.skyKnown());
        assertNull(shot.outlook());
        assertEquals(List.of(SkyWord.CLEAR, SkyWord.BROKEN, SkyWord.OVERCAST), shot.wished().stream().map(TimedShot.Wished::sky).toList());
        assertTrue(shot.wished().get(0).outlook().quality() > shot.wished().get(2).outlook().quality());
        assertTrue(kinds(brief).contains(TripAdvice.SkyUnknown.class));
    }

    @Test
    void whereTheForecastEndsTheOutlookEndsToo() throws IOException {
        String forecast = "forecast:\n  - {time: \"06:00\", cloud: 1, wind: 1 m/s}\n  - {time: \"08:00\", cloud: 1, wind: 1 m/s}\n";
        Brief brief = brief(forecast + "shots:\n  - {name: Early, subject: ramsons, spot: Top, facing: E, light: [backlight], start: \"07:00\"}\n"
                + "  - {name: Late, subject: ramsons, spot: Top, light: [backlight], start: \"11:00\"}\n");
        Outlook early = brief.timed().get(0).outlook();
        assertNotNull(early);
        Interval window = early.windows().get(early.windows().size() - 1);
        assertFalse(window.to().toLocalTime().isAfter(java.time.LocalTime.of(9, 0)), window.toString());
        assertFalse(brief.timed().get(1).skyKnown());
        assertTrue(kinds(brief).contains(TripAdvice.ForecastSilent.class));
        assertEquals(7, brief.weather().size());
        assertEquals(Duration.ofHours(6), Duration.between(brief.weather().get(0).time(), brief.weather().get(6).time()));
    }
}
