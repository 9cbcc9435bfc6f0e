package understorey.cli;

import java.util.Locale;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * How far a command is: one live line where a person watches and it takes long, and the time of each stage if it is asked for.
 * It is used by one thread.
 */
final class Progress {

    /** A command that is done sooner shows no line. */
    private static final long LONG_NS = 400_000_000;
    /** Between two looks of the line. */
    private static final long STEP_NS = 100_000_000;

    private final Terminal terminal;
    private final boolean quiet;
    private final boolean verbose;
    private final LongSupplier clockNs;
    private final long begunNs;
    private long stageNs;
    private long shownNs;
    private @Nullable String stage;

    Progress(Terminal terminal, boolean quiet, boolean verbose, LongSupplier clockNs) {
        this.terminal = terminal;
        this.quiet = quiet;
        this.verbose = verbose;
        this.clockNs = clockNs;
        begunNs = clockNs.getAsLong();
    }

    /** Says nothing. */
    static Progress none(Terminal terminal) {
        return new Progress(terminal, true, false, () -> 0);
    }

    /** Begins a stage, and so ends the one before it. */
    void stage(String name) {
        long now = clockNs.getAsLong();
        report(now);
        stage = name;
        stageNs = now;
        show(name, now);
    }

    /** So many things of the stage are done. */
    void done(int done, int all) {
        show(stage + ": " + done + " of " + all, clockNs.getAsLong());
    }

    /** Ends the last stage. */
    void end() {
        terminal.live("");
        report(clockNs.getAsLong());
        stage = null;
    }

    /** Says what came of it, unless only faults are wanted. */
    void say(String line) {
        if (!quiet) {
            terminal.say(line);
        }
    }

    /** Prints a result, unless only faults are wanted. */
    void result(String text) {
        if (!quiet) {
            terminal.result(text);
        }
    }

    private void report(long now) {
        if (verbose && stage != null) {
            terminal.say(String.format(Locale.ROOT, "%s: %.3f s", stage, (now - stageNs) / 1e9));
        }
    }

    private void show(String line, long now) {
        if (!quiet && now - begunNs >= LONG_NS && now - shownNs >= STEP_NS) {
            shownNs = now;
            terminal.live(line);
        }
    }
}
