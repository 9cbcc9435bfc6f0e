package understorey.cli;

import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.function.UnaryOperator;
import picocli.CommandLine;
import understorey.reading.Plans;
import understorey.yaml.finding.Finding;
import understorey.yaml.finding.Visible;

/**
 * Results go to standard output; progress and findings go to standard error. Every line is made {@link Visible}: only
 * the colours of this class reach a terminal as control characters.
 */
final class Terminal {

    private static final Path STANDARD_ERROR = Path.of("/proc/self/fd/2");

    private final PrintStream out;
    private final PrintStream err;
    private final boolean colour;
    private final boolean watched;
    /** How many columns the live line has. */
    private int live;

    Terminal(PrintStream out, PrintStream err, boolean colour) {
        this(out, err, colour, false);
    }

    /**
     * Over two streams.
     *
     * @param watched whether a person sees both of them as they are written
     */
    Terminal(PrintStream out, PrintStream err, boolean colour, boolean watched) {
        this.out = out;
        this.err = err;
        this.colour = colour;
        this.watched = watched;
    }

    /** Whether colours are wanted: a person watches, and {@code NO_COLOR} is not set. */
    static boolean wantsColour() {
        return System.getenv("NO_COLOR") == null && CommandLine.Help.Ansi.AUTO.enabled() && isWatched();
    }

    /**
     * Whether both streams go to a terminal. Java sees this of standard input and output; Linux names the file behind standard
     * error.
     */
    static boolean isWatched() {
        if (System.console() == null) {
            return false;
        }
        try {
            return !Files.exists(STANDARD_ERROR)
                    || Files.readSymbolicLink(STANDARD_ERROR).toString().matches("/dev/(pts/|tty|console).*");
        } catch (java.io.IOException unknown) {
            return false;
        }
    }

    boolean colour() {
        return colour;
    }

    /** Shows a line that the next one replaces. An empty line clears it. Without a terminal it shows nothing. */
    void live(String line) {
        if (watched && (live > 0 || !line.isEmpty())) {
            err.print("\r" + Visible.line(line) + " ".repeat(Math.max(0, live - line.length())) + (line.isEmpty() ? "\r" : ""));
            err.flush();
            live = line.length();
        }
    }

    /** Prints a result, line by line. */
    void result(String text) {
        live("");
        print(out, text);
        out.flush();
    }

    /** Prints one line of progress, or one thing that is wrong. */
    void say(String line) {
        live("");
        err.println(Visible.line(line));
    }

    /** Prints several lines to standard error. */
    void lines(String text) {
        live("");
        print(err, text);
    }

    private static void print(PrintStream stream, String text) {
        text.lines().map(Visible::line).forEach(stream::println);
    }

    /** Prints findings in file order. */
    void findings(Collection<Finding> findings) {
        live("");
        for (Finding finding : findings) {
            err.println(colour ? finding.dressed(inked("1"), inked(finding.level() == Finding.Level.ERROR ? "1;31" : "1;33"))
                    : finding.plain());
        }
    }

    /** Prints findings of plans and of their pages, and how many there are, all of them shown or not. */
    void findingsWithTheirCount(Plans plans, Collection<Finding> ofPages) {
        findings(plans.findings());
        findingsOfPages(plans, ofPages);
    }

    /** Prints findings of pages, and how many there are with those of the plans. */
    void findingsOfPages(Plans plans, Collection<Finding> ofPages) {
        findings(ofPages);
        int errors = plans.errors() + count(ofPages, Finding.Level.ERROR);
        int warnings = plans.warnings() + count(ofPages, Finding.Level.WARNING);
        if (errors + warnings > 0) {
            say(count(errors, "error") + ", " + count(warnings, "warning") + shown(plans));
        }
    }

    /** How many findings of plans are shown, where that is not all of them. */
    static String shown(Plans plans) {
        int shown = count(plans.findings(), Finding.Level.ERROR) + count(plans.findings(), Finding.Level.WARNING);
        return shown < plans.errors() + plans.warnings() ? ", the first " + shown + " shown" : "";
    }

    static int count(Collection<Finding> findings, Finding.Level level) {
        return (int) findings.stream().filter(finding -> finding.level() == level).count();
    }

    /** Text in a colour of ECMA-48, "select graphic rendition". */
    private static UnaryOperator<String> inked(String rendition) {
        return text -> "\u001b[" + rendition + "m" + text + "\u001b[0m";
    }

    static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
