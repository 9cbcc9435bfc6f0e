package understorey.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import understorey.plan.Display;
import understorey.plan.Share;

/** Which plans become pages, and for whom. */
final class SiteOptions {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;
    @Parameters(arity = "0..1", paramLabel = "PLANS", defaultValue = "plans", converter = Folders.class,
            description = "folder of trips, with sites/ and gear/ in it, or the file of one trip (default: ${DEFAULT-VALUE})")
    private Path plans;
    @Option(names = "--templates", paramLabel = "FOLDER", converter = Folders.class,
            description = "your own templates; missing files fall back to the built-in ones")
    private @Nullable Path templates;
    @Option(names = "--audience", paramLabel = "WHO", defaultValue = "private", converter = Audiences.class,
            description = "skip trips meant for a smaller audience: private, party or public (default: skip none)")
    private Share.Audience audience;
    @Option(names = "--units", paramLabel = "SYSTEM", converter = UnitSystems.class, description = UnitSystems.HELP)
    private Display.@Nullable UnitSystem units;

    Path plans() {
        return plans;
    }

    Share.Audience audience() {
        return audience;
    }

    /** Of all pages; null for those that each trip has. */
    Display.@Nullable UnitSystem units() {
        return units;
    }

    /** The folder of the user's own templates; null for the built-in ones. */
    @Nullable Path templates() {
        if (templates != null && !Files.isDirectory(templates)) {
            throw new ParameterException(command.commandLine(), "'" + templates + "' is not a folder of templates");
        }
        return templates;
    }
}
