package understorey.reading;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import understorey.plan.Bag;
import understorey.plan.Site;
import understorey.plan.Trip;

/** Reads a folder of plans: trips in it, sites in {@code sites}, bags in {@code gear}. */
public final class PlansReader {

    private final PlanFolder folder;
    private final Library library = new Library(SubjectCatalogue.builtIn());
    private final Set<Finding> findings = new LinkedHashSet<>();
    private final Passed passed = new Passed();
    private final List<Trip> trips = new ArrayList<>();
    private final List<Site> sites = new ArrayList<>();
    private final List<Bag> bags = new ArrayList<>();
    private final List<Path> faulty = new ArrayList<>();

    private PlansReader(PlanFolder folder) {
        this.folder = folder;
    }

    /**
     * Everything that the folder says. Never throws for a mistake of the author's; a folder that is
     * missing, or holds no trip, is a finding too.
     */
    public static Plans read(Path plansFolder) {
        return new PlansReader(new PlanFolder(plansFolder)).plans();
    }

    private Plans plans() {
        for (PlanFolder.Entry file : folder.list("sites", findings)) {
            site(file);
        }
        for (PlanFolder.Entry file : folder.list("gear", findings)) {
            bag(file);
        }
        List<PlanFolder.Entry> files = folder.list("", findings);
        for (PlanFolder.Entry file : files) {
            trip(file);
        }
        if (files.isEmpty()) {
            folder.complain(findings);
        }
        List<Finding> sorted = new ArrayList<>(findings);
        sorted.sort(PlansReader::byPlace);
        return new Plans(List.copyOf(trips), List.copyOf(sites), List.copyOf(bags), passed.shown(sorted),
                passed.errors() + count(Finding.Level.ERROR), passed.warnings() + count(Finding.Level.WARNING),
                List.copyOf(faulty), library.catalogue().all());
    }

    private int count(Finding.Level level) {
        int count = 0;
        for (Finding finding : findings) {
            count += finding.level() == level ? 1 : 0;
        }
        return count;
    }

    private void add(Findings found) {
        findings.addAll(found.all());
        passed.addAll(found.passed());
    }

    private static int byPlace(Finding one, Finding other) {
        int file = one.file().compareTo(other.file());
        int line = file != 0 ? file : Integer.compare(one.line(), other.line());
        return line != 0 ? line : Integer.compare(one.column(), other.column());
    }

    private void site(PlanFolder.Entry file) {
        Findings found = file.open();
        Node.Mapping node = TreeReader.read(found);
        SiteRead read = node == null ? SiteRead.unknown(library.catalogue())
                : SiteReader.read(node, file.slug(), file.beside(), library.catalogue(), found);
        // Faults of the tree, such as a key given twice, are counted before the reader begins.
        boolean whole = found.errors() == 0;
        library.add(file.slug(), whole ? read : new SiteRead(null, read.spots(), read.subjects()));
        if (whole) {
            sites.add(read.site());
        }
        add(found);
    }

    private void bag(PlanFolder.Entry file) {
        Findings found = file.open();
        Node.Mapping node = TreeReader.read(found);
        Bag bag = node == null ? null : BagReader.read(node, file.slug(), found);
        boolean whole = bag != null && found.errors() == 0;
        library.add(file.slug(), whole ? bag : null);
        if (whole) {
            bags.add(bag);
        }
        add(found);
    }

    private void trip(PlanFolder.Entry file) {
        Findings found = file.open();
        Node.Mapping node = TreeReader.read(found);
        Trip trip = node == null ? null : TripReader.read(node, file.slug(), library, file.beside(), found);
        if (trip == null) {
            faulty.add(file.path());
        } else {
            trips.add(trip);
        }
        add(found);
    }
}
