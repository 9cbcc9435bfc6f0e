package understorey.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import understorey.brief.Brief;
import understorey.pages.Page;
import understorey.pages.SitePages;
import understorey.pages.TemplateFault;
import understorey.plan.Bag;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.publish.Links;
import understorey.reading.Finding;
import understorey.reading.Plans;
import understorey.share.Sharing;

/**
 * All pages of a folder of plans, in memory: what {@code build} writes and {@code check} only tries. A fault of the
 * tool in one trip is a finding, and the other trips go on.
 */
final class SiteBuild {

    /**
     * What came of it.
     *
     * @param pages    of all that could be made; null when nothing can be published
     * @param trips    that could be made
     * @param failed   trips that read well and could not be made
     * @param findings what went wrong on the way
     */
    record Made(List<Page> pages, List<SitePages.TripPages> trips, List<Trip> failed, Set<Finding> findings) {

        boolean hasErrors() {
            return findings.stream().anyMatch(finding -> finding.level() == Finding.Level.ERROR);
        }
    }

    private final Terminal terminal;
    private final Function<Trip, Brief> planner;
    private final List<SitePages.TripPages> trips = new ArrayList<>();
    private final List<Trip> failed = new ArrayList<>();
    private final Set<Finding> findings = new LinkedHashSet<>();
    /** The site behind each name that a page of a site has. */
    private final Map<String, String> places = new HashMap<>();
    private boolean mixedUp;

    SiteBuild(Terminal terminal, Function<Trip, Brief> planner) {
        this.terminal = terminal;
        this.planner = planner;
    }

    /**
     * Makes the pages.
     *
     * @param audience  trips for fewer people are passed over
     * @param templates folder of the user's own; null for the built-in ones
     */
    Made make(Plans plans, Share.Audience audience, Path templates) {
        List<Page> pages = new ArrayList<>();
        try {
            SitePages site = SitePages.open(templates);
            for (Trip trip : plans.trips()) {
                if (trip.audience().compareTo(audience) >= 0) {
                    add(plans, trip, site);
                }
            }
            trips.forEach(trip -> pages.addAll(trip.pages()));
            List<Site> idle = idleSites(plans, audience);
            if (mixedUp) {
                return new Made(null, trips, failed, findings);
            }
            pages.addAll(site.shared(trips, idle, bags(plans, audience), plans.subjects()));
        } catch (TemplateFault fault) {
            findings.add(finding(fault));
            return new Made(null, trips, failed, findings);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            terminal.trace(fault);
            findings.add(error("understorey", says(fault), null));
            return new Made(null, trips, failed, findings);
        }
        for (Links.Broken link : Links.broken(pages, elsewhere(plans))) {
            findings.add(error(link.page(), "broken link '" + link.link() + "'", null));
        }
        return new Made(pages, trips, failed, findings);
    }

    private void add(Plans plans, Trip trip, SitePages site) {
        try {
            Trip shared = Sharing.forAudience(trip);
            claim(plans.shown(trip.slug() + ".yaml"), trip.site(), shared.site());
            trips.add(site.trip(planner.apply(shared)));
        } catch (TemplateFault fault) {
            if (fault.endless()) {
                throw fault;
            }
            failed.add(trip);
            findings.add(finding(fault));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            failed.add(trip);
            terminal.trace(fault);
            findings.add(error(plans.shown(trip.slug() + ".yaml"), says(fault), null));
        }
    }

    private static String says(Throwable fault) {
        return FaultMessage.says(fault).lines().findFirst().orElse("");
    }

    /** Two sites behind one name would be taken for each other: each page shows one site. */
    private void claim(String file, Site site, Site shared) {
        String other = places.putIfAbsent(shared.slug(), site.slug());
        if (other != null && !other.equals(site.slug())) {
            mixedUp = true;
            findings.add(error(file, "two sites, '" + other + "' and '" + site.slug() + "', are called '"
                    + shared.name() + "' on public pages", "give each its own public_name"));
        }
    }

    private static Finding error(String file, String text, String help) {
        return new Finding(Finding.Level.ERROR, file, 0, 0, 0, text, help, null);
    }

    private static Finding finding(TemplateFault fault) {
        return new Finding(Finding.Level.ERROR, fault.file(), fault.line(), fault.column(), 1, fault.getMessage(), null, null);
    }

    /** The folders of trips that this build makes no pages of, though a page of an earlier one may be there. */
    private Set<String> elsewhere(Plans plans) {
        Set<String> folders = new HashSet<>();
        for (Trip trip : failed) {
            folders.add(trip.slug());
        }
        for (Path trip : plans.faultyTrips()) {
            folders.add(trip.getFileName().toString().replace(".yaml", ""));
        }
        if (plans.only() != null) {
            folders.addAll(plans.names());
            folders.remove(plans.only());
        }
        return folders;
    }

    /** Everyone may see a bag that a trip of theirs carries, the author all of them. */
    private List<Bag> bags(Plans plans, Share.Audience audience) {
        if (audience == Share.Audience.PRIVATE) {
            return plans.bags();
        }
        List<Bag> carried = new ArrayList<>();
        for (Bag bag : plans.bags()) {
            if (trips.stream().anyMatch(trip -> bag.slug().equals(trip.brief().trip().gear().slug()))) {
                carried.add(bag);
            }
        }
        return carried;
    }

    /** Sites that no trip goes to; a sensitive one shows itself to anyone only as it would to the public. */
    private List<Site> idleSites(Plans plans, Share.Audience audience) {
        List<Site> idle = new ArrayList<>();
        for (Site site : plans.sites()) {
            boolean visited = plans.trips().stream().anyMatch(trip -> trip.site().slug().equals(site.slug()));
            if (!visited && (audience == Share.Audience.PRIVATE || !site.sensitive())) {
                Site shared = Sharing.forAudience(site,
                        site.sensitive() ? Share.Audience.PUBLIC : audience, Share.Precision.EXACT);
                claim(plans.shown("sites/" + site.slug() + ".yaml"), site, shared);
                idle.add(shared);
            }
        }
        return idle;
    }
}
