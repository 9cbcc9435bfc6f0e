package understorey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The jar itself, in a process of its own and from a folder that is not the project's. */
class JarIT {

    private static final Path JAR = Path.of(System.getProperty("understorey.jar"));
    private static final String OTHER_HOME = System.getenv("JAVA_OTHER_HOME");

    @TempDir
    private Path home;
    private Path plans;

    /** The Java that runs the build, and another if {@code JAVA_OTHER_HOME} names one. */
    enum Java {
        OWN, OTHER;

        private String command() {
            String folder = this == OWN ? System.getProperty("java.home") : OTHER_HOME;
            Assumptions.assumeTrue(folder != null, "no second Java");
            return Path.of(folder, "bin", "java").toString();
        }
    }

    @BeforeAll
    static void saysWhatIsSkipped() {
        if (OTHER_HOME == null) {
            System.err.println("The jar is tried on this Java only: JAVA_OTHER_HOME names no second one.");
        }
    }

    @BeforeEach
    void copyThePlans() throws IOException {
        plans = Tree.copy(Path.of("plans"), home.resolve("work").resolve("plans"));
    }

    @ParameterizedTest
    @EnumSource(Java.class)
    void buildsTheDemoAsCommittedAndTouchesNothingElse(Java java) throws Exception {
        SortedMap<String, String> before = Tree.withTimes(home);
        Ended ended = run(java, "build", "plans", "--out", "pages");
        assertEquals(new Ended(0, Path.of("pages", "index.html") + "\n", ended.err()), ended);
        assertTrue(ended.err().matches("4 trips: \\d+ files written, 0 unchanged, 0 deleted\n"), ended.err());
        assertEquals("", Tree.firstDifference(Tree.of(Path.of("site-out")), Tree.of(plans.resolveSibling("pages"))));
        SortedMap<String, String> after = Tree.withTimes(home);
        after.keySet().removeIf(name -> name.startsWith("work/pages"));
        assertEquals(before, after);
    }

    @ParameterizedTest
    @EnumSource(Java.class)
    void saysByItsExitStatusHowItWent(Java java) throws Exception {
        Ended checked = run(java, "check");
        assertEquals(0, checked.exit(), checked.err());
        assertTrue(checked.out().isEmpty() && checked.err().endsWith("4 trips: 0 errors, 0 warnings, 12 notes\n"), checked.err());
        assertEquals(2, run(java, "check", "--jsno").exit());
        Files.writeString(plans.resolve("half.yaml"), "trip: Half a trip\nsite: nowhere\n");
        Ended faulty = run(java, "build");
        assertEquals(1, faulty.exit(), faulty.err());
        assertTrue(faulty.err().contains("plans/half.yaml:2:7: error: "), faulty.err());
        assertFalse(faulty.err().contains("\u001b"), "no colour in piped output: " + faulty.err());
        assertFalse(faulty.err().contains("\tat "), faulty.err());
        assertTrue(Files.exists(plans.resolveSibling("site-out").resolve("index.html")));
    }

    @ParameterizedTest
    @EnumSource(Java.class)
    void knowsItsVersionAndSpeaksUtf8WhateverTheTerminal(Java java) throws Exception {
        Ended version = run(java, "--version");
        assertTrue(version.out().matches("understorey \\d+\\.\\d+\\.\\d+\\S*\n"), version.out());
        assertEquals("", version.err());
        Files.writeString(plans.resolve("cloudy.yaml"), "sky: bewölkt\n");
        String found = run(java, "check").err();
        assertTrue(found.contains("plans/cloudy.yaml:1:6: error: \"bewölkt\" is not a value of 'sky'\n"), found);
    }

    @Test
    void carriesWhatItNeedsAndNoMore() throws IOException {
        try (JarFile jar = new JarFile(JAR.toFile())) {
            List<String> names = jar.stream().map(entry -> entry.getName()).toList();
            for (String unwanted : List.of("com/fasterxml/jackson/databind/", "org/junit/", "com/microsoft/",
                    "com/tngtech/", "META-INF/maven/")) {
                assertEquals(List.of(), names.stream().filter(name -> name.startsWith(unwanted)).toList());
            }
            assertEquals(List.of(), names.stream().filter(name -> name.endsWith("module-info.class")
                    || name.endsWith(".SF") || name.endsWith(".RSA")).toList());
            assertEquals(names.stream().distinct().count(), names.size(), "no entry stands twice");
            try (Stream<Path> templates = Files.list(Path.of("templates"))) {
                templates.forEach(file -> assertNotNull(jar.getEntry("understorey/templates/" + file.getFileName())));
            }
            assertNotNull(jar.getEntry("understorey/reading/subjects.csv"));
        }
    }

    private Ended run(Java java, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(java.command(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC",
                "-jar", JAR.toString()));
        command.addAll(List.of(arguments));
        ProcessBuilder process = new ProcessBuilder(command).directory(plans.getParent().toFile());
        process.environment().put("LC_ALL", "C");
        return Ended.of(process);
    }
}
