package understorey.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.Address;
import understorey.pages.TripLine;
import understorey.plan.Trip;
import understorey.publish.Publisher;
import understorey.publish.Refusal;
import understorey.reading.Plans;
import understorey.reading.PlansReader;

/** Builds the pages of a folder of plans. */
@Command(name = "build", description = "Build pages from the plans in a folder, or from one plan. "
        + "Plans with errors are skipped; their earlier pages stay.",
        footer = {"", "Examples:",
            "  understorey build plans --out site-out",
            "  understorey build plans/first-look.yaml",
            "  understorey build plans --out public --audience public"})
final class BuildCommand implements Callable<Integer> {

    private final Terminal terminal;
    private final Function<Trip, Brief> planner;

    @Mixin
    private final SiteOptions site = new SiteOptions();
    @Mixin
    private final Talk talk = new Talk();
    @Option(names = "--out", paramLabel = "FOLDER", defaultValue = "site-out", converter = Folders.class,
            description = "output folder: new, empty, or made by an earlier build (default: ${DEFAULT-VALUE})")
    private Path out;
    @Option(names = "--address", paramLabel = "URL",
            description = "web address of the site: plans and index then have a description and a preview image for other sites")
    private @Nullable String url;

    BuildCommand(Terminal terminal) {
        this(terminal, Planner::brief);
    }

    BuildCommand(Terminal terminal, Function<Trip, Brief> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public Integer call() throws IOException {
        Progress progress = talk.begin(terminal);
        Path templates = site.templates();
        Address address = url == null ? null : Address.of(url);
        if (url != null && address == null) {
            terminal.say("'" + url + "' is not the address of a site: write it as https://example.org/flowers/");
            return 2;
        }
        // Previews are drawn without a screen; some systems would show the program in their dock.
        System.setProperty("java.awt.headless", "true");
        progress.stage("reading");
        Plans read = PlansReader.read(site.plans());
        Plans plans = PlaceLeaks.stopped(read, Recall.NOTHING);
        terminal.findings(plans.findings());
        try (Publisher publisher = Publisher.open(out, StaleFiles.word(site.audience()), plans.only())) {
            SiteBuild.Made made = new SiteBuild(progress, planner, Recall.NOTHING)
                    .make(plans, site.audience(), templates, address, site.units(), publisher::stage);
            return publish(read, plans, made, publisher, progress);
        } catch (Refusal refusal) {
            terminal.say("understorey: " + refusal.getMessage());
            return 1;
        }
    }

    private int publish(Plans read, Plans plans, SiteBuild.Made made, Publisher publisher, Progress progress)
            throws Refusal, IOException {
        terminal.findingsOfPages(plans, made.findings());
        plans.faultyTrips().forEach(trip -> terminal.say("not built: " + trip));
        read.trips().stream().filter(trip -> !plans.trips().contains(trip))
                .forEach(trip -> terminal.say("not built, and its earlier pages are deleted: " + plans.file(trip)));
        made.failed().forEach(trip -> terminal.say("not built: " + plans.file(trip)));
        if (!made.whole()) {
            return 1;
        }
        boolean passedOver = !read.trips().isEmpty() && made.failed().isEmpty() && plans.only() == null;
        if (made.trips().isEmpty() && !passedOver) {
            terminal.say("no trip to build, nothing written");
            return 1;
        }
        terminal.findings(PlanRemarks.of(plans, made.trips(), TripLine.Said::warning));
        progress.stage("writing");
        Publisher.Outcome outcome = publisher.publish(new StaleFiles(plans, made.failed(), site.audience()));
        progress.end();
        progress.say(Terminal.count(made.trips().size(), "trip") + ": "
                + Terminal.count(outcome.written(), "file") + " written, " + outcome.unchanged() + " unchanged, "
                + outcome.deleted() + " deleted");
        if (outcome.written() + outcome.unchanged() < made.pages().size()) {
            progress.say("pages shared by trips are unchanged: build the folder to update them");
        }
        progress.result(out.resolve("index.html").toString());
        return plans.hasErrors() || made.hasErrors() ? 1 : 0;
    }
}
