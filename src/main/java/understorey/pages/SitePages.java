package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
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

    /** One trip on the index. */
    public record Card(String slug, String title, String date, String site, String pictures, String audience) {
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

    private final Templates templates;
    private final Sentences sentences;
    private final Prose prose = new Prose();
    private final TemplateHTMLOutputModel css;
    private final TemplateHTMLOutputModel sheetCss;
    private final TemplateHTMLOutputModel nightCss;
    private final List<Page> pages = new ArrayList<>();
    private final List<Row> places = new ArrayList<>();

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
     * Opens the templates, so that they may be read while the plans still are.
     *
     * @param templates folder of the user's own; null for the built-in ones
     * @throws TemplateFault when one cannot be read
     */
    public static SitePages open(Path templates) {
        SitePages pages = new SitePages(templates);
        pages.prose.open();
        return pages;
    }

    /**
     * The pages.
     *
     * @param briefs    of every trip, ready for its audience
     * @param idleSites that no trip goes to, ready for theirs
     * @param bags      with a file of their own
     * @param subjects  of the built-in catalogue
     * @throws TemplateFault when a template cannot be filled in
     */
    public List<Page> of(List<Brief> briefs, List<Site> idleSites, List<Bag> bags, List<Subject> subjects) {
        CompletableFuture<List<Page>> catalogue = CompletableFuture.supplyAsync(() -> List.of(new Page("subjects.html",
                templates.fill("subjects.ftlh", new SubjectsPage(css, SubjectLine.of(subjects))))));
        for (Brief brief : briefs) {
            trip(brief);
        }
        sites(briefs, idleSites);
        for (Bag bag : bags) {
            bag(bag, briefs);
        }
        index(briefs, bags);
        pages.addAll(joined(catalogue));
        return List.copyOf(pages);
    }

    /** What the plan of a trip found, warnings first, each with its level before it. */
    public List<String> findings(Brief brief) {
        List<String> lines = new ArrayList<>();
        for (PlanView.Remark remark : PlanView.findings(brief, sentences)) {
            lines.add((remark.warning() ? "warning: " : "note: ") + remark.text().replace('\u00a0', ' '));
        }
        return lines;
    }

    private void trip(Brief brief) {
        String folder = brief.trip().slug() + "/";
        CompletableFuture<List<Page>> files = CompletableFuture.supplyAsync(() -> files(brief, folder));
        PlanView view = PlanView.of(brief, css, sentences, prose);
        add(folder + "index.html", templates.fill("plan.ftlh", view));
        add(folder + "field-sheet.html", templates.fill("field-sheet.ftlh", SheetPage.of(brief, view, sheetCss, false)));
        add(folder + "field-sheet-night.html", templates.fill("field-sheet.ftlh", SheetPage.of(brief, view, nightCss, true)));
        add(folder + "plan.md", templates.fill("plan.md.ftl", view).replace('\u00a0', ' '));
        pages.addAll(joined(files));
    }

    /** What programs read; written on another core while the templates are filled. */
    private List<Page> files(Brief brief, String folder) {
        return List.of(
                new Page(folder + "plan.json", PlanJson.of(brief, reason -> sentences.of(reason).replace('\u00a0', ' '))),
                new Page(folder + "trip.ics", TripCalendar.of(brief)),
                new Page(folder + "spots.gpx", Waypoints.of(brief)));
    }

    private static List<Page> joined(CompletableFuture<List<Page>> files) {
        try {
            return files.join();
        } catch (CompletionException wrapped) {
            if (wrapped.getCause() instanceof RuntimeException fault) {
                throw fault;
            }
            throw wrapped;
        }
    }

    /** One page a name: where trips show a site to several audiences, the page is the most public one. */
    private void sites(List<Brief> briefs, List<Site> idleSites) {
        Map<String, List<Brief>> trips = new TreeMap<>();
        for (Brief brief : briefs) {
            String slug = brief.trip().site().slug();
            if (!trips.containsKey(slug)) {
                trips.put(slug, new ArrayList<>());
            }
            trips.get(slug).add(brief);
        }
        for (List<Brief> here : trips.values()) {
            Brief shown = here.get(0);
            for (Brief brief : here) {
                shown = byAudience(brief.trip(), shown.trip()) > 0 ? brief : shown;
            }
            place(PlaceView.of(shown.trip().site(), shown.trip().precision(), prose), shown, here);
        }
        for (Site site : idleSites) {
            if (!trips.containsKey(site.slug())) {
                place(PlaceView.of(site, site.sensitive() ? Share.Precision.COARSE : Share.Precision.EXACT, prose),
                        null, List.of());
            }
        }
    }

    private static int byAudience(Trip one, Trip other) {
        int audience = one.audience().compareTo(other.audience());
        return audience != 0 ? audience : one.precision().compareTo(other.precision());
    }

    private void place(PlaceView place, Brief shown, List<Brief> trips) {
        places.add(new Row(place.name(), place.slug()));
        add("sites/" + place.slug() + ".html", templates.fill("site.ftlh", new PlacePage(css, place,
                shown == null ? List.of() : SpotView.of(shown, sentences),
                shown == null ? null : Words.day(shown.date()), links(trips))));
    }

    private void bag(Bag bag, List<Brief> briefs) {
        List<Brief> with = new ArrayList<>();
        for (Brief brief : briefs) {
            if (bag.slug().equals(brief.trip().gear().slug())) {
                with.add(brief);
            }
        }
        add("gear/" + bag.slug() + ".html",
                templates.fill("bag.ftlh", new BagPage(css, BagView.of(bag), links(with))));
    }

    private static List<Row> links(List<Brief> trips) {
        List<Row> links = new ArrayList<>();
        for (Brief brief : trips) {
            links.add(new Row(brief.trip().title(), brief.trip().slug()));
        }
        return links;
    }

    private void index(List<Brief> briefs, List<Bag> bags) {
        List<Brief> byDate = new ArrayList<>(briefs);
        byDate.sort(SitePages::byDate);
        Map<String, List<Card>> groups = new LinkedHashMap<>();
        for (Brief brief : byDate) {
            String series = brief.trip().series() == null ? "Single trips" : brief.trip().series();
            if (!groups.containsKey(series)) {
                groups.put(series, new ArrayList<>());
            }
            groups.get(series).add(card(brief));
        }
        List<Group> series = new ArrayList<>();
        for (Map.Entry<String, List<Card>> group : groups.entrySet()) {
            series.add(new Group(group.getKey(), group.getValue()));
        }
        List<Row> rows = new ArrayList<>();
        for (Bag bag : bags) {
            rows.add(new Row(bag.name(), bag.slug()));
        }
        add("index.html", templates.fill("index.ftlh", new IndexPage(css, series, places, rows)));
    }

    private static int byDate(Brief one, Brief other) {
        int day = one.date().compareTo(other.date());
        return day != 0 ? day : one.trip().slug().compareTo(other.trip().slug());
    }

    private static Card card(Brief brief) {
        int pictures = brief.timed().size();
        return new Card(brief.trip().slug(), brief.trip().title(), Words.day(brief.date()),
                brief.trip().site().name(), pictures + (pictures == 1 ? " picture" : " pictures"),
                Words.audience(brief.trip().audience()));
    }

    private void add(String path, String content) {
        pages.add(new Page(path, content));
    }
}
