package understorey.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.pages.Address;
import understorey.pages.Manual;
import understorey.pages.Neighbours;
import understorey.pages.Page;
import understorey.pages.SharedPages;
import understorey.pages.SitePages;
import understorey.pages.Sketch;
import understorey.pages.TripLine;
import understorey.pages.Visited;
import understorey.pages.words.TemplateFault;
import understorey.plan.Bag;
import understorey.plan.Display;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.preview.FolderState;
import understorey.publish.Links;
import understorey.reading.Plans;
import understorey.schema.PlanFiles;
import understorey.share.Leaks;
import understorey.share.Sharing;
import understorey.yaml.finding.Finding;

/**
 * The pages of a folder of plans, trip by trip on all cores: what {@code build} writes and {@code check} only tries. Of each
 * trip only a line stays. What comes of it, and in which order, does not depend on the number of threads. A fault of the
 * tool in one trip is a finding, and the other trips go on.
 */
final class SiteBuild {

    /**
     * What came of it.
     *
     * @param whole    false when nothing can be published
     * @param pages    names of those made
     * @param trips    that could be made
     * @param failed   trips that read well and could not be made
     * @param findings what went wrong on the way
     */
    record Made(boolean whole, Set<String> pages, List<TripLine> trips, List<Trip> failed, Set<Finding> findings) {

        boolean hasErrors() {
            return findings.stream().anyMatch(finding -> finding.level() == Finding.Level.ERROR);
        }
    }

    /** Takes pages as soon as they are made, from several threads, each with its turn among all; false to stop. */
    interface Sink {

        boolean stage(int turn, List<Page> pages);

        /** Gets the plan of a trip before it is staged with the other pages, for a reader who waits for it. */
        default void early(Page plan) {
        }
    }

    /** What stays of a trip, with the site as its audience sees it. */
    private sealed interface Left {
    }

    private record Built(Site site, TripLine line, Visited place, Sketch opening, List<Links.Seen> links, boolean goOn) implements Left {
    }

    /** The site is null where the trip failed before it. */
    private record Failed(@Nullable Site site, Throwable fault) implements Left {
    }

    private final Progress progress;
    private final Function<Trip, Brief> planner;
    private final int threads;
    private final Recall recall;
    private final List<TripLine> trips = new ArrayList<>();
    private final List<Links.Seen> links = new ArrayList<>();
    private final List<Trip> failed = new ArrayList<>();
    private final Set<Finding> findings = new LinkedHashSet<>();
    /** The site behind each name that a page of a site has. */
    private final Map<String, String> places = new HashMap<>();
    private boolean mixedUp;

    SiteBuild(Progress progress, Function<Trip, Brief> planner, Recall recall) {
        this(progress, planner, recall, Runtime.getRuntime().availableProcessors());
    }

    SiteBuild(Progress progress, Function<Trip, Brief> planner, Recall recall, int threads) {
        this.progress = progress;
        this.planner = planner;
        this.recall = recall;
        this.threads = threads;
    }

    /**
     * Makes the pages.
     *
     * @param audience  trips for fewer people are passed over
     * @param templates folder of the user's own; null for the built-in ones
     * @param address   of the site; null for none
     * @param units     of all pages; null for those that each trip has
     */
    Made make(Plans plans, Share.Audience audience, @Nullable Path templates, @Nullable Address address,
              Display.@Nullable UnitSystem units, Sink sink) {
        try {
            List<Trip> due = plans.trips().stream().filter(trip -> trip.audience().compareTo(audience) >= 0)
                    .map(trip -> trip.shown(trip.display().in(units))).toList();
            Display display = Display.shared(due.stream().map(Trip::display).toList()).in(units);
            SitePages site = recall.of(SitePages.class, "", Arrays.asList(FolderState.of(templates), address, display),
                    () -> SitePages.open(templates, address, display));
            SharedPages shared = site.shared();
            CompletableFuture<Neighbours> neighbours = CompletableFuture.supplyAsync(() -> neighbours(plans, due, audience));
            progress.stage("trips");
            if (!add(plans, due, neighbours, site, shared, sink)) {
                return made(true);
            }
            List<Site> idle = idleSites(plans, audience);
            if (mixedUp) {
                return made(false);
            }
            progress.stage("shared pages");
            List<Page> pages = shared.pages(idle, bags(plans, audience), plans.subjects(),
                    audience == Share.Audience.PRIVATE ? recall.of(Manual.class, "", List.of(), () -> Manual.builtIn(PlanFiles.builtIn().reference())) : null);
            pages.forEach(page -> links.add(Links.Seen.of(page)));
            sink.stage(due.size(), pages);
        } catch (TemplateFault fault) {
            findings.add(finding(fault));
            return made(false);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            findings.add(error("understorey", says(fault), null));
            return made(false);
        }
        progress.stage("links");
        for (Links.Broken link : Links.broken(links, elsewhere(plans))) {
            findings.add(error(link.page(), "broken link '" + link.link() + "'", null));
        }
        return made(true);
    }

