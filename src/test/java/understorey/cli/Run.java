package understorey.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** One command line and what came of it. */
record Run(int exit, String out, String err) {

    static Run of(Object... arguments) {
        String[] words = new String[arguments.length];
        for (int i = 0; i < words.length; i++) {
            words[i] = arguments[i].toString();
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream results = new PrintStream(out, true, StandardCharsets.UTF_8);
        PrintStream messages = new PrintStream(err, true, StandardCharsets.UTF_8);
        int exit = Understorey.run(words, results, messages, new Terminal(results, messages, false));
        return new Run(exit, text(out), text(err));
    }

    /** True where a line of either stream looks like a stack trace, or names a class of ours or of a library. */
    boolean showsItsInside() {
        return (out + err).lines().anyMatch(line -> line.matches("\\s+at [\\w.$/]+\\(.*")
                || line.matches(".*\\b(java|understorey|freemarker|picocli|com\\.\\w+)(\\.\\w+)+(Exception|Error).*"));
    }

    private static String text(ByteArrayOutputStream bytes) {
        return bytes.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
    }
}
