package understorey.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import understorey.pages.json.Json;
import understorey.schema.PlanFiles;

/** Gives the JSON Schema of the files, for editors and other programs. */
@Command(name = "schema", description = "Print the JSON Schema of a trip, a site or a bag.", footer = {"", "Example:",
    "  understorey schema --out plans/schema", "writes all three, for completion and checks in an editor."})
final class SchemaCommand implements Callable<Integer> {

    private final Terminal terminal;

    @Parameters(arity = "0..1", paramLabel = "KIND", defaultValue = "trip", description = "trip, site or bag (default: ${DEFAULT-VALUE})")
    private PlanFiles.Kind kind;
    @Option(names = "--out", paramLabel = "FOLDER", description = "write the schemas of all three into this folder")
    private @Nullable Path folder;

    SchemaCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        PlanFiles files = PlanFiles.builtIn();
        if (folder == null) {
            terminal.result(Json.document(files.schema(kind)));
            return 0;
        }
        Files.createDirectories(folder);
        for (PlanFiles.Kind each : PlanFiles.Kind.values()) {
            Path file = folder.resolve(each.word() + ".schema.json");
            Files.writeString(file, Json.document(files.schema(each)));
            terminal.say("wrote " + file);
        }
        terminal.say("first line of a trip: # yaml-language-server: $schema=" + folder.getFileName() + "/trip.schema.json");
        return 0;
    }
}
