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
import understorey.reading.Plans;
import understorey.reading.PlansReader;

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
        return Command.spec(NAME, "Build pages from the plans in a folder, or from one plan. Plans with errors are skipped; "
                        + "their earlier pages stay.")
                .addPositional(Command.plansFolder())
                .addOption(OptionSpec.builder("--out").paramLabel("FOLDER").type(Path.class).converters(new Folders()).defaultValue("site-out")
                        .description("output folder: new, empty, or made by an earlier build "
                                + "(default: ${DEFAULT-VALUE})").build())
                .addOption(OptionSpec.builder("--templates").paramLabel("FOLDER").type(Path.class).converters(new Folders())
                        .description("your own templates; missing files fall back to the built-in ones")
                        .build())
                .addOption(OptionSpec.builder("--audience").paramLabel("WHO").type(Share.Audience.class)
                        .converters(new Audiences()).defaultValue("private")
                        .description("skip trips meant for a smaller audience: private, party or public "
                                + "(default: skip none)").build());
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
            terminal.say("'" + templates + "' is not a folder of templates");
            return 2;
        }
        Plans read = PlansReader.read(plansFolder);
        Plans plans = PlaceLeaks.stopped(read);
        SiteBuild.Made made = new SiteBuild(terminal, planner).make(plans, audience, templates);
        terminal.findingsWithTheirCount(plans, made.findings());
        for (Path trip : plans.faultyTrips()) {
            terminal.say("not built: " + trip);
        }
        List<Trip> withheld = new ArrayList<>(read.trips());
        withheld.removeAll(plans.trips());
        for (Trip trip : withheld) {
            terminal.say("not built, and its earlier pages are deleted: " + plans.file(trip));
        }
        for (Trip trip : made.failed()) {
            terminal.say("not built: " + plans.file(trip));
        }
        if (made.pages() == null) {
            return 1;
        }
        boolean passedOver = !read.trips().isEmpty() && made.failed().isEmpty() && plans.only() == null;
        if (made.trips().isEmpty() && !passedOver) {
            terminal.say("no trip to build, nothing written");
            return 1;
        }
        warn(made);
        try {
            Publisher.Outcome outcome = plans.only() == null
                    ? Publisher.publish(made.pages(), out, StaleFiles.word(audience), new StaleFiles(plans, made.failed(), audience))
                    : Publisher.publishTrip(made.pages(), out, StaleFiles.word(audience), plans.only());
            terminal.say(Terminal.count(made.trips().size(), "trip") + ": "
                    + Terminal.count(outcome.written(), "file") + " written, " + outcome.unchanged() + " unchanged, "
                    + outcome.deleted() + " deleted");
            if (outcome.written() + outcome.unchanged() < made.pages().size()) {
                terminal.say("pages shared by trips are unchanged: build the folder to update them");
            }
            terminal.result(out.resolve("index.html").toString());
            return plans.hasErrors() || made.hasErrors() ? 1 : 0;
        } catch (Refusal refusal) {
            terminal.say("understorey: " + refusal.getMessage());
            return 1;
        }
    }

    private void warn(SiteBuild.Made made) {
        for (SitePages.TripPages trip : made.trips()) {
            for (String line : trip.findings()) {
                if (line.startsWith("warning")) {
                    terminal.say(trip.card().slug() + ": " + line);
                }
            }
        }
    }
}
