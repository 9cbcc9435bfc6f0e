package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Samples;
import understorey.advice.CautionAdvice;
import understorey.advice.TripAdvice;
import understorey.light.Outlook;
import understorey.plan.ForecastHour;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.scene.Fact.Word;
import understorey.season.RankedDay;
import understorey.share.Sharing;
import understorey.sky.Interval;

/** Plans of visits past midnight, from what an author writes. */
class NightBriefTest {

    private static final String SITE = """
            trip: Invented
            site: {site: Invented wood, latitude: 52.3, longitude: -3.5, time_zone: Europe/London, sensitive: yes,
              canopy: {trees: deciduous, stage: bud-burst, height: 18 m}, spots: [{name: Glade, clearing: {radius: 25 m}}]}
            gear: {gear: Fast bag, bodies: [{name: Body, sensor: full-frame, pixels: 24 Mpx, mount: A, base_iso: 100, top_iso: 12800}],
              lenses: [{name: Wide prime, mount: A, focal: 24 mm, aperture: f/1.4, closest: 0.25 m}],
              supports: [{name: Legs, kind: tripod, lowest: 10 cm, highest: 150 cm}], remote_release: yes}
            """;
    private static final String STILL = """
            forecast:
              - {time: "21:00", temperature: 12 °C, wind: 0 m/s, gust: 0 m/s, cloud: 0, rain: 0 mm}
              - {time: "04:00", temperature: 7 °C, wind: 0 m/s, gust: 0 m/s, cloud: 0, rain: 0 mm}
            """;
    private static final LocalDate FULL_MOON = LocalDate.of(2027, 5, 20);

    @TempDir
    private Path folder;

    private Brief brief(String plan) throws IOException {
        Files.writeString(folder.resolve("trip.yaml"), plan);
        Plans plans = PlansReader.read(folder);
        assertEquals(List.of(), plans.findings());
        return Planner.brief(Sharing.forAudience(plans.trips().get(0)));
    }

    private static ZonedDateTime at(Brief brief, LocalDate date, String time) {
        return date.atTime(LocalTime.parse(time)).atZone(brief.trip().site().zone());
    }

    /** In 2027 the sun is up all night at 69° N on 20 June, and lowest soon after 00:45 by summer time at 18.9° E. */
    @Test
    void takesPicturesOfTheMidnightSunOnBothSidesOfMidnight() throws IOException {
        Brief brief = brief("""
                trip: Invented
                site: {site: Slope, latitude: 69.3, longitude: 18.9, time_zone: Europe/Oslo, canopy: none}
                gear: phone
                date: 2027-06-20
                arrive: "22:00"
                leave: "03:00"
                sky: clear
                shots:
                  - {name: Evening, subject: ramsons, start: "22:30"}
                  - {name: Midnight, subject: ramsons, light: [low-sun, backlight], facing: N, start: "00:40"}
                  - {name: Free, subject: ramsons, light: [low-sun]}
                """);
        LocalDate next = LocalDate.of(2027, 6, 21);
        assertEquals(List.of(), brief.timed().stream().filter(shot -> shot.time() == null).toList());
        assertEquals(at(brief, next, "00:40"), brief.shot("Midnight").time().from());
        assertEquals(Outlook.Grade.GOOD, brief.shot("Midnight").outlook().grade());
        assertEquals(2.8, brief.shot("Midnight").light().sun().altitudeDeg(), 0.3);
        assertTrue(Samples.kinds(brief.findings()).contains(TripAdvice.SunDoesNotSet.class));
        assertTrue(Samples.kinds(brief.cautions()).contains(CautionAdvice.AccessAtNight.class));
        assertFalse(Samples.kinds(brief.cautions()).contains(CautionAdvice.DarkAllTheTime.class));
    }

    /** In still air, under the full moon, with a fast lens: the light model has EV −6 or so on the ground of a glade. */
    @Test
    void takesACarpetByMoonlight() throws IOException {
        Brief brief = brief(SITE + STILL + """
                date: 2027-05-20
                arrive: "22:30"
                leave: "03:00"
                shots: [{name: Carpet, subject: ramsons, spot: Glade}]
                """);
        TimedShot carpet = brief.shot("Carpet");
        assertNotNull(carpet.time(), () -> brief.findings().toString());
        assertTrue(carpet.light().moonLux() > 0);
        assertTrue(carpet.settings().ev100() > -9 && carpet.settings().ev100() < -3, "EV " + carpet.settings().ev100());
        assertTrue(Samples.kinds(brief.cautions()).contains(CautionAdvice.DarkAllTheTime.class));
    }

