package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import understorey.brief.Brief;
import understorey.plan.Bag;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Trip;

/**
 * Every page of a folder of plans: the index, and for each trip the plan, the field sheet and its dark twin,
 * the Markdown twin, {@code plan.json}, {@code trip.ics} and {@code spots.gpx}; a page a site and a bag.
 */
public final class SitePages {

    /** What the index shows. */
    public record IndexPage(TemplateHTMLOutputModel css, List<Group> groups, List<Row> sites, List<Row> bags) {
    }

    /** Trips of one series, by date. */
    public record Group(String name, List<Card> trips) {
    }

    /** One trip on the index; {@code located} when it has a calendar and waypoints. */
    public record Card(String slug, String title, String date, String site, String pictures, String audience, boolean located) {
    }

    /** A site; there is light where a trip goes there, on that trip's date. */
    public record PlacePage(TemplateHTMLOutputModel css, PlaceView place, List<SpotView> light, String lightDate,
                            List<Row> trips) {
    }

    /** A bag. */
    public record BagPage(TemplateHTMLOutputModel css, BagView bag, List<Row> trips) {
    }

    /** The built-in subjects. */
    public record SubjectsPage(TemplateHTMLOutputModel css, List<SubjectLine> subjects) {
    }

    /** One trip: its own pages, what its plan found, and what the pages that it shares with others show of it. */
    public record TripPages(Brief brief, List<Page> pages, List<String> findings, Card card, List<SpotView> light) {
    }

    private final Templates templates;
    private final Sentences sentences;
    private final Prose prose = new Prose();
    private final TemplateHTMLOutputModel css;
    private final TemplateHTMLOutputModel sheetCss;
    private final TemplateHTMLOutputModel nightCss;

    private SitePages(Path folder) {
        templates = new Templates(folder);
        for (String page : List.of("plan.ftlh", "field-sheet.ftlh", "plan.md.ftl", "site.ftlh", "bag.ftlh", "index.ftlh")) {
            templates.open(page);
        }
        sentences = Sentences.of(templates);
        String style = templates.text("style.css");
        String sheet = style + templates.text("sheet.css");
        css = Templates.html(style);
        sheetCss = Templates.html(sheet);
        nightCss = Templates.html(sheet + templates.text("night.css"));
    }

    /**
     * Opens the templates.
     *
     * @param templates folder of the user's own; null for the built-in ones
     * @throws TemplateFault when one cannot be read
     */
    public static SitePages open(Path templates) {
        return new SitePages(templates);
    }

    /**
     * The pages of all trips and those that they share.
     *
     * @param briefs    of every trip, ready for its audience
     * @param idleSites that no trip goes to, ready for theirs
     * @param bags      with a file of their own
     * @param subjects  of the built-in catalogue
     * @throws TemplateFault when a template cannot be filled in
     */
    public List<Page> of(List<Brief> briefs, List<Site> idleSites, List<Bag> bags, List<Subject> subjects) {
        List<TripPages> trips = new ArrayList<>();
        List<Page> pages = new ArrayList<>();
        for (Brief brief : briefs) {
            TripPages trip = trip(brief);
            trips.add(trip);
            pages.addAll(trip.pages());
        }
        pages.addAll(shared(trips, idleSites, bags, subjects));
        return List.copyOf(pages);
    }

    /**
     * One trip, ready for its audience.
     *
     * @throws TemplateFault when a template cannot be filled in
     */
    public TripPages trip(Brief brief) {
        String folder = brief.trip().slug() + "/";
        PlanView view = PlanView.of(brief, css, sentences, prose);
        List<Page> pages = new ArrayList<>(List.of(
                new Page(folder + "index.html", templates.fill("plan.ftlh", view)),
                new Page(folder + "field-sheet.html",
                        templates.fill("field-sheet.ftlh", SheetPage.of(brief, view, sheetCss, false))),
                new Page(folder + "field-sheet-night.html",
                        templates.fill("field-sheet.ftlh", SheetPage.of(brief, view, nightCss, true))),
                new Page(folder + "plan.md", templates.fill("plan.md.ftl", view).replace('\u00a0', ' ')),
                new Page(folder + "plan.json", PlanJson.of(brief, reason -> sentences.of(reason).replace('\u00a0', ' ')))));
        if (!brief.trip().hidesTheDay()) {
            pages.add(new Page(folder + "trip.ics", TripCalendar.of(brief)));
            pages.add(new Page(folder + "spots.gpx", Waypoints.of(brief)));
        }
        return new TripPages(brief, List.copyOf(pages), findings(brief), card(brief), SpotView.of(brief, sentences));
    }

