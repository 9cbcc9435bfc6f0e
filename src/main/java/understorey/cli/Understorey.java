package understorey.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The command {@code understorey}: finds the command that is asked for and runs it. */
public final class Understorey {

    private final Terminal terminal;
    private final Map<String, Command> commands = new LinkedHashMap<>();
    private final CommandLine line;

    private Understorey(String[] arguments, PrintStream out, PrintStream err) {
        terminal = new Terminal(out, err);
        commands.put(BuildCommand.NAME, new BuildCommand(terminal));
        commands.put(CheckCommand.NAME, new CheckCommand(terminal));
        commands.put(DaysCommand.NAME, new DaysCommand(terminal));
        CommandSpec spec = Command.spec("understorey",
                "Plans a photographer’s day in a wood in flower, from YAML to pages.");
        spec.version("understorey " + version());
        spec.addOption(OptionSpec.builder("-V", "--version").versionHelp(true).description("show the version").build());
        spec.usageMessage().footer("", "Exit status: 0 done, 1 findings that stop the build, 2 wrong use.");
        String asked = arguments.length == 0 ? "" : arguments[0];
        for (Map.Entry<String, Command> command : commands.entrySet()) {
            if (!commands.containsKey(asked) || command.getKey().equals(asked)) {
                spec.addSubcommand(command.getKey(), new CommandLine(command.getValue().spec()));
            }
        }
        line = new CommandLine(spec).setOut(new PrintWriter(out, true, StandardCharsets.UTF_8))
                .setErr(new PrintWriter(err, true, StandardCharsets.UTF_8)).setExecutionStrategy(this::execute);
    }

    /** Starts the tool and ends the process with its exit status. */
    public static void main(String[] arguments) {
        // Pages read records by reflection. A class made for every component would cost more than it ever saves.
        System.setProperty("sun.reflect.inflationThreshold", String.valueOf(Integer.MAX_VALUE));
        System.exit(run(arguments, utf8(System.out), utf8(System.err)));
    }

    /** Runs one command line; the exit status. Both streams take UTF-8. */
    static int run(String[] arguments, PrintStream out, PrintStream err) {
        return new Understorey(arguments, out, err).line.execute(arguments);
    }

    private int execute(ParseResult parsed) {
        Integer helped = CommandLine.executeHelpRequest(parsed);
        if (helped != null) {
            return helped;
        }
        if (!parsed.hasSubcommand()) {
            throw new ParameterException(line, "Which command?");
        }
        CommandSpec asked = parsed.subcommand().commandSpec();
        try {
            return commands.get(asked.name()).run(asked);
        } catch (IOException | RuntimeException | StackOverflowError fault) {
            say(fault);
            return 1;
        }
    }

    /** One line for what nobody foresaw; the whole trace only for whoever asks for it. */
    private void say(Throwable fault) {
        terminal.err().println("understorey: " + Mishap.says(fault));
        terminal.trace(fault);
    }

    private static String version() {
        String version = Understorey.class.getPackage().getImplementationVersion();
        return version == null ? "(from its classes)" : version;
    }

    private static PrintStream utf8(PrintStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }
}