    @Test
    void showsMoonriseAfterMidnight() throws IOException {
        Brief brief = brief(SITE + STILL + """
                date: 2027-05-24
                arrive: "22:30"
                leave: "03:30"
                shots: [{name: Carpet, subject: ramsons, spot: Glade}]
                """);
        assertEquals(LocalDate.of(2027, 5, 25), brief.day().moon().rise().toLocalDate());
        assertTrue(brief.events().stream().anyMatch(event -> event.what() == Word.MOONRISE && event.time().equals(brief.day().moon().rise())),
                () -> brief.day().moon() + " " + brief.events());
    }

    @Test
    void takesRowsOfAForecastBeforeNoonForTheNextDay() throws IOException {
        Brief brief = brief(SITE + STILL + """
                date: 2027-05-20
                arrive: "22:30"
                leave: "03:00"
                shots: [{name: Carpet, subject: ramsons}]
                """);
        assertEquals(List.of(FULL_MOON, FULL_MOON.plusDays(1)), brief.trip().forecast().stream().map(ForecastHour::date).toList());
        assertEquals(12 - 5 * 3 / 7.0, brief.day().sky().weather(at(brief, FULL_MOON.plusDays(1), "00:00")).temperatureC(), 1e-6);
        assertEquals(8.0, brief.weather().get(brief.weather().size() - 1).weather().temperatureC(), 0.8);
    }

    @Test
    void ranksNightsWithAFixedTimeAfterMidnight() throws IOException {
        Brief brief = brief(SITE + """
                dates: {from: 2027-05-01, to: 2027-05-10}
                arrive: "21:00"
                leave: "05:30"
                shots:
                  - {name: Dawn, subject: ramsons, light: [twilight], start: "04:45"}
                  - {name: Dusk, subject: ramsons, light: [twilight]}
                """);
        for (RankedDay day : brief.season().ranking().days()) {
            assertEquals(new Interval(at(brief, day.date(), "21:00"), at(brief, day.date().plusDays(1), "05:30")), day.hours());
            RankedDay.Promise dawn = day.shots().stream().filter(promise -> promise.shot().name().equals("Dawn")).findFirst().orElseThrow();
            assertEquals(day.date().plusDays(1), dawn.at().toLocalDate());
        }
        assertEquals(at(brief, brief.date().plusDays(1), "04:45"), brief.shot("Dawn").time().from());
    }

    @Test
    void saysThatTheClocksChangeInTheNight() throws IOException {
        Brief brief = brief(SITE + """
                date: 2027-10-30
                arrive: "22:00"
                leave: "03:00"
                shots: [{name: Carpet, subject: ramsons, start: "02:30"}]
                """);
        assertTrue(Samples.kinds(brief.findings()).contains(TripAdvice.ClocksGoBack.class));
        assertEquals(at(brief, LocalDate.of(2027, 10, 31), "02:30"), brief.shot("Carpet").time().from());
    }

    @Test
    void givesAPublicNightOnAGridOfTimes() throws IOException {
        for (String position : List.of("coarse", "hidden")) {
            Brief brief = brief(SITE + """
                    date: 2027-05-20
                    arrive: "22:33"
                    leave: "03:02"
                    sky: clear
                    share: {audience: public, position: %s}
                    shots: [{name: Carpet, subject: ramsons, start: "01:31"}]
                    """.formatted(position));
            int step = position.equals("hidden") ? 15 : 5;
            for (ZonedDateTime time : List.of(brief.order().arrive(), brief.order().leave(), brief.order().back(), brief.day().sun().sunrise(),
                    brief.shot("Carpet").time().from())) {
                assertEquals(0, time.toLocalTime().toSecondOfDay() % (60 * step), time.toString());
            }
            assertEquals(brief.date().plusDays(1), brief.order().leave().toLocalDate());
        }
    }

    @Test
    void keepsAPublicVisitOfMinutesOnItsDay() throws IOException {
        Brief brief = brief(SITE + """
                date: 2027-05-20
                arrive: "10:01"
                leave: "10:02"
                sky: clear
                share: {audience: public, position: coarse}
                shots: [{name: Carpet, subject: ramsons}]
                """);
        assertEquals(new Interval(at(brief, FULL_MOON, "10:00"), at(brief, FULL_MOON, "10:05")), brief.day().hours().visit());
    }

    /** New moon on 6 May 2027, full moon on 20 May (from memory). */
    @Test
    void ranksAFullMoonOverANewOneForPicturesByNight() throws IOException {
        Brief brief = brief(SITE + """
                dates: [2027-05-06, 2027-05-20]
                arrive: "23:30"
                leave: "03:00"
                sky: clear
                shots: [{name: Carpet, subject: ramsons, spot: Glade}]
                """);
        RankedDay full = brief.season().ranking().day(FULL_MOON);
        RankedDay dark = brief.season().ranking().day(LocalDate.of(2027, 5, 6));
        assertTrue(full.light() > dark.light() + 0.2, full.light() + " against " + dark.light());
        assertEquals(FULL_MOON, brief.date());
    }
}
