package understorey.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How much a command says. */
final class Talk {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;
    @Option(names = {"-q", "--quiet"}, description = "say only what is wrong")
    private boolean quiet;
    @Option(names = {"-v", "--verbose"}, description = "also say how long each stage took")
    private boolean verbose;

    /** The progress of a command that begins now. */
    Progress begin(Terminal terminal) {
        if (quiet && verbose) {
            throw new ParameterException(command.commandLine(), "give --quiet or --verbose, not both");
        }
        return new Progress(terminal, quiet, verbose, System::nanoTime);
    }
}
