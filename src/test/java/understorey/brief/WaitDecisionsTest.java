package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.EDGE_TO_THE_WEST;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.has;
import static understorey.brief.SmallTrip.longestWaitMin;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.start;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.advice.LeftOutAdvice;
import understorey.kit.Verdict;
import understorey.order.Leg;

/** For what a photographer waits or walks, and how long. All of it is common practice, no source. */
class WaitDecisionsTest {

    private static final String WIND_DROPS_AT_EIGHT = """
            forecast:
              - {time: "05:00", temperature: 9 °C, wind: 5 m/s, gust: 9 m/s, cloud: 8, rain: 0 mm}
              - {time: "08:00", temperature: 10 °C, wind: 1 m/s, gust: 2 m/s, cloud: 8, rain: 0 mm}
            """;

    @TempDir
    private Path folder;

    /** From half past seven the flower is sharp in the mean wind; half an hour more would only lower the ISO. */
    @Test
    void waitsForTheCalmHourWithTheCloseUp() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("06:00", "10:00"), WIND_DROPS_AT_EIGHT, """
                shots:
                  - {name: Head, subject: ramsons, role: closing, light: [soft]}
                  - {name: Wide, subject: ramsons, role: opening, light: [soft]}
                """);
        assertFalse(start(brief, "Head").isBefore(LocalTime.of(7, 30)), brief.order().legs().toString());
        assertEquals(Verdict.FITS, brief.shot("Head").settings().verdict(), brief.shot("Head").settings().toString());
        assertTrue(start(brief, "Wide").isBefore(start(brief, "Head")), brief.order().legs().toString());
    }

    /**
     * The next picture is good enough now. An hour later the sun might help if the sky were that one of three, or the ISO
     * might be lower: look up when you are there.
     */
    @ParameterizedTest
    @ValueSource(strings = {"", "sky: overcast\n"})
    void doesNotWaitAnHourForOneSkyOfThreeOrAStop(String sky) throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("04:45", "10:00"), sky, """
                shots:
                  - {name: Carpet, subject: ramsons, role: opening, viewpoint: standing, light: [soft]}
                  - {name: Head, subject: ramsons, role: closing, frame: {width: 50 mm}, light: [soft, after-rain], duration: 30 min, priority: 3}
                  - {name: Low, subject: ramsons, role: detail, viewpoint: ground, facing: E, light: [backlight]}
                """);
        List<Leg> between = brief.order().legs().stream().dropWhile(leg -> leg.what() != Leg.What.SHOOT).toList();
        assertTrue(between.stream().filter(leg -> leg.what() == Leg.What.WAIT).allMatch(leg -> leg.minutes() < 60), between.toString());
    }

    /**
     * The sun comes through seven eighths of cloud now and then, and a little more often as it climbs. A wait of an hour or so
     * lets the flowers be sharp; two hours would only be for light that stays poor.
     */
    @ParameterizedTest
    @ValueSource(ints = {7, 8})
    void doesNotWaitLongFromPoorLightToPoorLight(int okta) throws IOException {
        String cloud = forecast(4, 11, "temperature: 9 °C, wind: 1 m/s, gust: 2 m/s, rain: 0 mm, cloud: " + okta);
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "10:00"), cloud, """
                shots:
                  - {name: Carpet, subject: ramsons, role: opening, facing: E, light: [backlight]}
                  - {name: Head, subject: ramsons, role: closing, facing: E, light: [backlight]}
                """);
        assertTrue(brief.shot("Carpet").poorLight() && brief.shot("Head").poorLight());
        assertTrue(longestWaitMin(brief) <= 100, brief.order().legs().toString());
    }

    /** Soft light is as good now as in ten minutes, and a picture taken cannot be lost to a cloud. */
    @Test
    void takesAtOnceWhatHardlyGainsByAWait() throws IOException {
        Brief brief = planned(folder, EDGE_TO_THE_WEST, FULL_BAG, visit("18:30", "21:00"), "sky: broken\n", """
                shots:
                  - {name: Glow, subject: ramsons, role: opening, facing: WNW, light: [low-sun, backlight], priority: 3}
                  - {name: Path, subject: ramsons, role: approach, facing: N, light: [soft]}
                  - {name: Group, subject: ramsons, role: detail, frame: {width: 50 cm}, light: [soft]}
                """);
        assertTrue(brief.order().legs().stream().noneMatch(leg -> leg.what() == Leg.What.WAIT && !leg.shot().equals("Glow")),
                brief.order().legs().toString());
    }

    /** Its light never comes: then it is at least taken when the flowers can be sharp. */
    @Test
    void takesAPictureWithoutItsLightWhenItComesOutSharp() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:30", "10:00"), "sky: overcast\n",
                "shots: [{name: Head, subject: ramsons, role: closing, facing: E, light: [backlight]}]\n");
        assertTrue(brief.shot("Head").poorLight());
        assertTrue(brief.shot("Head").settings().motionStops() < 1, brief.shot("Head").settings().toString());
        assertTrue(longestWaitMin(brief) <= 90, brief.order().legs().toString());
    }

    @Test
    void keepsTheTimeThatTheAuthorFixes() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "10:00"), WIND_DROPS_AT_EIGHT, """
                shots:
                  - {name: Head, subject: ramsons, role: closing, light: [soft], start: "06:10"}
                  - {name: Carpet, subject: ramsons, role: opening, light: [soft]}
                """);
        assertEquals(LocalTime.of(6, 10), start(brief, "Head"));
        assertNotNull(brief.shot("Carpet").time());
    }

    /** What no setting can hold is not on the way: the time goes to the others, and the bag to what is taken. */
    @Test
    void leavesOutWhatNoSettingHoldsInTheWind() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("08:00", "12:00"),
                forecast(7, 13, "temperature: 10 °C, wind: 9 m/s, gust: 13 m/s, cloud: 7, rain: 0 mm"), """
                shots:
                  - {name: Head, subject: ramsons, role: closing, frame: {width: 40 mm}, light: [soft]}
                  - {name: Carpet, subject: ramsons, role: opening, viewpoint: standing, light: [soft]}
                """);
        assertEquals(List.of("Carpet"), brief.order().shooting().stream().map(Leg::shot).toList());
        assertTrue(has(LeftOutAdvice.NoSettingSucceeds.class, brief.order().remarks()), brief.order().remarks().toString());
        assertTrue(brief.packing().take().stream().noneMatch(item -> item.name().equals("Close-up prime")), brief.packing().toString());
    }

    /** Two pictures at the stump, two on the ride, and no light that tells them apart: two walks, not three. */
    @Test
    void goesToASpotOnceWhereTheLightGainsNothingByASecondWalk() throws IOException {
        String spots = WOOD.replace("country: GB\n", """
                country: GB
                  spots: [{name: Stump}, {name: Ride}]
                  walks: [{from: Stump, to: Ride, duration: 3 min}]
                """);
        Brief brief = planned(folder, spots, FULL_BAG, visit("10:00", "14:00"), "sky: overcast\n", """
                shots:
                  - {name: One, subject: ramsons, role: opening, spot: Stump, light: [soft]}
                  - {name: Two, subject: ramsons, role: approach, spot: Ride, light: [soft], priority: 3}
                  - {name: Three, subject: ramsons, role: detail, spot: Stump, light: [soft], priority: 1}
                  - {name: Four, subject: ramsons, role: closing, spot: Ride, light: [soft]}
                """);
        assertEquals(4, brief.order().shooting().size());
        assertTrue(brief.order().legs().stream().filter(leg -> leg.what() == Leg.What.WALK).count() <= 2, brief.order().legs().toString());
    }
}
