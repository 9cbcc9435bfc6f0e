package understorey.cli;

import java.io.IOException;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * One command. Its options are written out, not annotated: reading annotations costs a tenth of a cold start.
 */
interface Command {

    /** Folder of plans when the command line names none. */
    String PLANS = "plans";

    /** Name, purpose, options and parameters of the command. */
    CommandSpec spec();

    /**
     * Runs the command.
     *
     * @param parsed holds the values of options and parameters
     * @return the exit status
     */
    int run(CommandSpec parsed) throws IOException;

    /** A command with nothing but its name, its purpose and {@code --help}. */
    static CommandSpec spec(String name, String purpose) {
        CommandSpec spec = CommandSpec.create().name(name)
                .addOption(OptionSpec.builder("-h", "--help").usageHelp(true).description("show this help").build());
        spec.usageMessage().description(purpose);
        return spec;
    }

    /** Parameter for the folder of plans, optional. */
    static PositionalParamSpec plansFolder() {
        return PositionalParamSpec.builder().arity("0..1").paramLabel("PLANS").type(Path.class).defaultValue(PLANS)
                .converters(new Folders()).description("folder of trips, with sites/ and gear/ in it, or the file of one trip (default: ${DEFAULT-VALUE})").build();
    }
}
