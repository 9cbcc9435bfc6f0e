package understorey.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import understorey.brief.Planner;
import understorey.preview.FolderWatch;
import understorey.preview.PreviewServer;
import understorey.preview.Shelf;
import understorey.reading.files.PlanFolder;

/** Shows the pages in a browser, and again after each save. */
@Command(name = "preview", description = "Show the pages in a browser on this computer. When you save a plan, a site, a bag, "
        + "a table or a template, the page loads again where it was. Writes nothing; Ctrl-C ends it.",
        footer = {"", "Examples:",
            "  understorey preview",
            "  understorey preview plans/first-look.yaml --port 8080"})
final class PreviewCommand implements Callable<Integer> {

    private static final String PORT = "8730";

    private final Terminal terminal;

    @Mixin
    private final SiteOptions site = new SiteOptions();
    @Mixin
    private final Talk talk = new Talk();
    @Option(names = "--port", paramLabel = "PORT", defaultValue = PORT,
            description = "port on this computer; if it is taken, the next free one (default: ${DEFAULT-VALUE})")
    private int port;
    @Spec
    private CommandSpec spec;

    PreviewCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws IOException {
        Progress progress = talk.begin(terminal);
        Path templates = site.templates();
        Path folder = new PlanFolder(site.plans()).path();
        if (port < 0 || port > PreviewServer.LAST_PORT) {
            throw new ParameterException(spec.commandLine(), "a port is a number from 1 to " + PreviewServer.LAST_PORT + ", or 0 for any");
        }
        if (!Files.exists(site.plans())) {
            terminal.say("there is no folder or file '" + site.plans() + "'");
            return 1;
        }
        Shelf shelf = new Shelf();
        Rebuild rebuild = new Rebuild(Planner::brief, site.plans(), site.audience(), templates, site.units(), shelf, terminal);
        try (FolderWatch watch = new FolderWatch(watched(folder, templates))) {
            rebuild.run(progress);
            try (PreviewServer server = PreviewServer.open(shelf, port)) {
                announce(server.port());
                while (!Thread.currentThread().isInterrupted()) {
                    watch.await();
                    rebuild.run(talk.begin(terminal));
                }
            }
        } catch (InterruptedException end) {
            Thread.currentThread().interrupt();
        }
        return 0;
    }

    private static List<Path> watched(Path folder, @Nullable Path templates) {
        List<Path> watched = new ArrayList<>(List.of(folder, folder.resolve("sites"), folder.resolve("gear")));
        if (templates != null) {
            watched.add(templates);
        }
        return watched;
    }

    private void announce(int got) {
        if (port != 0 && got != port) {
            terminal.say("port " + port + " is taken, so this is port " + got);
        }
        terminal.result("http://127.0.0.1:" + got + "/");
        terminal.say("Ctrl-C ends the preview.");
    }
}
