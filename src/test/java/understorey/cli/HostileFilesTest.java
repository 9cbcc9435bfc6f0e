package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import understorey.Pipe;

/** Files that are no plans, tables or templates, by accident or by intent: each gets one clear line within a second. */
class HostileFilesTest {

    /** A run that hangs is ended then; how long one takes is measured in time of the processor, which other work does not change. */
    private static final Duration HANGS = Duration.ofSeconds(60);
    private static final com.sun.management.OperatingSystemMXBean SYSTEM =
            ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class);
    private static final String TRIP = """
            trip: A test
            site: {site: Wood, latitude: 52.3, longitude: -3.5, time_zone: Europe/London}
            date: 2027-05-08
            gear: phone
            shots: [{name: One, subject: ramsons}]
            """;

    @TempDir
    private Path home;

    /** Puts something at a path. */
    private interface Maker {

        void at(Path file) throws Exception;
    }

    private static Map<String, Maker> files() {
        Map<String, Maker> files = new LinkedHashMap<>();
        files.put("is larger than 1 MB", file -> Files.write(file, new byte[10_000_000]));
        files.put("is not UTF-8 text", file -> Files.write(file, noise()));
        files.put("is not an ordinary file", Files::createDirectory);
        files.put("contains a control character", file -> Files.writeString(file, "trip: A\0test\n"));
        files.put("cannot be read", file -> Files.createSymbolicLink(file, file.getFileName()));
        return files;
    }

    /** Bytes as in a picture. */
    private static byte[] noise() {
        byte[] bytes = new byte[500_000];
        new Random(1).nextBytes(bytes);
        bytes[0] = (byte) 0xff;
        return bytes;
    }

    private static Map<String, Maker> plans() {
        Map<String, Maker> files = files();
        files.put("is not an ordinary file, so", Pipe::at);
        files.put("nested more than 20 levels deep", file -> Files.writeString(file, "trip: " + "[".repeat(100_000)));
        files.put("more than 50 000 values", file -> Files.writeString(file, "trip: [" + "1,".repeat(300_000) + "]"));
        return files;
    }

    @TestFactory
    Stream<DynamicTest> areToldInOneLineAsATrip() {
        return plans().entrySet().stream().map(one -> DynamicTest.dynamicTest(one.getKey(), () -> {
            Path plans = folder();
            one.getValue().at(plans.resolve("hostile.yaml"));
            tells("plans/hostile.yaml", one.getKey(), plans);
        }));
    }

    @TestFactory
    Stream<DynamicTest> areToldInOneLineAsASiteAndAsABag() {
        return Stream.of("sites", "gear").flatMap(kind -> plans().entrySet().stream().map(one -> DynamicTest.dynamicTest(kind + " " + one.getKey(), () -> {
            Path plans = folder();
            one.getValue().at(Files.createDirectory(plans.resolve(kind)).resolve("hostile.yaml"));
            tells("plans/" + kind + "/hostile.yaml", one.getKey(), plans);
        })));
    }

    @TestFactory
    Stream<DynamicTest> areToldInOneLineAsATable() {
        Map<String, Maker> tables = files();
        tables.put("is not an ordinary file, so", Pipe::at);
        tables.put("this quote is never closed", file -> Files.writeString(file, "time,wind\n\"" + "\n".repeat(900_000)));
        return tables.entrySet().stream().map(one -> DynamicTest.dynamicTest(one.getKey(), () -> {
            Path plans = folder();
            Files.writeString(plans.resolve("good.yaml"), TRIP + "forecast: hours.csv\n");
            one.getValue().at(plans.resolve("hours.csv"));
            tells("plans/", one.getKey().equals("cannot be read") ? "there is no file plans/hours.csv" : one.getKey(), plans);
        }));
    }

    @TestFactory
    Stream<DynamicTest> areToldInOneLineAsATemplate() {
        Map<String, Maker> templates = files();
        templates.put("is not an ordinary file: ", Pipe::at);
        return templates.entrySet().stream().map(one -> DynamicTest.dynamicTest(one.getKey(), () -> {
            Path plans = folder();
            Path own = Files.createDirectory(plans.resolveSibling("templates"));
            one.getValue().at(own.resolve("plan.ftl"));
            Run run = soon("build", plans, "--out", plans.resolveSibling("out"), "--templates", own);
            assertEquals(1, run.exit());
            String text = one.getKey().equals("cannot be read") ? "is not an ordinary file" : one.getKey();
            assertTrue(run.err().startsWith("templates/plan.ftl: error: this file " + text) || run.err().startsWith("templates/plan.ftl: error: this " + text), run.err());
            assertEquals(1, run.err().lines().filter(line -> line.contains(": error: ")).count(), run.err());
            assertFalse(run.showsItsInside());
        }));
    }

    /** Ten levels of ten aliases each would be ten thousand million values. */
    @Test
    void bombsOfAliasesAreToldAtTheirMarks() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i <= 10; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [").append(("*a" + (i - 1) + ", ").repeat(10)).append("x]\n");
        }
        Path plans = folder();
        Files.writeString(plans.resolve("bomb.yaml"), bomb);
        Run run = soon("check", plans);
        assertTrue(run.err().startsWith("plans/bomb.yaml:1:1: error: "), run.err());
        assertTrue(run.err().contains("plans/bomb.yaml:1:5: error: anchors (&) and aliases (*) are not supported"), run.err());
        assertFalse(run.showsItsInside());
    }

    @Test
    void withoutPermissionAreTold() throws IOException {
        Path plans = folder();
        Path trip = Files.writeString(plans.resolve("secret.yaml"), TRIP);
        Files.setPosixFilePermissions(trip, PosixFilePermissions.fromString("---------"));
        assumeFalse(Files.isReadable(trip), "this user may read every file");
        tells("plans/secret.yaml", "cannot be read", plans);
    }

    private Path folder() throws IOException {
        Path plans = Files.createDirectory(Files.createTempDirectory(home, "case").resolve("plans"));
        Files.writeString(plans.resolve("good.yaml"), TRIP);
        return plans;
    }

    /** A run that takes less than a second once its classes are loaded. */
    private static Run soon(Object... arguments) {
        return assertTimeoutPreemptively(HANGS, () -> {
            Run first = Run.of(arguments);
            long before = SYSTEM.getProcessCpuTime();
            assertEquals(first.exit(), Run.of(arguments).exit());
            double seconds = (SYSTEM.getProcessCpuTime() - before) / 1e9;
            assertTrue(seconds < 1, seconds + " s");
            return first;
        });
    }

    private static void tells(String file, String text, Path plans) {
        Run run = soon("check", plans);
        assertEquals(1, run.exit());
        String errors = run.err().lines().filter(line -> line.contains(": error: ")).reduce("", (a, b) -> a + b + "\n");
        assertEquals(1, errors.lines().count(), errors);
        assertTrue(errors.startsWith(file) && errors.contains(text), errors);
        assertTrue(errors.length() < 200, errors);
        assertFalse(run.showsItsInside());
    }
}
