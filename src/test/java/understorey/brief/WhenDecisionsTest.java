package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.EDGE_TO_THE_WEST;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.forecast;
import static understorey.brief.SmallTrip.longestWaitMin;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.start;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Samples;
import understorey.advice.TripAdvice;
import understorey.advice.VisitAdvice;
import understorey.light.Outlook.Grade;
import understorey.order.Leg;
import understorey.sky.Interval;
import understorey.sky.SunAt;

/** When someone with twenty years of practice takes which picture. All of it is common practice, no source. */
class WhenDecisionsTest {

    private static final String STILL_CLEAR_NIGHT = """
            forecast:
              - {time: "03:00", temperature: 4 °C, dew_point: 3.5 °C, wind: 0.5 m/s, gust: 1 m/s, cloud: 0, rain: 0 mm}
              - {time: "09:00", temperature: 11 °C, dew_point: 4 °C, wind: 1 m/s, gust: 2 m/s, cloud: 1, rain: 0 mm}
            """;
    private static final String STILL_EVENING = """
            forecast:
              - {time: "18:00", temperature: 12 °C, wind: 0.5 m/s, gust: 1 m/s, cloud: 0, rain: 0 mm}
              - {time: "22:00", temperature: 10 °C, wind: 0.5 m/s, gust: 1 m/s, cloud: 0, rain: 0 mm}
            """;
    private static final String SHOWER = """
            forecast:
              - {time: "03:00", temperature: 10 °C, dew_point: 3 °C, wind: 3 m/s, gust: 5 m/s, cloud: 7, rain: 0 mm}
              - {time: "07:00", temperature: 10 °C, dew_point: 8 °C, wind: 2 m/s, gust: 4 m/s, cloud: 8, rain: 2 mm}
              - {time: "08:00", temperature: 12 °C, dew_point: 8 °C, wind: 1 m/s, gust: 2 m/s, cloud: 6, rain: 0 mm}
            """;

    @TempDir
    private Path folder;

    private static ZonedDateTime middle(Interval time) {
        return time.from().plus(time.length().dividedBy(2));
    }

    private static LocalTime middle(Brief brief, String shot) {
        return middle(brief.shot(shot).time()).toLocalTime();
    }

    private static double sunAltitudeDeg(Brief brief, ZonedDateTime time) {
        return SunAt.of(brief.trip().site().position(), time).altitudeDeg();
    }

    @Nested
    class When {

