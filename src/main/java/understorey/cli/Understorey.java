package understorey.cli;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program {@code understorey}: finds the command that the command line names and runs it. */
@Command(name = "understorey", description = "Turn YAML trip plans into pages for photographing woodland flowers.",
        footer = {"", "Exit status: 0 done, 1 errors that stop the build, 2 wrong command line.", "", "Example:",
            "  understorey build plans --out site-out"})
public final class Understorey implements Callable<Integer> {

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;
    @Option(names = {"-h", "--help"}, usageHelp = true, scope = ScopeType.INHERIT, description = "show this help")
    private boolean help;
    @Option(names = {"-V", "--version"}, versionHelp = true, description = "show the version")
    private boolean version;

    private Understorey(Terminal terminal) {
        this.terminal = terminal;
    }

    /** Starts the tool and ends the process with its exit status. */
    public static void main(String[] arguments) {
        // Pages read records by reflection. A class made for every component would cost more than it ever saves.
        System.setProperty("sun.reflect.inflationThreshold", String.valueOf(Integer.MAX_VALUE));
        PrintStream out = utf8(System.out);
        PrintStream err = utf8(System.err);
        System.exit(run(arguments, out, err, new Terminal(out, err, Terminal.wantsColour(), Terminal.isWatched())));
    }

    /** Runs one command line; the exit status. Both streams take UTF-8. */
    static int run(String[] arguments, PrintStream out, PrintStream err, Terminal terminal) {
        CommandLine program = program(terminal, out, err);
        try {
            return program.execute(arguments);
        } catch (StackOverflowError fault) {
            return ((Understorey) program.getCommand()).say(fault);
        }
    }

    /** The program with all its commands. */
    static CommandLine program(Terminal terminal, PrintStream out, PrintStream err) {
        Understorey tool = new Understorey(terminal);
        CommandLine program = new CommandLine(tool).addSubcommand(new BuildCommand(terminal))
                .addSubcommand(new CheckCommand(terminal)).addSubcommand(new DaysCommand(terminal))
                .addSubcommand(new PreviewCommand(terminal)).addSubcommand(new NewCommand(terminal, LocalDate.now()))
                .addSubcommand(new SchemaCommand(terminal)).setCaseInsensitiveEnumValuesAllowed(true)
                .setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setColorScheme(CommandLine.Help.defaultColorScheme(terminal.colour() ? Ansi.ON : Ansi.OFF))
                .setParameterExceptionHandler(tool::refuse)
                .setExecutionExceptionHandler((fault, command, parsed) -> tool.say(fault));
        program.getCommandSpec().version("understorey " + version());
        return program;
    }

    @Override
    public Integer call() {
        throw new ParameterException(spec.commandLine(), "Give a command: " + commands() + ".");
    }

    /** The commands that there are, as a sentence lists them. */
    private String commands() {
        List<String> names = spec.subcommands().values().stream().filter(command -> !command.getCommandSpec().usageMessage().hidden())
                .map(CommandLine::getCommandName).distinct().toList();
        return String.join(", ", names.subList(0, names.size() - 1)) + " or " + names.get(names.size() - 1);
    }

    /** Answers a wrong command line with what is wrong, then with what may be meant or how the command is used. */
    private int refuse(ParameterException fault, String[] arguments) {
        String unknown = unknownCommand(fault);
        terminal.say(unknown == null ? Objects.requireNonNullElse(fault.getMessage(), "")
                : "unknown command '" + unknown + "': use " + commands());
        StringWriter meant = new StringWriter();
        if (UnmatchedArgumentException.printSuggestions(fault, new PrintWriter(meant))) {
            terminal.lines(meant.toString());
        } else if (unknown == null) {
            CommandLine asked = fault.getCommandLine();
            asked.usage(asked.getErr(), asked.getColorScheme());
        }
        return ExitCode.USAGE;
    }

    /** The word in the place of a command; null where that is not the fault. */
    private static @Nullable String unknownCommand(ParameterException fault) {
        return fault.getCommandLine().getParent() == null && fault instanceof UnmatchedArgumentException words
                && !words.getUnmatched().get(0).startsWith("-") ? words.getUnmatched().get(0) : null;
    }

    /** Prints one line for an unforeseen failure. */
    private int say(Throwable fault) {
        terminal.say("understorey: " + FaultMessage.says(fault));
        return ExitCode.SOFTWARE;
    }

    static String version() {
        String version = Understorey.class.getPackage().getImplementationVersion();
        return version == null ? "(development build)" : version;
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
