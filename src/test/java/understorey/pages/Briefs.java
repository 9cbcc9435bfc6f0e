package understorey.pages;

import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import understorey.Places;
import understorey.brief.Brief;
import understorey.plan.Bag;
import understorey.plan.Display;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.reading.Plans;
import understorey.reading.PlansReader;
import understorey.schema.PlanFiles;

/** Briefs of many kinds, made once: every invented trip at every place, and the plans that come with the project. */
public final class Briefs {

    private static List<Brief> all;

    private Briefs() {
    }

    public static synchronized List<Brief> all() {
        if (all == null) {
            List<Brief> briefs = new ArrayList<>();
            for (Places place : Places.ALL) {
                briefs.add(Trips.brief(Trips.full(place, Trips.EXACT)));
                for (Bag bag : List.of(Trips.dayBag(), Trips.phone(), Trips.empty())) {
                    briefs.add(Trips.brief(Trips.bare(place, bag)));
                }
                briefs.add(Trips.brief(Trips.trip(place, Trips.COARSE, Trips.phone(), Trips.pictures(),
                        LocalTime.of(18, 0), LocalTime.of(20, 0), List.of())));
            }
            demo().trips().forEach(trip -> briefs.add(Trips.brief(trip)));
            all = List.copyOf(briefs);
        }
        return all;
    }

    /** The plans that come with the project. */
    public static Plans demo() {
        Plans plans = PlansReader.read(Path.of("plans"));
        if (plans.hasErrors() || plans.trips().isEmpty()) {
            throw new IllegalStateException("the demo does not read: " + plans.findings());
        }
        return plans;
    }

    /** Whether a page is of the manual, which is the same whatever the plans. */
    public static boolean manual(Page page) {
        return page.path().equals("format.html")
                || Chapter.all().stream().anyMatch(chapter -> page.path().equals(chapter.name() + ".html"));
    }

    /** The pages of some trips and of nothing else, under the built-in templates. */
    public static List<Page> pages(List<Trip> trips, List<Bag> bags) {
        return pages(SitePages.open(null, null, Display.USUAL), trips.stream().map(Trips::brief).toList(), List.of(), bags, demo().subjects());
    }

    /** The pages of some trips, and those that they share. */
    public static List<Page> pages(SitePages site, List<Brief> briefs, List<Site> idleSites, List<Bag> bags, List<Subject> subjects) {
        SharedPages shared = site.shared();
        List<Page> pages = new ArrayList<>();
        Neighbours neighbours = new Neighbours(briefs.stream().map(brief -> Neighbours.Dated.of(brief.trip(), brief.date())).toList());
        for (Brief brief : briefs) {
            SitePages.TripPages trip = site.trip(brief, neighbours);
            shared.add(trip.line(), trip.place(), trip.opening());
            pages.addAll(trip.pages());
        }
        pages.addAll(shared.pages(idleSites, bags, subjects, Manual.builtIn(PlanFiles.builtIn().reference())));
        return pages;
    }
}
