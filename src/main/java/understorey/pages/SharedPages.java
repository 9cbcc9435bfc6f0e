package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.pages.html.BagView;
import understorey.pages.html.PlaceView;
import understorey.pages.tables.Row;
import understorey.pages.html.SpotView;
import understorey.pages.html.SubjectLine;
import understorey.pages.json.PlanJson;
import understorey.pages.markdown.Prose;
import understorey.pages.templates.Templates;
import understorey.pages.words.TemplateFault;
import understorey.plan.Bag;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Subject;

/** Pages that trips share: the index, a page a site and a bag, the subjects. Of each trip it keeps what these show. */
public final class SharedPages {

    /** What the index shows. */
    public record IndexPage(TemplateHTMLOutputModel css, List<Group> groups, List<Row> sites, List<Row> bags) {
    }

    /** Trips of one series, by date. */
    public record Group(String name, List<TripLine.Card> trips) {
    }

    /** A site; there is light where a trip goes there, on that trip's date. */
    public record PlacePage(TemplateHTMLOutputModel css, PlaceView place, List<SpotView> light, @Nullable String lightDate,
                            List<Row> trips) {
    }

    /** A bag. */
    public record BagPage(TemplateHTMLOutputModel css, BagView bag, List<Row> trips) {
    }

    /** The built-in subjects. */
    public record SubjectsPage(TemplateHTMLOutputModel css, List<SubjectLine> subjects) {
    }

    private final Templates templates;
    private final TemplateHTMLOutputModel css;
    private final Prose prose;
    private final List<TripLine> trips = new ArrayList<>();
    /** One page a name: where trips show a site to several audiences, the page is the most public one. */
    private final Map<String, Visited> places = new TreeMap<>();

    SharedPages(Templates templates, TemplateHTMLOutputModel css, Prose prose) {
        this.templates = templates;
        this.css = css;
        this.prose = prose;
    }

    /** Adds what these pages show of a trip; of two as public as each other, the first shows the site. */
    public void add(TripLine trip, Visited place) {
        trips.add(trip);
        places.merge(trip.site(), place, (shown, other) -> other.isMorePublic(shown) ? other : shown);
    }

    /**
     * The pages.
     *
     * @param idleSites that no trip goes to, ready for their audience
     * @param bags      with a file of their own
     * @param subjects  of the built-in catalogue
     * @throws TemplateFault when a template cannot be filled in
     */
    public List<Page> pages(List<Site> idleSites, List<Bag> bags, List<Subject> subjects) {
        List<Page> pages = new ArrayList<>();
        List<Row> sites = new ArrayList<>();
        for (PlacePage place : places(idleSites)) {
            sites.add(new Row(place.place().name(), place.place().slug()));
            pages.add(new Page("sites/" + place.place().slug() + ".html", templates.fill("site.ftlh", place)));
        }
        List<Row> rows = new ArrayList<>();
        for (Bag bag : bags) {
            String slug = bag.slug();
            if (slug != null) {
                rows.add(new Row(bag.name(), slug));
                pages.add(new Page("gear/" + slug + ".html", templates.fill("bag.ftlh",
                        new BagPage(css, BagView.of(bag), links(trip -> slug.equals(trip.bag()))))));
            }
        }
        pages.add(new Page("index.html", templates.fill("index.ftlh", new IndexPage(css, groups(), sites, rows))));
        pages.add(new Page("plan.schema.json", PlanJson.schema()));
        pages.add(new Page("subjects.html",
                templates.fill("subjects.ftlh", new SubjectsPage(css, SubjectLine.of(subjects)))));
        return pages;
    }

    private List<PlacePage> places(List<Site> idleSites) {
        List<PlacePage> pages = new ArrayList<>();
        places.forEach((slug, shown) -> pages.add(new PlacePage(css,
                PlaceView.of(shown.site(), shown.precision(), shown.spared(), prose), shown.light(), shown.date(),
                links(trip -> trip.site().equals(slug)))));
        for (Site site : idleSites) {
            if (!places.containsKey(site.slug())) {
                pages.add(new PlacePage(css, PlaceView.of(site, site.sensitive() ? Share.Precision.COARSE : Share.Precision.EXACT,
                        site.sensitive(), prose), List.of(), null, List.of()));
            }
        }
        return pages;
    }

    private List<Row> links(Predicate<TripLine> which) {
        return trips.stream().filter(which).map(trip -> new Row(trip.card().title(), trip.card().slug())).toList();
    }

    /** Trips by series, in each by date. */
    private List<Group> groups() {
        return trips.stream().sorted(Comparator.comparing(TripLine::date).thenComparing(trip -> trip.card().slug()))
                .collect(Collectors.groupingBy(trip -> trip.series() == null ? "Single trips" : trip.series(),
                        LinkedHashMap::new, Collectors.mapping(TripLine::card, Collectors.toList())))
                .entrySet().stream().map(group -> new Group(group.getKey(), group.getValue())).toList();
    }
}
