package understorey.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.CompletableFuture;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import understorey.pages.SitePages;

/** The command {@code understorey} and its subcommands. */
@Command(name = "understorey", description = "Plans a photographer’s day in a wood in flower, from YAML to pages.",
        mixinStandardHelpOptions = true, versionProvider = Version.class,
        footer = {"", "Exit status: 0 done, 1 findings that stop the build, 2 wrong use."})
public final class Understorey implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Which command?");
    }

    /** Starts the tool and ends the process with its exit status. */
    public static void main(String[] arguments) {
        System.exit(run(arguments, utf8(System.out), utf8(System.err)));
    }

    /** Runs one command line; the exit status. */
    static int run(String[] arguments, PrintStream out, PrintStream err) {
        Terminal terminal = new Terminal(out, err);
        boolean builds = arguments.length > 0 && arguments[0].equals("build");
        CompletableFuture<SitePages> builtIn = builds
                ? CompletableFuture.supplyAsync(() -> SitePages.open(null)) : null;
        CommandLine line = new CommandLine(new Understorey());
        line.addSubcommand(new BuildCommand(terminal, builtIn));
        line.addSubcommand(new CheckCommand(terminal));
        line.setOut(new PrintWriter(out, true));
        line.setErr(new PrintWriter(err, true));
        line.setExecutionExceptionHandler((fault, command, parsed) -> {
            err.println("understorey: " + (fault.getMessage() == null ? fault.toString() : fault.getMessage()));
            if (System.getenv("UNDERSTOREY_DEBUG") != null) {
                fault.printStackTrace(err);
            }
            return 1;
        });
        return line.execute(arguments);
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
