package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Tree;
import understorey.pages.tables.Tables;

class DaysCommandTest {

    @TempDir
    private Path home;
    private Path trip;

    @BeforeEach
    void copyTheDemo() throws IOException {
        trip = Tree.copy(Path.of("plans"), home.resolve("plans")).resolve("a-weekend-for-the-anemones.yaml");
    }

    private void change(String file, String from, String to) throws IOException {
        Path path = home.resolve("plans").resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(from), from);
        Files.writeString(path, text.replace(from, to));
    }

    @Test
    void ranksEveryDayOfATripTheBestFirst() {
        Run run = Run.of("days", trip);
        assertEquals(0, run.exit(), run.err());
        assertEquals("", run.err());
        List<String> ranks = run.out().lines().filter(line -> line.matches(" +\\d+  \\w{3} [ \\d]\\d \\w{3} \\d{4} .*")).toList();
        assertEquals(38, ranks.size());
        // The chance of full flower is the same on the 18th; the light of the three pictures is a little better.
        assertTrue(ranks.get(0).startsWith("   1  Fri 23 Apr 2027     86 %"), ranks.get(0));
        assertTrue(ranks.get(37).contains("not one of your weekdays") || ranks.get(37).contains("avoid"), ranks.get(37));
        assertTrue(run.out().startsWith("Wood anemone: full flower 14 to 27 April 2027; "), run.out());
        assertFalse(run.out().contains("\u00a0"), "a terminal's table is copied and searched");
    }

    @Test
    void ranksNoDayThatTheCalendarOfThePlaceLeftOut() throws IOException {
        Path samoa = home.resolve("plans/shore.yaml");
        Files.writeString(samoa, """
                trip: Around the day that was not
                site: {site: Shore wood, latitude: -13.8, longitude: -171.8, time_zone: Pacific/Apia}
                date: 2011-12-29
                gear: phone
                shots: [{name: The floor, subject: ramsons}]
                """);
        String days = Run.of("days", samoa, "--csv").out();
        assertTrue(days.contains("2011-12-29") && days.contains("2011-12-31"), days);
        assertFalse(days.contains("2011-12-30"), days);
        Run none = Run.of("days", samoa, "--from", "2011-12-30", "--to", "2011-12-30");
        assertEquals(2, none.exit());
        assertEquals("there is no 2011-12-30 in Pacific/Apia\n", none.err());
    }

    @Test
    void alignsItsColumns() {
        List<String> lines = Run.of("days", trip).out().lines().toList();
        String header = lines.stream().filter(line -> line.startsWith("rank")).findFirst().orElseThrow();
        for (String line : lines) {
            if (line.matches(" +\\d+  \\w{3} [ \\d]\\d \\w{3} \\d{4} .*")) {
                assertEquals('%', line.charAt(header.indexOf("flowers") + "flowers".length() - 1), line);
                assertEquals('%', line.charAt(header.indexOf("light") + "light".length() - 1), line);
                assertEquals(' ', line.charAt(header.indexOf("reason") - 1), line);
                assertFalse(line.charAt(header.indexOf("reason")) == ' ', line);
            }
        }
    }

    @Test
    void givesTheSameDaysAsJsonAndAsATable() throws IOException {
        JsonNode json = new ObjectMapper().readTree(Run.of("days", trip, "--json").out());
        List<String> dates = new ArrayList<>();
        json.at("/days/date").forEach(date -> dates.add(date.textValue()));
        List<String> rows = Run.of("days", trip, "--csv").out().lines().skip(1).map(row -> row.split(",")[1]).toList();
        assertEquals(38, dates.size());
        assertEquals(dates, rows);
        assertEquals(dates.get(0), json.get("best").textValue());
        assertEquals("mean", json.get("windows").get(0).get("method").textValue());
        assertEquals(3, json.at("/days/shots/shot/0").size());
    }

    @Test
    void comparesTheOneDayOfATripWithTheFortnightsAroundIt() {
        Run run = Run.of("days", trip.resolveSibling("paper-stars-on-red-sand.yaml"), "--csv");
        assertEquals(30, run.out().lines().count());
    }

    @Test
    void takesDaysOfTheCommandLine() {
        Run run = Run.of("days", trip, "--from", "2027-04-20", "--to", "2027-04-22", "--csv");
        assertEquals(4, run.out().lines().count());
        assertTrue(run.err().startsWith("warning: No day matches your wishes (past, avoided"), run.err());
        assertEquals(0, run.exit());
    }

    @Test
    void refusesAWrongCommandLine() {
        assertEquals(2, Run.of("days").exit());
        assertEquals(2, Run.of("days", home.resolve("none.yaml")).exit());
        assertEquals(2, Run.of("days", trip, "--from", "2027-04-20").exit());
        assertEquals(2, Run.of("days", trip, "--from", "20 April", "--to", "2027-04-22").exit());
        assertEquals(2, Run.of("days", trip, "--from", "2027-04-22", "--to", "2027-04-20").exit());
        assertEquals(2, Run.of("days", trip, "--from", "+999999999-12-01", "--to", "+999999999-12-31").exit());
        assertEquals(2, Run.of("days", "/").exit());
        assertEquals(2, Run.of("days", trip, "--json", "--csv").exit());
        assertEquals("", Run.of("days", trip, "--json", "--csv").out());
    }

    @Test
    void ranksNothingForATripWithErrors() throws IOException {
        change("a-weekend-for-the-anemones.yaml", "gear: light-bag", "gear: no-bag");
        Run run = Run.of("days", trip);
        assertEquals(1, run.exit());
        assertEquals("", run.out());
        assertTrue(run.err().contains("no-bag") && run.err().contains("not ranked: "), run.err());
    }

    @Test
    void offersWhatWasSeenAsLinesForTheNextYearsRecords() throws IOException {
        change("sites/hasselgry-skov.yaml", "    temperatures: hasselgry-daily-means.csv",
                "    seen: [{date: 2027-04-04, stage: first flowers}, {date: 2027-04-19, stage: full flower}, "
                + "{date: 2027-04-21, stage: full flower}, {date: 2027-05-11, stage: over}]");
        String out = Run.of("days", trip).out();
        assertTrue(out.endsWith("add these lines to the records of wood-anemone at Hasselgry Skov:\n"
                + "      - {first: 2027-04-04, full: 2027-04-19, over: 2027-05-11}\n"), out);
        change("sites/hasselgry-skov.yaml", "over: 2026-05-12}\n",
                "over: 2026-05-12}\n      - {first: 2027-04-04, full: 2027-04-19, over: 2027-05-11}\n");
        assertFalse(Run.of("days", trip).out().contains("add these lines to the records"));
    }

    @Test
    void tellsOfSightingsThatContradictEachOtherAndStillRanks() throws IOException {
        change("sites/hasselgry-skov.yaml", "    temperatures: hasselgry-daily-means.csv",
                "    seen: [{date: 2027-04-04, stage: over}, {date: 2027-04-19, stage: in bud}, {date: 2027-04-10, stage: full flower}]");
        Run run = Run.of("days", trip);
        assertEquals(0, run.exit());
        assertTrue(run.err().startsWith("warning: Wood anemone: over on 4 April, but only full flower on 10 April"), run.err());
        assertTrue(run.out().contains("   1  "));
    }

    @Test
    void plansTheBestDayThatItRanks() throws IOException {
        String best = new ObjectMapper().readTree(Run.of("days", trip, "--json").out()).get("best").textValue();
        Path site = home.resolve("site");
        assertEquals(0, Run.of("build", trip.getParent(), "--out", site).exit());
        JsonNode plan = new ObjectMapper().readTree(site.resolve("a-weekend-for-the-anemones/plan.json").toFile());
        assertEquals(best, plan.get("trip").get("date").textValue());
        assertEquals(LocalDate.parse(best).minusDays(7).getDayOfMonth(), 16);
        assertEquals(38, plan.at("/days/date").size());
    }

    @Test
    void countsTheRainAfterMidnightForTheNightBefore() throws IOException {
        Path night = home.resolve("plans/night.yaml");
        Files.writeString(night, """
                trip: A wet night
                site: {site: Night wood, latitude: 52.3, longitude: -3.5, time_zone: Europe/London}
                date: 2027-05-08
                arrive: "22:00"
                leave: "03:00"
                gear: phone
                forecast:
                  - {time: "22:00", rain: 0 mm}
                  - {time: "00:00", rain: 3 mm}
                  - {time: "01:00", rain: 3 mm}
                  - {time: "02:00", rain: 3 mm}
                shots: [{name: The floor, subject: ramsons}]
                """);
        JsonNode days = Tables.rows(new ObjectMapper().readTree(Run.of("days", night, "--json").out()).get("days"));
        int wet = 0;
        for (JsonNode day : days) {
            boolean rain = day.get("reasons").toString().contains("Rain forecast for 60 % of the visit.");
            assertEquals(day.get("date").textValue().equals("2027-05-08"), rain, day.toString());
            wet += rain ? 1 : 0;
        }
        assertEquals(1, wet);
    }

    /** Rank, chance and date of each day, and the likeliest day, in the table, the two exports, the plan and its page. */
    @Test
    void ranksTheDaysAlikeWhereverItWritesThem() throws IOException {
        Path site = home.resolve("site");
        assertEquals(0, Run.of("build", trip.getParent(), "--out", site).exit());
        JsonNode plan = new ObjectMapper().readTree(site.resolve("a-weekend-for-the-anemones/plan.json").toFile());
        JsonNode json = new ObjectMapper().readTree(Run.of("days", trip, "--json").out());
        JsonNode days = Tables.rows(json.get("days"));
        List<String> table = Run.of("days", trip).out().lines().filter(line -> line.matches(" +\\d+  \\w{3} [ \\d]\\d \\w{3} \\d{4} .*"))
                .toList();
        List<String> csv = Run.of("days", trip, "--csv").out().lines().skip(1).toList();
        for (int i = 0; i < table.size(); i++) {
            JsonNode day = days.get(i);
            String date = day.get("date").textValue();
            assertEquals(i + 1, day.get("rank").intValue());
            assertTrue(csv.get(i).startsWith(i + 1 + "," + date + "," + day.get("wanted") + ","
                    + day.get("flower_chance").decimalValue().toPlainString()), csv.get(i));
            LocalDate on = LocalDate.parse(date);
            double chance = day.get("flower_chance").doubleValue();
            String line = table.get(i);
            assertTrue(line.contains(" " + on.getDayOfMonth() + " ") && line.strip().startsWith(i + 1 + " "), line);
            assertTrue(line.contains(chance < 0.01 ? " <1 %" : " " + Math.round(chance * 100) + " %"), line + " for " + chance);
            boolean same = false;
            for (JsonNode planned : Tables.rows(plan.get("days"))) {
                same |= planned.equals(day);
            }
            assertTrue(same, "in plan.json: " + day);
        }
        String page = Files.readString(site.resolve("a-weekend-for-the-anemones/index.html"));
        LocalDate likeliest = LocalDate.parse(json.get("windows").get(0).get("best").textValue());
        assertEquals(likeliest.toString(), plan.get("season").get("best").textValue());
        assertTrue(page.replace('\u00a0', ' ').contains("; highest chance on " + likeliest.getDayOfMonth() + " April"), likeliest.toString());
        int at = page.indexOf("Best days first");
        for (int i = 0; i < 5; i++) {
            LocalDate on = LocalDate.parse(days.get(i).get("date").textValue());
            int found = page.replace('\u00a0', ' ').indexOf(" " + on.getDayOfMonth() + " April", at);
            assertTrue(at >= 0 && found > at, "in order on the page: " + on);
            at = found;
        }
    }

    @Test
    void keepsReportsAndNamesOffThePublicPagesOfASensitiveSite() throws IOException {
        change("sites/hasselgry-skov.yaml", "reports: https://example.org/hasselgry",
                "sensitive: yes\npublic_name: A beech wood\nreports: https://example.org/hasselgry");
        for (String file : List.of("a-weekend-for-the-anemones.yaml", "anemones-under-the-beeches.yaml")) {
            change(file, "audience: public", "audience: public\n  reviewed: [ride, Old stump]");
        }
        Path site = home.resolve("site");
        assertEquals(0, Run.of("build", trip.getParent(), "--out", site).exit());
        for (String file : List.of("index.html", "plan.md", "plan.json")) {
            String page = Files.readString(site.resolve("a-weekend-for-the-anemones").resolve(file));
            assertFalse(page.contains("example.org/hasselgry") || page.contains("Hasselgry") || page.contains("hasselgry"), file);
            assertTrue(file.equals("plan.json") || page.contains("14 to 27 April"), file);
        }
    }
}
