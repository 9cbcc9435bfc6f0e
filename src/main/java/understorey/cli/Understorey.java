package understorey.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.ExitCode;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program {@code understorey}: finds the command that the command line names and runs it. */
public final class Understorey {

    private final Terminal terminal;
    private final Map<String, Command> commands = new LinkedHashMap<>();
    private final CommandLine line;

    private Understorey(String[] arguments, PrintStream out, PrintStream err, boolean colour) {
        terminal = new Terminal(out, err, colour);
        commands.put(BuildCommand.NAME, new BuildCommand(terminal));
        commands.put(CheckCommand.NAME, new CheckCommand(terminal));
        commands.put(DaysCommand.NAME, new DaysCommand(terminal));
        CommandSpec spec = Command.spec("understorey",
                "Turns a YAML trip plan into pages for photographing woodland flowers.");
        spec.version("understorey " + version());
        spec.addOption(OptionSpec.builder("-V", "--version").versionHelp(true).description("show the version").build());
        spec.usageMessage().footer("", "Exit status: 0 done, 1 errors that stop the build, 2 wrong command line.");
        String asked = arguments.length == 0 ? "" : arguments[0];
        for (Map.Entry<String, Command> command : commands.entrySet()) {
            if (!commands.containsKey(asked) || command.getKey().equals(asked)) {
                spec.addSubcommand(command.getKey(), new CommandLine(command.getValue().spec()));
            }
        }
        line = new CommandLine(spec).setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8))
                .setColorScheme(CommandLine.Help.defaultColorScheme(colour ? Ansi.ON : Ansi.OFF))
                .setParameterExceptionHandler(this::refuse).setExecutionStrategy(this::execute);
    }

    /** Starts the tool and ends the process with its exit status. */
    public static void main(String[] arguments) {
        // Pages read records by reflection. A class made for every component would cost more than it ever saves.
        System.setProperty("sun.reflect.inflationThreshold", String.valueOf(Integer.MAX_VALUE));
        System.exit(run(arguments, utf8(System.out), utf8(System.err), Terminal.wantsColour()));
    }

    /** Runs one command line; the exit status. Both streams take UTF-8. */
    static int run(String[] arguments, PrintStream out, PrintStream err, boolean colour) {
        return new Understorey(arguments, out, err, colour).line.execute(arguments);
    }

    /** Answers a wrong command line with what is wrong, then with what may be meant or how the command is used. */
    private int refuse(ParameterException fault, String[] arguments) {
        terminal.say(fault.getMessage());
        StringWriter meant = new StringWriter();
        if (UnmatchedArgumentException.printSuggestions(fault, new PrintWriter(meant))) {
            terminal.lines(meant.toString());
        } else {
            CommandLine asked = fault.getCommandLine();
            asked.usage(asked.getErr(), line.getColorScheme());
        }
        return ExitCode.USAGE;
    }

    private int execute(ParseResult parsed) {
        Integer helped = CommandLine.executeHelpRequest(parsed);
        if (helped != null) {
            return helped;
        }
        if (!parsed.hasSubcommand()) {
            throw new ParameterException(line, "Give a command: build, check or days.");
        }
        CommandSpec asked = parsed.subcommand().commandSpec();
        try {
            return commands.get(asked.name()).run(asked);
        } catch (IOException | RuntimeException | StackOverflowError fault) {
            say(fault);
            return 1;
        }
    }

    /** Prints one line for an unforeseen failure, and the whole trace if it is asked for. */
    private void say(Throwable fault) {
        terminal.say("understorey: " + FaultMessage.says(fault));
        terminal.trace(fault);
    }

    private static String version() {
        String version = Understorey.class.getPackage().getImplementationVersion();
        return version == null ? "(development build)" : version;
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