    /**
     * The pages that trips share: sites, bags, the index, the subjects.
     *
     * @throws TemplateFault when a template cannot be filled in
     */
    public List<Page> shared(List<TripPages> trips, List<Site> idleSites, List<Bag> bags, List<Subject> subjects) {
        List<Page> pages = new ArrayList<>();
        List<Row> places = new ArrayList<>();
        for (PlacePage place : places(trips, idleSites)) {
            places.add(new Row(place.place().name(), place.place().slug()));
            pages.add(new Page("sites/" + place.place().slug() + ".html", templates.fill("site.ftlh", place)));
        }
        List<Row> rows = new ArrayList<>();
        for (Bag bag : bags) {
            rows.add(new Row(bag.name(), bag.slug()));
            pages.add(bag(bag, trips));
        }
        pages.add(new Page("index.html", templates.fill("index.ftlh", new IndexPage(css, groups(trips), places, rows))));
        pages.add(new Page("subjects.html",
                templates.fill("subjects.ftlh", new SubjectsPage(css, SubjectLine.of(subjects)))));
        return pages;
    }

    /** What the plan of a trip found, warnings first, each with its level before it. */
    private List<String> findings(Brief brief) {
        List<String> lines = new ArrayList<>();
        for (PlanView.Remark remark : PlanView.findings(brief, sentences)) {
            lines.add((remark.warning() ? "warning: " : "note: ") + remark.text().replace('\u00a0', ' '));
        }
        return lines;
    }

    /** One page a name: where trips show a site to several audiences, the page is the most public one. */
    private List<PlacePage> places(List<TripPages> trips, List<Site> idleSites) {
        Map<String, List<TripPages>> bySite = new TreeMap<>();
        for (TripPages trip : trips) {
            bySite.computeIfAbsent(trip.brief().trip().site().slug(), slug -> new ArrayList<>()).add(trip);
        }
        List<PlacePage> pages = new ArrayList<>();
        for (List<TripPages> here : bySite.values()) {
            TripPages shown = here.get(0);
            for (TripPages trip : here) {
                shown = byAudience(trip.brief().trip(), shown.brief().trip()) > 0 ? trip : shown;
            }
            Trip trip = shown.brief().trip();
            pages.add(new PlacePage(css, PlaceView.of(trip.site(), trip.precision(), trip.sparesThePlace(), prose), shown.light(),
                    Words.onDay(trip, shown.brief().date()), links(here)));
        }
        for (Site site : idleSites) {
            if (!bySite.containsKey(site.slug())) {
                pages.add(new PlacePage(css, PlaceView.of(site, site.sensitive() ? Share.Precision.COARSE : Share.Precision.EXACT,
                        site.sensitive(), prose), List.of(), null, List.of()));
            }
        }
        return pages;
    }

    private static int byAudience(Trip one, Trip other) {
        int audience = one.audience().compareTo(other.audience());
        return audience != 0 ? audience : one.precision().compareTo(other.precision());
    }

    private Page bag(Bag bag, List<TripPages> trips) {
        List<TripPages> with = new ArrayList<>();
        for (TripPages trip : trips) {
            if (bag.slug().equals(trip.brief().trip().gear().slug())) {
                with.add(trip);
            }
        }
        return new Page("gear/" + bag.slug() + ".html",
                templates.fill("bag.ftlh", new BagPage(css, BagView.of(bag), links(with))));
    }

    private static List<Row> links(List<TripPages> trips) {
        List<Row> links = new ArrayList<>();
        for (TripPages trip : trips) {
            links.add(new Row(trip.card().title(), trip.card().slug()));
        }
        return links;
    }

    /** Trips by series, in each by date. */
    private static List<Group> groups(List<TripPages> trips) {
        List<TripPages> byDate = new ArrayList<>(trips);
        byDate.sort(Comparator.comparing((TripPages trip) -> trip.brief().date())
                .thenComparing(trip -> trip.card().slug()));
        Map<String, List<Card>> groups = new LinkedHashMap<>();
        for (TripPages trip : byDate) {
            String series = trip.brief().trip().series();
            groups.computeIfAbsent(series == null ? "Single trips" : series, name -> new ArrayList<>()).add(trip.card());
        }
        List<Group> series = new ArrayList<>();
        groups.forEach((name, cards) -> series.add(new Group(name, cards)));
        return series;
    }

    private static Card card(Brief brief) {
        int pictures = brief.timed().size();
        return new Card(brief.trip().slug(), brief.trip().title(), Words.day(brief.trip(), brief.date()),
                brief.trip().site().name(), pictures + (pictures == 1 ? " picture" : " pictures"),
                Words.audience(brief.trip().audience()), !brief.trip().hidesTheDay());
    }
}
