package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.brief.SmallTrip.FULL_BAG;
import static understorey.brief.SmallTrip.WOOD;
import static understorey.brief.SmallTrip.planned;
import static understorey.brief.SmallTrip.visit;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import understorey.Samples;
import understorey.advice.LightAdvice;
import understorey.light.LightAt;
import understorey.light.LightDay;
import understorey.light.Outlook;
import understorey.light.Outlook.Grade;
import understorey.light.Wishes;
import understorey.order.Leg;
import understorey.sky.Interval;
import understorey.visit.SkyDays;

/** What someone with twenty years of practice does in the rain. All of it is common practice, no source. */
class RainDecisionsTest {

    private static final String SHOWER = """
            forecast:
              - {time: "03:00", temperature: 10 °C, dew_point: 3 °C, wind: 3 m/s, gust: 5 m/s, cloud: 7, rain: 0 mm}
              - {time: "07:00", temperature: 10 °C, dew_point: 8 °C, wind: 2 m/s, gust: 4 m/s, cloud: 8, rain: 2 mm}
              - {time: "08:00", temperature: 12 °C, dew_point: 8 °C, wind: 1 m/s, gust: 2 m/s, cloud: 6, rain: 0 mm}
            """;

    /** Rows every two hours, as many forecasts have them. */
    private static final String RAIN_TILL_NOON = """
            forecast:
              - {time: "08:00", temperature: 9 °C, humidity: 92 %, wind: 2 m/s, gust: 4 m/s, cloud: 8, rain: 1.5 mm, rain_chance: 90 %}
              - {time: "10:00", temperature: 9 °C, humidity: 94 %, wind: 2 m/s, gust: 4 m/s, cloud: 8, rain: 2 mm, rain_chance: 90 %}
              - {time: "11:00", temperature: 10 °C, humidity: 92 %, wind: 2 m/s, gust: 4 m/s, cloud: 7, rain: 1 mm, rain_chance: 80 %}
              - {time: "12:00", temperature: 10 °C, humidity: 90 %, wind: 2 m/s, gust: 4 m/s, cloud: 6, rain: 0 mm, rain_chance: 10 %}
              - {time: "16:00", temperature: 12 °C, humidity: 80 %, wind: 2 m/s, gust: 4 m/s, cloud: 6, rain: 0 mm}
            """;

    @TempDir
    private Path folder;

