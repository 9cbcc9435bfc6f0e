package understorey.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.share.Leak;
import understorey.share.Leaks;
import understorey.yaml.finding.Finding;
import understorey.yaml.tree.Locator;

/** Stops public pages that would give a sensitive place away: each text that does is an error of its file. */
final class PlaceLeaks {

    /** The note on findings that are not shown comes last in its file. */
    private static final Comparator<Finding> BY_PLACE = Comparator.comparing(Finding::file)
            .thenComparing(finding -> finding.level() == Finding.Level.NOTE).thenComparing(Finding::line).thenComparing(Finding::column);

    /** What a trip would tell. */
    private record Told(List<Leak> leaks) {
    }

    private PlaceLeaks() {
    }

    /** The plans without the trips and sites whose public pages would tell a place, and with the findings that say so. */
    static Plans stopped(Plans plans, Recall recall) {
        Set<Finding> findings = new LinkedHashSet<>(plans.findings());
        List<Trip> trips = new ArrayList<>();
        for (Trip trip : plans.trips()) {
            List<Leak> leaks = recall.of(Told.class, trip.slug(), List.of(trip), () -> new Told(Leaks.of(trip))).leaks();
            if (leaks.isEmpty()) {
                trips.add(trip);
            } else {
                findings.addAll(findings(leaks, plans.places().trip(trip.slug())));
            }
        }
        List<Site> sites = new ArrayList<>();
        for (Site site : plans.sites()) {
            List<Leak> leaks = goes(plans.trips(), site) ? List.of() : Leaks.of(site);
            if (leaks.isEmpty() && goes(plans.trips(), site) == goes(trips, site)) {
                sites.add(site);
            }
            findings.addAll(findings(leaks, plans.places().site(site.slug())));
        }
        return plans.with(trips, sites, findings.stream().sorted(BY_PLACE).toList());
    }

    private static boolean goes(List<Trip> trips, Site site) {
        return trips.stream().anyMatch(trip -> trip.site().slug().equals(site.slug()));
    }

    private static Collection<Finding> findings(List<Leak> leaks, Locator places) {
        Set<Finding> findings = new LinkedHashSet<>();
        for (Leak leak : leaks) {
            String quoted = '"' + leak.text() + '"';
            String reviewed = "reword it, or let it through with 'share: {reviewed: [" + quoted + "]}'";
            findings.add(switch (leak.what()) {
                case POSITION -> places.finding(Finding.Level.ERROR, leak.path(), quoted + " reads as a position, and public pages hide this place",
                        "leave it out");
                case NAME -> places.finding(Finding.Level.ERROR, leak.path(), leak.path().isEmpty()
                        ? "the name of this file comes near a name that public pages hide: " + quoted
                        : quoted + " comes near a name that public pages hide", leak.path().isEmpty()
                        ? "rename the file, or let it through with 'share: {reviewed: [" + quoted + "]}'" : reviewed);
                case LINK -> places.finding(Finding.Level.ERROR, leak.path(), "this link may lead to a place that public pages hide: " + leak.text(),
                        "leave it out, or let it through with 'share: {reviewed: [" + quoted + "]}'");
            });
        }
        return findings;
    }
}
