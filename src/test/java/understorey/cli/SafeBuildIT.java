package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import understorey.Tree;

/** Whole processes that build at once, are killed, run out of room, or run in a locale of bare ASCII. */
class SafeBuildIT {

    private static final Path JAR = Path.of(System.getProperty("understorey.jar")).toAbsolutePath();
    private static final String JAVA = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    /** {@code -Dpairs=50} for a long look. */
    private static final int PAIRS = Integer.getInteger("pairs", 4);
    private static final String TRIP = """
            trip: A quick look at %1$s
            site: {site: %1$s, latitude: 52.337, longitude: -3.548, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots:
              - {name: The floor, subject: ramsons}
            """;

    @TempDir
    private Path home;
    private Path plans;
    private Path site;

    @BeforeEach
    void writePlans() throws IOException {
        plans = Files.createDirectory(home.resolve("plans"));
        site = home.resolve("site");
        trip(plans, "wood", "Testing Wood");
        trip(plans, "shared", "Testing Wood");
    }

    @Test
    void endRightWhenTwoBuildIntoOneFolderAtOnce() throws Exception {
        Path others = Files.createDirectory(home.resolve("others"));
        trip(others, "glade", "Quiet Glade");
        trip(others, "shared", "Quiet Glade");
        assertEquals(0, start("build", "plans", "--out", "one").waitFor());
        assertEquals(0, start("build", "others", "--out", "two").waitFor());
        SortedMap<String, String> one = Tree.of(home.resolve("one"));
        SortedMap<String, String> two = Tree.of(home.resolve("two"));
        int ones = 0;
        for (int pair = 0; pair < PAIRS; pair++) {
            Process first = start("build", pair % 2 == 0 ? "plans" : "others", "--out", "site");
            Process second = start("build", pair % 2 == 0 ? "others" : "plans", "--out", "site");
            assertTrue(ends(first) && ends(second), said());
            assertEquals(List.of(0, 0), List.of(first.exitValue(), second.exitValue()), "pair " + pair + ": " + said());
            SortedMap<String, String> built = Tree.of(site);
            boolean isOne = built.equals(one);
            assertEquals("", isOne ? "" : Tree.firstDifference(two, built), "pair " + pair);
            assertEquals(isOne ? one.keySet() : two.keySet(), built.keySet());
            ones += isOne ? 1 : 0;
        }
        System.err.println(PAIRS + " pairs of builds at once ended right, " + ones + " with the first folder of plans last");
    }

    @Test
    void leaveNothingBehindWhenKilled() throws Exception {
        assertEquals(0, start("build", "plans", "--out", "whole").waitFor());
        int cutOff = 0;
        for (int turn = 0; turn < 10 && cutOff < 2; turn++) {
            Process build = start("build", "plans", "--out", "site");
            while (build.isAlive() && !hasNewFiles()) {
                Thread.onSpinWait();
            }
            build.destroyForcibly().waitFor();
            cutOff += hasNewFiles() ? 1 : 0;
            assertEquals(0, start("build", "plans", "--out", "site").waitFor(), said());
            assertEquals("", Tree.firstDifference(Tree.of(home.resolve("whole")), Tree.of(site)));
            trip(plans, "shared", "Testing Wood " + turn);
            assertEquals(0, start("build", "plans", "--out", "whole").waitFor());
        }
        assertTrue(cutOff > 0, "no build was killed in the middle");
    }

    @Test
    void keepTheOldPagesWhenTheDiskIsFull() throws Exception {
        assertEquals(0, start("build", "plans", "--out", "site").waitFor());
        SortedMap<String, String> before = Tree.withTimes(site);
        trip(plans, "wood", "Other Wood");
        Process full = shell("ulimit -f 16 && exec '" + JAVA + "' -XX:-UsePerfData -jar '" + JAR + "' build plans --out site");
        assertTrue(ends(full));
        assertEquals(1, full.exitValue(), said());
        assertTrue(said().matches("(?s).*understorey: 'site' cannot be used: [^\\n]+\\n"), said());
        assertEquals(before, Tree.withTimes(site));
    }

    @Test
    void buildAPlaceOfAnyNameInALocaleOfBareAscii() throws Exception {
        trip(plans, "lake", "Mörkö");
        trip(plans, "hill", "森の丘");
        assertEquals(0, start("build", "plans", "--out", "site").waitFor(), said());
        assertTrue(Files.readString(site.resolve("sites/morko.html")).contains("Mörkö"));
        try (Stream<Path> sites = Files.list(site.resolve("sites"))) {
            assertTrue(sites.allMatch(file -> file.getFileName().toString().matches("[ -~]+")));
        }
    }

    @Test
    void tellAWayOutForAFileWhoseNameTheLocaleLacks() throws Exception {
        Process copied = shell("cd plans && cp wood.yaml $(printf 'm\\303\\266rk\\303\\266.yaml') && echo 'forecast: hörse.csv' >> shared.yaml");
        assumeTrue(ends(copied) && copied.exitValue() == 0, "this disk takes ASCII names only");
        Process build = start("build", "plans", "--out", "site");
        assertTrue(ends(build));
        assertEquals(1, build.exitValue());
        assertTrue(said().contains("use only letters from a to z, digits and hyphens in this file name\n"
                + "    fix: rename it\n"), said());
        assertTrue(said().contains("plans/shared.yaml:7:11: error: "), said());
        assertTrue(said().contains("\n1 trip: "), said());
        assertFalse(said().contains("Exception"), said());
        Process named = shell("exec '" + JAVA + "' -jar '" + JAR + "' build plans --out $(printf 'm\\303\\266rk\\303\\266')");
        assertTrue(ends(named));
        assertEquals(2, named.exitValue());
        assertTrue(said().contains("set LC_ALL=C.UTF-8"), said());
        assertFalse(said().contains("Exception"), said());
    }

    private boolean hasNewFiles() throws IOException {
        if (!Files.isDirectory(site)) {
            return false;
        }
        try (Stream<Path> files = Files.list(site)) {
            return files.anyMatch(file -> file.getFileName().toString().startsWith(".understorey-new"));
        }
    }

    private static void trip(Path folder, String name, String place) throws IOException {
        Files.writeString(folder.resolve(name + ".yaml"), TRIP.formatted(place));
    }

    private static boolean ends(Process process) throws InterruptedException {
        boolean ended = process.waitFor(60, TimeUnit.SECONDS);
        process.destroyForcibly();
        return ended;
    }

    private Process start(String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(JAVA, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        return start(command);
    }

    private Process shell(String line) throws IOException {
        return start(List.of("bash", "-c", line));
    }

    private Process start(List<String> command) throws IOException {
        ProcessBuilder process = new ProcessBuilder(command).directory(home.toFile()).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.appendTo(home.resolve("said").toFile()));
        process.environment().put("LC_ALL", "C");
        process.environment().remove("JAVA_TOOL_OPTIONS");
        return process.start();
    }

    private String said() throws IOException {
        return Files.readString(home.resolve("said"));
    }
}
