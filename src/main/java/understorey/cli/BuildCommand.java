package understorey.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.SitePages;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.publish.Publisher;
import understorey.publish.Refusal;
import understorey.reading.Finding;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.share.Sharing;

/** Builds the pages of a folder of plans. */
final class BuildCommand implements Command {

    static final String NAME = "build";

    private final Terminal terminal;
    private final Function<Trip, Brief> planner;
    private Path out;
    private Path templates;
    private Share.Audience audience;

    BuildCommand(Terminal terminal) {
        this(terminal, Planner::brief);
    }

    BuildCommand(Terminal terminal, Function<Trip, Brief> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    @Override
    public CommandSpec spec() {
        return Command.spec(NAME, "Build the pages of every plan in a folder, or of one plan. A plan with errors is left out, the "
                        + "others are built, and what was built of it before stays.")
                .addPositional(Command.plansFolder())
                .addOption(OptionSpec.builder("--out").paramLabel("FOLDER").type(Path.class).converters(new Folders()).defaultValue("site-out")
                        .description("where the pages go; a new, an empty or an earlier such folder "
                                + "(default: ${DEFAULT-VALUE})").build())
                .addOption(OptionSpec.builder("--templates").paramLabel("FOLDER").type(Path.class).converters(new Folders())
                        .description("your own templates; a file missing there is taken from the built-in ones")
                        .build())
                .addOption(OptionSpec.builder("--audience").paramLabel("WHO").type(Share.Audience.class)
                        .converters(new Audiences()).defaultValue("private")
                        .description("build only trips that are for at least this audience: private, party or "
                                + "public (default: all)").build());
    }

    @Override
    public int run(CommandSpec parsed) throws IOException {
        out = parsed.findOption("--out").getValue();
        templates = parsed.findOption("--templates").getValue();
        audience = parsed.findOption("--audience").getValue();
        return build(parsed.positionalParameters().get(0).getValue());
    }

    private int build(Path plansFolder) throws IOException {
        if (templates != null && !Files.isDirectory(templates)) {
            terminal.err().println("'" + templates + "' is no folder of templates");
            return 2;
        }
        Plans plans = PlansReader.read(plansFolder);
        SiteBuild.Made made = new SiteBuild(terminal, planner).make(plans, audience, templates);
        List<Finding> findings = new ArrayList<>(plans.findings());
        findings.addAll(made.findings());
        terminal.findings(findings);
        for (Path trip : plans.faultyTrips()) {
            terminal.err().println("not built: " + trip);
        }
        for (Trip trip : made.failed()) {
            terminal.err().println("not built: " + plans.file(trip));
        }
        if (made.pages() == null) {
            return 1;
        }
        boolean passedOver = !plans.trips().isEmpty() && made.failed().isEmpty() && plans.only() == null;
        if (made.trips().isEmpty() && !passedOver) {
            terminal.err().println("no trip to build, nothing written");
            return 1;
        }
        warn(plans, made);
        try {
            Publisher.Outcome outcome = plans.only() == null
                    ? Publisher.publish(made.pages(), out, Kept.word(audience), new Kept(plans, made.failed(), audience))
                    : Publisher.publishTrip(made.pages(), out, Kept.word(audience), plans.only());
            terminal.err().println(Terminal.count(made.trips().size(), "trip") + ": "
                    + Terminal.count(outcome.written(), "file") + " written, " + outcome.unchanged() + " unchanged, "
                    + outcome.deleted() + " deleted");
            if (outcome.written() + outcome.unchanged() < made.pages().size()) {
                terminal.err().println("pages that trips share are as before: build the folder to renew them");
            }
            terminal.out().println(out.resolve("index.html"));
            return plans.hasErrors() || made.hasErrors() ? 1 : 0;
        } catch (Refusal refusal) {
            terminal.err().println("understorey: " + refusal.getMessage());
            return 1;
        }
    }

    private void warn(Plans plans, SiteBuild.Made made) {
        for (Trip trip : plans.trips()) {
            if (trip.audience().compareTo(audience) >= 0 && Sharing.nameTellsThePlace(trip)) {
                terminal.err().println(trip.slug() + ": warning: the name of this file becomes a folder's name and "
                        + "tells the place, which is sensitive: rename the file");
            }
        }
        for (SitePages.TripPages trip : made.trips()) {
            for (String line : trip.findings()) {
                if (line.startsWith("warning")) {
                    terminal.err().println(trip.card().slug() + ": " + line);
                }
            }
        }
    }
}
