package understorey.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.Page;
import understorey.pages.SitePages;
import understorey.pages.TemplateFault;
import understorey.plan.Bag;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.publish.Links;
import understorey.publish.Publisher;
import understorey.publish.Refusal;
import understorey.reading.Plans;
import understorey.share.Sharing;

/** Builds the pages of a folder of plans. */
final class BuildCommand implements Command {

    static final String NAME = "build";

    private final Terminal terminal;
    private final HeadStart head;
    private Path out;
    private Path templates;
    private Share.Audience audience;

    /**
     * A command not yet parsed.
     *
     * @param head what was begun already; null when nothing was
     */
    BuildCommand(Terminal terminal, HeadStart head) {
        this.terminal = terminal;
        this.head = head;
    }

    @Override
    public CommandSpec spec() {
        return Command.spec(NAME, "Build the pages of every plan in a folder. A plan with errors is left out, the "
                        + "others are built, and what was built of it before stays.")
                .addPositional(Command.plansFolder())
                .addOption(OptionSpec.builder("--out").paramLabel("FOLDER").type(Path.class).defaultValue("site-out")
                        .description("where the pages go; a new, an empty or an earlier such folder "
                                + "(default: ${DEFAULT-VALUE})").build())
                .addOption(OptionSpec.builder("--templates").paramLabel("FOLDER").type(Path.class)
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
        Plans plans = HeadStart.plans(head, plansFolder);
        terminal.findings(plans);
        for (Path trip : plans.faultyTrips()) {
            terminal.err().println("not built: " + trip);
        }
        if (plans.trips().isEmpty()) {
            terminal.err().println("no trip to build, nothing written");
            return 1;
        }
        List<Brief> briefs = new ArrayList<>();
        Map<String, String> places = new HashMap<>();
        for (Trip trip : plans.trips()) {
            if (trip.audience().compareTo(audience) < 0) {
                continue;
            }
            Trip shared = Sharing.forAudience(trip);
            String other = places.putIfAbsent(shared.site().slug(), trip.site().slug());
            if (other != null && !other.equals(trip.site().slug())) {
                terminal.err().println("the sites '" + other + "' and '" + trip.site().slug() + "' are both called '"
                        + shared.site().name() + "' on public pages: give each a public_name of its own");
                return 1;
            }
            if (Sharing.nameTellsThePlace(trip)) {
                terminal.err().println(trip.slug() + ": warning: the name of this file becomes a folder's name and "
                        + "tells the place, which is sensitive: rename the file");
            }
            briefs.add(Planner.brief(shared));
        }
        try {
            SitePages site = HeadStart.pages(head, templates);
            for (Brief brief : briefs) {
                for (String line : site.findings(brief)) {
                    if (line.startsWith("warning")) {
                        terminal.err().println(brief.trip().slug() + ": " + line);
                    }
                }
            }
            List<Page> pages = site.of(briefs, idleSites(plans), bags(plans, briefs), plans.subjects());
            List<String> broken = Links.broken(pages);
            for (String link : broken) {
                terminal.err().println(link);
            }
            Publisher.Outcome outcome = Publisher.publish(pages, out, Kept.word(audience),
                    new Kept(plans, audience));
            terminal.err().println(Terminal.count(briefs.size(), "trip") + ": "
                    + Terminal.count(outcome.written(), "file") + " written, " + outcome.unchanged() + " unchanged, "
                    + outcome.deleted() + " deleted");
            terminal.out().println(out.resolve("index.html"));
            return plans.hasErrors() || !broken.isEmpty() ? 1 : 0;
        } catch (TemplateFault fault) {
            terminal.err().println(fault.plain());
        } catch (Refusal refusal) {
            terminal.err().println("understorey: " + refusal.getMessage());
        }
        return 1;
    }

    /** Everyone may see a bag that a trip of theirs carries, the author all of them. */
    private List<Bag> bags(Plans plans, List<Brief> briefs) {
        if (audience == Share.Audience.PRIVATE) {
            return plans.bags();
        }
        List<Bag> carried = new ArrayList<>();
        for (Bag bag : plans.bags()) {
            for (Brief brief : briefs) {
                if (bag.slug().equals(brief.trip().gear().slug())) {
                    carried.add(bag);
                    break;
                }
            }
        }
        return carried;
    }

    /** Sites that no trip goes to; a sensitive one shows itself to anyone only as it would to the public. */
    private List<Site> idleSites(Plans plans) {
        List<Site> idle = new ArrayList<>();
        for (Site site : plans.sites()) {
            boolean visited = false;
            for (Trip trip : plans.trips()) {
                visited |= trip.site().slug().equals(site.slug());
            }
            if (!visited && (audience == Share.Audience.PRIVATE || !site.sensitive())) {
                idle.add(Sharing.forAudience(site,
                        site.sensitive() ? Share.Audience.PUBLIC : audience, Share.Precision.EXACT));
            }
        }
        return idle;
    }
}
