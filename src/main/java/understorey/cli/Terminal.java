package understorey.cli;

import java.io.PrintStream;
import java.util.Locale;
import picocli.CommandLine;
import understorey.reading.Finding;
import understorey.reading.Plans;

/** Where a command speaks: results to {@code out}, progress and findings to {@code err}. */
record Terminal(PrintStream out, PrintStream err) {

    /** Prints findings in file order, and a count of what was found, all of it shown or not. */
    void findings(Plans plans) {
        boolean colour = CommandLine.Help.Ansi.AUTO.enabled() && System.getenv("NO_COLOR") == null;
        int shown = 0;
        for (Finding finding : plans.findings()) {
            err.println(colour ? inColour(finding) : finding.plain());
            shown += finding.level() == Finding.Level.NOTE ? 0 : 1;
        }
        int all = plans.errors() + plans.warnings();
        if (all > 0) {
            err.println(count(plans.errors(), "error") + ", " + count(plans.warnings(), "warning")
                    + (shown < all ? ", " + shown + " of them shown" : ""));
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
