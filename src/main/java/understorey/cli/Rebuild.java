package understorey.cli;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.pages.Page;
import understorey.plan.Display;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.preview.Shelf;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.reading.ReadBefore;
import understorey.reading.subject.SubjectCatalogue;
import understorey.yaml.finding.Finding;

/** Builds a folder of plans onto a shelf, and again only what changed. What cannot be built leaves its last good pages. */
final class Rebuild {

    private final Function<Trip, Brief> planner;
    private final Path folder;
    private final Share.Audience audience;
    private final @Nullable Path templates;
    private final Display.@Nullable UnitSystem units;
    private final Shelf shelf;
    private final Terminal terminal;
    private final ReadBefore read = new ReadBefore(SubjectCatalogue.builtIn());
    private final Recall.Latest recall = new Recall.Latest();
    private List<Finding> said = List.of();

    Rebuild(Function<Trip, Brief> planner, Path folder, Share.Audience audience, @Nullable Path templates,
            Display.@Nullable UnitSystem units, Shelf shelf, Terminal terminal) {
        this.planner = planner;
        this.folder = folder;
        this.audience = audience;
        this.templates = templates;
        this.units = units;
        this.shelf = shelf;
        this.terminal = terminal;
    }

    /** Brings the shelf up to date, and says what is wrong if that is another thing than before. */
    void run(Progress progress) {
        progress.stage("reading");
        Plans plans = PlaceLeaks.stopped(PlansReader.read(folder, read), recall);
        recall.keepOnly(names(plans));
        // A page that is shown early is not shown below faults that are mended.
        shelf.faults(errors(plans.findings()));
        SiteBuild.Made made = new SiteBuild(progress, planner, recall).make(plans, audience, templates, null, units, new ToShelf());
        progress.end();
        if (made.whole()) {
            StaleFiles stays = new StaleFiles(plans, made.failed(), audience);
            shelf.keepOnly(name -> made.pages().contains(name) || stays.test(name, StaleFiles.word(audience)));
        }
        List<Finding> findings = Stream.concat(plans.findings().stream(), made.findings().stream()).toList();
        shelf.faults(errors(findings));
        if (!findings.equals(said)) {
            said = findings;
            terminal.findingsWithTheirCount(plans, made.findings());
        }
    }

    private static String errors(List<Finding> findings) {
        return findings.stream().filter(finding -> finding.level() == Finding.Level.ERROR).map(Finding::plain).collect(Collectors.joining("\n\n"));
    }

    /** Of trips, and the empty name of what all of them share. */
    private static Set<String> names(Plans plans) {
        Set<String> names = new HashSet<>(Set.of(""));
        Stream.concat(plans.trips().stream(), plans.others().stream()).map(Trip::slug).forEach(names::add);
        return names;
    }

    private final class ToShelf implements SiteBuild.Sink {

        @Override
        public boolean stage(int turn, List<Page> pages) {
            shelf.put(pages);
            return true;
        }

        @Override
        public void early(Page plan) {
            shelf.put(List.of(plan));
        }
    }
}