    /** Soft light comes with the rain, but an expert keeps lens and flowers dry: after it, or before. */
    @ParameterizedTest
    @ValueSource(strings = {", light: [soft]", ""})
    void keepsOutOfTheRain(String wish) throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("06:40", "10:00"), SHOWER,
                "shots: [{name: Carpet, subject: ramsons, role: opening" + wish + "}]\n");
        Interval time = brief.shot("Carpet").time();
        assertFalse(time.from().toLocalTime().isBefore(LocalTime.of(8, 0)) && time.to().toLocalTime().isAfter(LocalTime.of(7, 0)),
                time.toString());
    }

    /** Drops hang while it rains too, but the picture is of the minutes after the rain: also in an hour between two wet rows. */
    @ParameterizedTest
    @ValueSource(strings = {"after-rain", "soft, after-rain"})
    void givesHoursAfterTheRainAndNotInIt(String wish) throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("12:00", "15:00"), RAIN_TILL_NOON,
                "shots: [{name: Drop, subject: ramsons, role: closing, frame: {width: 40 mm}, light: [" + wish + "]}]\n");
        List<Interval> windows = brief.shot("Drop").outlook().windows();
        assertFalse(windows.isEmpty());
        assertTrue(windows.stream().noneMatch(window -> window.from().getHour() < 12), windows.toString());
    }

    /** A visit of only that hour says so. */
    @ParameterizedTest
    @ValueSource(strings = {"soft", "after-rain"})
    void gradesAStartInTheRainLowerAndSaysWhy(String wish) throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("07:00", "07:50"), SHOWER,
                "shots: [{name: Carpet, subject: ramsons, role: opening, light: [" + wish + "]}]\n");
        assertEquals(Grade.POOR, brief.shot("Carpet").outlook().grade(), brief.shot("Carpet").outlook().toString());
        assertEquals(2, Samples.the(LightAdvice.RainFalls.class, brief.shot("Carpet").outlook().because()).amount(), 1e-9);
    }

    /** Drops that may have fallen and cloud that may break are each good enough; together they are fair, and one of them is named. */
    @Test
    void saysWhatMakesGoodLightFair() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("10:10", "11:00"), """
                forecast:
                  - {time: "05:00", temperature: 9 °C, humidity: 97 %, wind: 2 m/s, gust: 4 m/s, cloud: 8, rain: 1.5 mm, rain_chance: 75 %}
                  - {time: "09:00", temperature: 10 °C, humidity: 96 %, wind: 1 m/s, gust: 2 m/s, cloud: 8, rain: 0.5 mm, rain_chance: 60 %}
                  - {time: "10:00", temperature: 11 °C, humidity: 92 %, wind: 1 m/s, gust: 2 m/s, cloud: 7, rain: 0 mm}
                  - {time: "12:00", temperature: 13 °C, humidity: 80 %, wind: 1.5 m/s, gust: 3 m/s, cloud: 5, rain: 0 mm}
                """, "shots: [{name: Drops, subject: ramsons, role: closing, light: [soft, after-rain]}]\n");
        Outlook outlook = brief.shot("Drops").outlook();
        assertEquals(Grade.FAIR, outlook.grade(), outlook.toString());
        assertFalse(outlook.because().get(0) instanceof LightAdvice.DropsThere || outlook.because().get(0) instanceof LightAdvice.SoftUnderCloud,
                outlook.because().toString());
    }

    /** Each drop shows in a close-up, and hardly one in a picture of the carpet: first the head, then the stem, then the wood. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void takesTheClosestPictureFirstAfterTheRain(int priority) throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("12:00", "15:00"), RAIN_TILL_NOON, """
                shots:
                  - {name: Wet carpet, subject: ramsons, role: opening, light: [soft, after-rain]}
                  - {name: Stem, subject: ramsons, role: detail, frame: {height: 20 cm}, light: [soft, after-rain]}
                  - {name: Drop, subject: ramsons, role: closing, frame: {width: 30 mm}, light: [soft, after-rain], priority: %d}
                """.formatted(priority));
        assertEquals(List.of("Drop", "Stem", "Wet carpet"), brief.order().shooting().stream().map(Leg::shot).toList());
    }

    /** The window, the grade and the page's hour of drying are one: fair until then, nothing from then on. */
    @Test
    void callsDropsFairUntilTheHourInWhichTheyHaveDried() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("08:00", "16:00"), SHOWER.replace("dew_point: 8 °C, wind: 1", "dew_point: -4 °C, wind: 1"), """
                  - {time: "15:00", temperature: 12 °C, dew_point: -4 °C, wind: 1 m/s, gust: 2 m/s, cloud: 6, rain: 0 mm}
                shots:
                  - {name: Drop, subject: ramsons, role: closing, frame: {width: 30 mm}, light: [after-rain], start: "11:30", duration: 10 min}
                """);
        ZonedDateTime dry = brief.day().drops().dryBy();
        LightDay day = new SkyDays(brief.day().sky(), brief.day().drops()).day(null, brief.shot("Drop").fitted().place());
        Wishes wish = Wishes.of(brief.shot("Drop").intent().shot());
        List<LightAt> rows = brief.shot("Drop").fitted().place().light();
        assertEquals(Grade.FAIR, Grade.of(wish.quality(day.at(rows, dry.minusMinutes(2)))), dry.toString());
        assertEquals(0, wish.quality(day.at(rows, dry.plusMinutes(2))));
    }

    /** They are as wet as at first, and it is not sure that the rain comes. */
    @Test
    void doesNotCallDropsDryThatMayNotHaveFallen() throws IOException {
        Brief brief = planned(folder, WOOD, FULL_BAG, visit("12:00", "12:40"), RAIN_TILL_NOON.replaceAll("rain_chance: [89]0 %", "rain_chance: 50 %"),
                "shots: [{name: Drop, subject: ramsons, role: closing, frame: {width: 40 mm}, light: [after-rain]}]\n");
        Outlook outlook = brief.shot("Drop").outlook();
        assertEquals(Grade.FAIR, outlook.grade(), outlook.toString());
        assertEquals(0.5, Samples.the(LightAdvice.DropsIfRainFell.class, outlook.because()).chance(), 1e-9);
    }
}
