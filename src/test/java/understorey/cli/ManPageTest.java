package understorey.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

class ManPageTest {

    @Command(name = "leaf", version = "leaf 1", description = "Turns over.", footer = {"'quoted'", ".dotted"})
    private static final class Leaf {

        @Option(names = "--over-and-over", paramLabel = "TIMES", defaultValue = "2", description = "how often, \\ (default: ${DEFAULT-VALUE})")
        private int times;
        @Option(names = "--secret", hidden = true)
        private boolean secret;
    }

    private static CommandLine program() {
        return Understorey.program(new Terminal(System.out, System.err, false), System.out, System.err);
    }

    @Test
    void keepsBackslashesHyphensAndWhatBeginsAMacro() {
        assertEquals("""
                .TH "LEAF" "1" "" "leaf 1" ""
                .SH "NAME"
                leaf \\- Turns over.
                .SH "SYNOPSIS"
                .nf
                leaf [\\-\\-over\\-and\\-over=TIMES]
                .fi
                .SH "OPTIONS"
                .TP
                \\fB\\-\\-over\\-and\\-over=TIMES\\fR
                how often, \\e (default: 2)
                .SH "COMMANDS"
                .SH "NOTES"
                .nf
                \\&'quoted'
                \\&.dotted
                .fi
                """, ManPage.of(new CommandLine(new Leaf())));
    }

    @Test
    void namesEveryCommandAndEveryOption() {
        String page = ManPage.of(program());
        List<String> wanted = new ArrayList<>();
        program().getSubcommands().forEach((name, command) -> {
            wanted.add(".SS \"" + name + "\"");
            command.getCommandSpec().options().forEach(option -> wanted.add(option.longestName().replace("-", "\\-")));
        });
        assertTrue(wanted.size() > 20, wanted.toString());
        assertEquals(List.of(), wanted.stream().filter(name -> !page.contains(name)).toList());
    }
}