    private Made made(boolean whole) {
        return new Made(whole, links.stream().map(Links.Seen::page).collect(Collectors.toCollection(LinkedHashSet::new)), trips, failed, findings);
    }

    /** False when the pages cannot be stored: then the trips after it are left. */
    private boolean add(Plans plans, List<Trip> due, CompletableFuture<Neighbours> neighbours, SitePages site, SharedPages shared, Sink sink) {
        List<Integer> turns = IntStream.range(0, due.size()).boxed().toList();
        try (InOrder<Integer, Left> trips = new InOrder<>(turns, threads, turn -> make(due.get(turn), site, neighbours, turn, sink))) {
            for (int turn : turns) {
                if (!add(plans, due.get(turn), trips.next(), shared)) {
                    return false;
                }
                progress.done(turn + 1, due.size());
            }
        }
        return true;
    }

    /** By the dates of all trips, which are known only when the best days are chosen; trips that are not built now count too. */
    private Neighbours neighbours(Plans plans, List<Trip> due, Share.Audience audience) {
        List<Trip> all = new ArrayList<>(due);
        plans.others().stream().filter(trip -> trip.audience().compareTo(audience) >= 0 && Leaks.of(trip).isEmpty()).forEach(all::add);
        List<Neighbours.Dated> dated = new ArrayList<>();
        try (InOrder<Trip, Neighbours.@Nullable Dated> dates = new InOrder<>(all, threads, this::dated)) {
            while (dates.hasNext()) {
                Neighbours.Dated trip = dates.next();
                if (trip != null) {
                    dated.add(trip);
                }
            }
        }
        return new Neighbours(dated);
    }

    /** Null for a trip that cannot be planned; its own turn says why. */
    private Neighbours.@Nullable Dated dated(Trip trip) {
        try {
            return recall.of(Neighbours.Dated.class, trip.slug(), List.of(trip), () -> {
                Trip shared = Sharing.forAudience(trip);
                return Neighbours.Dated.of(shared, Planner.date(shared));
            });
        } catch (RuntimeException | StackOverflowError fault) {
            return null;
        }
    }

    /** Everything about one trip, on any thread. */
    private Left make(Trip trip, SitePages site, CompletableFuture<Neighbours> neighbours, int turn, Sink sink) {
        Site shown = null;
        try {
            Trip shared = recall.of(Trip.class, trip.slug(), List.of(trip), () -> Sharing.forAudience(trip));
            shown = shared.site();
            return recall.of(Built.class, trip.slug(), List.of(shared, site, neighbours.join().of(shared)), () -> {
                SitePages.TripPages made = site.trip(recall.of(Brief.class, trip.slug(), List.of(shared), () -> planner.apply(shared)), neighbours.join(), sink::early);
                List<Links.Seen> seen = made.pages().stream().map(Links.Seen::of).toList();
                return new Built(shared.site(), made.line(), made.place(), made.opening().kept(), seen, sink.stage(turn, made.pages()));
            });
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError fault) {
            return new Failed(shown, fault);
        }
    }

    private boolean add(Plans plans, Trip trip, Left left, SharedPages shared) {
        String file = plans.shown(trip.slug() + ".yaml");
        if (left instanceof Built built) {
            claim(file, trip.site(), built.site());
            trips.add(built.line());
            links.addAll(built.links());
            shared.add(built.line(), built.place(), built.opening());
            return built.goOn();
        }
        Failed odd = (Failed) left;
        if (odd.site() != null) {
            claim(file, trip.site(), odd.site());
        }
        if (odd.fault() instanceof TemplateFault fault && fault.endless()) {
            throw fault;
        }
        failed.add(trip);
        if (odd.fault() instanceof TemplateFault fault) {
            findings.add(finding(fault));
        } else {
            findings.add(error(file, says(odd.fault()), null));
        }
        return true;
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

    private static Finding error(String file, String text, @Nullable String help) {
        return new Finding(Finding.Level.ERROR, file, 0, 0, 0, text, help, null);
    }

    private static Finding finding(TemplateFault fault) {
        return new Finding(Finding.Level.ERROR, fault.file(), fault.line(), fault.column(), 1,
                Objects.requireNonNullElse(fault.getMessage(), ""), null, null);
    }

    /** The folders of trips that this build makes no pages of, though a page of an earlier one may be there. */
    private Set<String> elsewhere(Plans plans) {
        Set<String> folders = new HashSet<>();
        failed.forEach(trip -> folders.add(trip.slug()));
        plans.faultyTrips().forEach(trip -> folders.add(trip.getFileName().toString().replace(".yaml", "")));
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
        return plans.bags().stream()
                .filter(bag -> trips.stream().anyMatch(trip -> Objects.equals(bag.slug(), trip.bag()))).toList();
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
