package understorey.cli;

import java.io.PrintStream;
import java.util.Collection;
import java.util.Locale;
import picocli.CommandLine;
import understorey.reading.Finding;

/** Where a command speaks: results to {@code out}, progress and findings to {@code err}. */
record Terminal(PrintStream out, PrintStream err) {

    /** Prints findings in file order, and a count of what was found. */
    void findings(Collection<Finding> findings) {
        if (findings.isEmpty()) {
            return;
        }
        boolean colour = CommandLine.Help.Ansi.AUTO.enabled() && System.getenv("NO_COLOR") == null;
        int errors = 0;
        int warnings = 0;
        for (Finding finding : findings) {
            err.println(colour ? inColour(finding) : finding.plain());
            errors += finding.level() == Finding.Level.ERROR ? 1 : 0;
            warnings += finding.level() == Finding.Level.WARNING ? 1 : 0;
        }
        if (errors + warnings > 0) {
            err.println(count(errors, "error") + ", " + count(warnings, "warning"));
        }
    }

    /** The whole trace of a fault of the tool, for whoever asks for it. */
    void trace(Throwable fault) {
        if (System.getenv("UNDERSTOREY_DEBUG") != null) {
            fault.printStackTrace(err);
        }
    }

    private static String inColour(Finding finding) {
        String level = finding.level().name().toLowerCase(Locale.ROOT);
        int at = finding.plain().indexOf(": " + level + ": ") + 2;
        String ink = finding.level() == Finding.Level.ERROR ? "\u001b[1;31m" : "\u001b[1;33m";
        return finding.plain().substring(0, at) + ink + level + "\u001b[0m"
                + finding.plain().substring(at + level.length());
    }

    static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