        /** Mist goes first, and the single head can wait. */
        @Test
        void takesTheMistBeforeItEnds() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "10:00"), STILL_CLEAR_NIGHT, """
                    shots:
                      - {name: Head, subject: ramsons, role: closing, light: [soft]}
                      - {name: Mist, subject: ramsons, role: opening, light: [mist]}
                    """);
            Interval mist = brief.shot("Mist").fitted().place().mist().when();
            assertFalse(brief.shot("Mist").time().to().isAfter(mist.to()), mist + " " + brief.shot("Mist").time());
            assertEquals("Mist", brief.order().shooting().get(0).shot());
        }

        @Test
        void keepsIsoCleanOnATripodInStillMist() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "10:00"), STILL_CLEAR_NIGHT.replaceAll(" wind: .*?, gust: .*?,", " wind: 0 m/s,"),
                    "shots: [{name: Mist, subject: ramsons, role: opening, light: [mist]}]\n");
            assertTrue(brief.shot("Mist").fit().best().steady());
            assertTrue(brief.shot("Mist").settings().iso() <= 400, brief.shot("Mist").settings().toString());
        }

        /** Below EV 5 colours fade and focusing becomes hard, and the same soft light gets brighter within the visit. */
        @ParameterizedTest
        @ValueSource(strings = {"", "sky: clear\n", "sky: overcast\n"})
        void takesTheBrighterOfTwoSoftHours(String sky) throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "09:00"), sky,
                    "shots: [{name: Carpet, subject: ramsons, role: opening, light: [soft]}]\n");
            assertTrue(brief.shot("Carpet").settings().ev100() >= 5, brief.shot("Carpet").settings().toString());
        }

        @Test
        void waitsForTheLowSunThatRaisesTheGrade() throws IOException {
            Brief brief = planned(folder, EDGE_TO_THE_WEST, FULL_BAG, visit("18:00", "21:00"), "sky: clear\n", """
                    shots:
                      - {name: Glow, subject: ramsons, role: opening, facing: WNW, light: [low-sun, backlight]}
                      - {name: Head, subject: ramsons, role: closing}
                    """);
            TimedShot glow = brief.shot("Glow");
            assertEquals(Grade.GOOD, glow.outlook().grade(), glow.outlook().toString());
            assertTrue(sunAltitudeDeg(brief, middle(glow.time())) < 10, glow.time().toString());
            assertTrue(longestWaitMin(brief) > 30, brief.order().legs().toString());
        }

        /** From 40° the light is that of a high sun; hours for a few degrees more do not pay. */
        @Test
        void takesOverheadColoursUnderAHighSun() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("07:00", "17:00"), "sky: clear\n", """
                    shots:
                      - {name: Stars, subject: wood-anemone, role: opening, light: [overhead]}
                      - {name: Lines, subject: wood-anemone, role: approach, facing: N, light: [sidelight]}
                    """);
            assertTrue(sunAltitudeDeg(brief, middle(brief.shot("Stars").time())) > 40, brief.shot("Stars").time().toString());
            assertEquals(Grade.GOOD, brief.shot("Stars").outlook().grade());
        }

        @Test
        void takesTheSunsetPictureWithTheSunLow() throws IOException {
            Brief brief = planned(folder, EDGE_TO_THE_WEST, FULL_BAG, visit("17:00", "21:00"), "sky: clear\n", """
                    shots:
                      - {name: Sunset, subject: ramsons, role: opening, facing: WNW, light: [low-sun, backlight], priority: 3}
                      - {name: Way in, subject: ramsons, role: approach}
                      - {name: Head, subject: ramsons, role: closing, light: [soft]}
                    """);
            assertEquals(3, brief.order().shooting().size());
            assertTrue(sunAltitudeDeg(brief, middle(brief.shot("Sunset").time())) < 8, brief.order().legs().toString());
            assertTrue(start(brief, "Way in").isBefore(start(brief, "Sunset")));
        }

        @Test
        void takesDropsAfterTheShowerWhileTheyLast() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:30", "12:00"), SHOWER, """
                    shots:
                      - {name: Drop, subject: ramsons, role: closing, light: [after-rain]}
                      - {name: Carpet, subject: ramsons, role: opening, light: [soft]}
                    """);
            assertFalse(middle(brief, "Drop").isBefore(LocalTime.of(8, 0)), brief.order().legs().toString());
            assertTrue(brief.day().drops().at(middle(brief.shot("Drop").time())) > 0.5);
        }

        @Test
        void worksInTheDuskWhereTwilightIsWished() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("20:00", "22:30"), STILL_EVENING,
                    "shots: [{name: Blue, subject: ramsons, role: opening, light: [twilight]}]\n");
            TimedShot blue = brief.shot("Blue");
            assertEquals(Grade.GOOD, blue.outlook().grade(), blue.outlook().toString());
            assertTrue(sunAltitudeDeg(brief, middle(blue.time())) < 0, blue.time().toString());
            assertTrue(blue.settings().ev100() < 5, blue.settings().toString());
        }

        /** The breeze that is assumed blurs long exposures, but a picture of twilight is of twilight (common practice, no source). */
        @Test
        void waitsForTheDuskInABreezeToo() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("20:00", "22:30"), "sky: clear\n",
                    "shots: [{name: Blue, subject: ramsons, role: opening, light: [twilight]}]\n");
            assertEquals(Grade.GOOD, brief.shot("Blue").outlook().grade());
        }

        @Test
        void saysHowLongToStayForLightAfterTheVisit() throws IOException {
            Brief brief = planned(folder, EDGE_TO_THE_WEST, FULL_BAG, visit("14:00", "17:00"), "sky: clear\n",
                    "shots: [{name: Glow, subject: ramsons, role: opening, facing: WNW, light: [low-sun, backlight]}]\n");
            TripAdvice.LightAfterTheVisit later = Samples.the(TripAdvice.LightAfterTheVisit.class, brief.findings());
            assertEquals(Grade.GOOD, later.grade());
            assertFalse(later.leave().isBefore(later.from().plusMinutes(15)), later.toString());
        }

        @Test
        void saysWhenToArriveForLightBeforeTheVisit() throws IOException {
            String east = EDGE_TO_THE_WEST.replace("WNW", "ENE");
            Brief brief = planned(folder, east, FULL_BAG, visit("09:00", "11:00"), "sky: clear\n",
                    "shots: [{name: Glow, subject: ramsons, role: opening, facing: ENE, light: [low-sun, backlight]}]\n");
            TripAdvice.LightBeforeTheVisit earlier = Samples.the(TripAdvice.LightBeforeTheVisit.class, brief.findings());
            assertTrue(earlier.arrive().isBefore(earlier.to().minusMinutes(15)), earlier.toString());
        }

        @Test
        void offersTheTimeLeftToNamedPictures() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("08:00", "12:00"), "sky: overcast\n",
                    "shots: [{name: Carpet, subject: ramsons, role: opening, light: [soft]}]\n");
            VisitAdvice.TimeLeftFor left = (VisitAdvice.TimeLeftFor) brief.order().timeLeft();
            assertEquals(List.of("Carpet"), left.shots());
            assertTrue(left.minutes() >= 30, left.toString());
        }

        /** Who waits an hour for the light can sleep for an hour more. */
        @Test
        void advisesALaterArrivalWhereTheDayBeginsWithAWait() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("05:00", "09:00"), "sky: overcast\n",
                    "shots: [{name: Carpet, subject: ramsons, role: opening, light: [soft]}]\n");
            VisitAdvice.CouldArriveLater later = Samples.the(VisitAdvice.CouldArriveLater.class, brief.order().remarks());
            assertEquals(brief.shot("Carpet").time().from(), later.start());
            assertTrue(later.minutes() >= 30, later.toString());
        }

        @Test
        void keepsTheMustHaveWhereOnePictureFits() throws IOException {
            Brief brief = planned(folder, WOOD, FULL_BAG, visit("09:00", "09:30"), "sky: overcast\n", """
                    shots:
                      - {name: Nice, subject: ramsons, role: opening, duration: 20 min, priority: 1}
                      - {name: Must, subject: ramsons, role: closing, duration: 20 min, priority: 3}
                    """);
            assertEquals(List.of("Must"), brief.order().shooting().stream().map(Leg::shot).toList());
        }
    }
}
