package understorey.reading;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.reading.ReadBefore.Reading;
import understorey.reading.files.PlanFolder;
import understorey.reading.gear.BagReader;
import understorey.reading.site.SiteRead;
import understorey.reading.site.SiteReader;
import understorey.reading.subject.SubjectCatalogue;
import understorey.reading.trip.AuthorLinks;
import understorey.reading.trip.Library;
import understorey.reading.trip.TripReader;
import understorey.yaml.finding.Finding;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Passed;
import understorey.yaml.finding.Pos;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.TreeReader;

/**
 * Reads a folder of plans: trips in it, sites in {@code sites}, bags in {@code gear}. Where one trip is asked for, the
 * others are read too, since the pages of sites described in trips get their names from all of them.
 */
public final class PlansReader {

    private static final Comparator<Finding> BY_PLACE =
            Comparator.comparing(Finding::file).thenComparing(Finding::line).thenComparing(Finding::column);

    private final PlanFolder folder;
    private final Library library;
    private final ReadBefore before;
    private final Set<Finding> findings = new LinkedHashSet<>();
    private final Passed passed = new Passed();
    private final List<Trip> trips = new ArrayList<>();
    private final List<Trip> others = new ArrayList<>();
    private final List<Site> sites = new ArrayList<>();
    private final List<Bag> bags = new ArrayList<>();
    private final List<Path> faulty = new ArrayList<>();
    /** What was found in the file of each site and bag. */
    private final Map<String, Findings> besides = new HashMap<>();
    private final Locators written = new Locators();

    private PlansReader(PlanFolder folder, ReadBefore before) {
        this.folder = folder;
        this.before = before;
        this.library = new Library(before.catalogue());
    }

    /**
     * Reads everything in the folder, or one trip's file in it. Never throws for a mistake of the author's; a missing folder,
     * or one without a trip, is a finding too.
     */
    public static Plans read(Path plansFolder) {
        return read(plansFolder, SubjectCatalogue.builtIn());
    }

    public static Plans read(Path plansFolder, SubjectCatalogue catalogue) {
        return read(plansFolder, new ReadBefore(catalogue));
    }

    /** Reads again what changed. */
    public static Plans read(Path plansFolder, ReadBefore before) {
        return new PlansReader(new PlanFolder(plansFolder), before).plans();
    }

    private Plans plans() {
        Set<Finding> names = new LinkedHashSet<>();
        List<PlanFolder.Entry> siteFiles = folder.list("sites", names);
        List<PlanFolder.Entry> bagFiles = folder.list("gear", names);
        List<PlanFolder.Entry> tripFiles = folder.list("", names);
        before.around(List.of(slugs(tripFiles), slugs(siteFiles), slugs(bagFiles)));
        library.linking(new AuthorLinks(slugs(tripFiles), slugs(siteFiles), slugs(bagFiles)));
        siteFiles.forEach(this::site);
        bagFiles.forEach(this::bag);
        tripFiles.forEach(this::trip);
        if (folder.only() == null) {
            findings.addAll(names);
            besides.values().forEach(this::add);
        }
        if (tripFiles.stream().noneMatch(this::isAsked)) {
            folder.complain(findings);
        }
        List<Finding> sorted = findings.stream().sorted(BY_PLACE).toList();
        return new Plans(List.copyOf(trips), List.copyOf(sites), List.copyOf(bags), passed.shown(sorted),
                passed.errors() + count(Finding.Level.ERROR), passed.warnings() + count(Finding.Level.WARNING),
                List.copyOf(faulty), library.catalogue().all(), written, folder.path(),
                new TreeSet<>(slugs(tripFiles)), folder.only(), List.copyOf(others));
    }

    private static List<String> slugs(List<PlanFolder.Entry> files) {
        return files.stream().map(PlanFolder.Entry::slug).toList();
    }

    private boolean isAsked(PlanFolder.Entry file) {
        return folder.only() == null || file.path().getFileName().toString().equals(folder.only() + ".yaml");
    }

    private int count(Finding.Level level) {
        return (int) findings.stream().filter(finding -> finding.level() == level).count();
    }

    private void add(Findings found) {
        findings.addAll(found.all());
        passed.addAll(found.passed());
    }

    private void site(PlanFolder.Entry file) {
        Findings opened = file.open();
        Reading<SiteRead> reading = before.of(file, opened, library::named, () -> read(file, opened));
        SiteRead read = reading.value() == null ? SiteRead.unknown(library.catalogue()) : reading.value();
        // Faults of the tree, such as a key given twice, are counted before the reader begins.
        Site site = reading.found().errors() == 0 ? read.site() : null;
        library.add(file.slug(), site == read.site() ? read : new SiteRead(site, read.spots(), read.subjects()));
        written.sites.put(file.slug(), file::open);
        if (site != null) {
            sites.add(site);
        }
        besides.put(Library.SITES + file.slug(), reading.found());
    }

    private Reading<SiteRead> read(PlanFolder.Entry file, Findings found) {
        Node.Mapping node = TreeReader.read(found);
        if (node != null) {
            library.links().site(node, found);
        }
        return new Reading<>(node == null ? null : SiteReader.read(node, file.slug(), file.beside(), library.catalogue(), found),
                found, Set.of());
    }

    private void bag(PlanFolder.Entry file) {
        Findings opened = file.open();
        Reading<Bag> reading = before.of(file, opened, library::named, () -> {
            Node.Mapping node = TreeReader.read(opened);
            return new Reading<>(node == null ? null : BagReader.read(node, file.slug(), opened), opened, Set.of());
        });
        Bag bag = reading.found().errors() == 0 ? reading.value() : null;
        library.add(file.slug(), bag);
        written.bags.put(file.slug(), file::open);
        if (bag != null) {
            bags.add(bag);
        }
        besides.put(Library.BAGS + file.slug(), reading.found());
    }

    private void trip(PlanFolder.Entry file) {
        Findings opened = file.open();
        Reading<Trip> reading = before.of(file, opened, library::named, () -> readTrip(file, opened));
        Trip trip = reading.value();
        if (!isAsked(file)) {
            if (trip != null) {
                others.add(trip);
            }
            return;
        }
        if (trip == null) {
            faulty.add(file.path());
        } else {
            trips.add(trip);
            written.trips.put(file.slug(), file::open);
        }
        add(reading.found());
        if (folder.only() != null) {
            Set<String> named = reading.named();
            besides.keySet().retainAll(named);
            besides.values().forEach(this::add);
            sites.removeIf(site -> !named.contains(Library.SITES + site.slug()));
            bags.removeIf(bag -> !named.contains(Library.BAGS + bag.slug()));
        }
    }

    private Reading<Trip> readTrip(PlanFolder.Entry file, Findings found) {
        Node.Mapping node = TreeReader.read(found);
        Set<String> named = new TreeSet<>();
        String home = node == null ? null : home(node);
        if (home != null) {
            found.error(Pos.FILE, "this file is not a trip: it belongs in the folder '" + home + "'",
                    "a trip's file begins with 'trip: ' and a title");
        }
        return new Reading<>(node == null || home != null ? null
                : TripReader.read(node, file.slug(), library.noting(named), file.beside(), found), found, named);
    }

    /** The folder of a site or a bag among the trips; null for a trip. */
    private static @Nullable String home(Node.Mapping node) {
        Set<String> keys = node.entries().keySet();
        return keys.contains("trip") ? null : keys.contains("latitude") ? "sites" : keys.contains("bodies") ? "gear" : null;
    }
}
