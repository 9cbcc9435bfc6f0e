package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnderstoreyTest {

    @TempDir
    private Path home;

    @Test
    void givesItsVersion() {
        Run run = Run.of("--version");
        assertEquals(0, run.exit());
        assertEquals("", run.err());
        assertTrue(run.out().matches("understorey \\S.*\n"), run.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "build --help", "check --help", "days --help", "preview --help"})
    void explainsItself(String line) {
        Run run = Run.of((Object[]) line.split(" "));
        assertEquals(0, run.exit());
        assertEquals("", run.err());
        assertTrue(run.out().startsWith("Usage: understorey"), run.out());
        assertTrue(run.out().matches("(?s).*\nExamples?:\n  understorey [a-z]+.*"), run.out());
    }

    @Test
    void namesTheCommandsThatThereAreForAnUnknownOne() {
        assertEquals(new Run(2, "", "unknown command 'nope': use build, check, days, preview, new or schema\n"), Run.of("nope", "plans"));
    }

    @Test
    void speaksUtf8WhateverTheTerminalsDefaultIs() {
        assertTrue(Run.of("check", "Wälder").err().startsWith("Wälder: error: "));
    }

    @Test
    void namesItsExitStatusesAndCommandsInItsHelp() {
        String help = Run.of("--help").out();
        assertTrue(help.contains("Exit status: 0 done, 1 errors that stop the build, 2 wrong command line."), help);
        assertTrue(help.contains("build") && help.contains("check"), help);
    }

    @Test
    void suggestsTheCommandThatWasMeant() {
        Run run = Run.of("biuld", "plans");
        assertEquals(2, run.exit());
        assertEquals("", run.out());
        assertTrue(run.err().startsWith("unknown command 'biuld': use build, "), run.err());
        assertTrue(run.err().contains("Did you mean: understorey build"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"build --no-such-option", "check --no-such-option", "build --out", "build a b",
        "check --jsno", "build --audience everyone", "build --audience", "--no-such-option"})
    void answersWrongUseWithTheUsageOrASuggestion(String line) {
        Run run = Run.of((Object[]) line.split(" "));
        assertEquals(2, run.exit());
        assertEquals("", run.out());
        assertTrue(run.err().contains("Usage: understorey") || run.err().contains("Possible solutions: --"), run.err());
        assertFalse(run.showsItsInside(), run.err());
    }

    @Test
    void namesTheAudiencesThereAre() {
        String said = Run.of("build", "--audience", "everyone").err();
        assertTrue(said.contains("'everyone' is not an audience; use private, party or public"), said);
    }

    @Test
    void asksForACommandWhenThereIsNone() {
        Run run = Run.of();
        assertEquals(2, run.exit());
        assertTrue(run.err().startsWith("Give a command: build, check, days, preview, new or schema.") && run.err().contains("Usage: understorey"), run.err());
    }

    @Test
    void readsItsArgumentsFromAFileToo() throws IOException {
        Path arguments = home.resolve("arguments");
        Files.writeString(arguments, "build plans --out \"" + home.resolve("site") + "\"\n");
        Run run = Run.of("@" + arguments);
        assertEquals(0, run.exit(), run.err());
        assertTrue(Files.exists(home.resolve("site/index.html")));
    }
}
