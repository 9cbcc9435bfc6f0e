package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.pages.html.BagView;
import understorey.pages.html.PlaceView;
import understorey.pages.html.Published;
import understorey.pages.html.SeasonView;
import understorey.pages.html.SpotView;
import understorey.pages.html.SubjectLine;
import understorey.pages.json.PlanJson;
import understorey.pages.markdown.Prose;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.pages.words.TemplateFault;
import understorey.pages.words.Words;
import understorey.plan.Bag;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Subject;

/**
 * Pages that trips share: the index, a page per site and bag, the subjects. Of each trip it keeps what these show; sketches of as
 * many as have a plate.
 */
public final class SharedPages {

    /** A trip on another page. */
    public record Link(String slug, String title, String date, String note) {
    }

    /** A site; there is light where a trip goes there, on that trip's date. */
    public record PlacePage(TemplateHTMLOutputModel css, PlaceView place, List<SpotView> light, @Nullable String lightDate,
                            List<SeasonView.Window> seasons, List<Link> trips) {
    }

    /** A bag. */
    public record BagPage(TemplateHTMLOutputModel css, BagView bag, List<Link> trips, List<Link> companions) {
    }

    /** The built-in subjects. */
    public record SubjectsPage(TemplateHTMLOutputModel css, List<SubjectLine> subjects) {
    }

    private final Templates templates;
    private final TemplateHTMLOutputModel css;
    private final Prose prose;
    private final Sentences sentences;
    private final @Nullable Address address;
    private final List<TripLine> trips = new ArrayList<>();
    /** The trips with a plate, as far as they are known, and their opening sketches. */
    private final TreeMap<TripLine, String> plates = new TreeMap<>(IndexPage.ORDER);
    /** One page a name: where trips show a site to several audiences, the page is the most public one. */
    private final Map<String, Visited> places = new TreeMap<>();

    SharedPages(Templates templates, TemplateHTMLOutputModel css, Prose prose, Sentences sentences, @Nullable Address address) {
        this.templates = templates;
        this.css = css;
        this.prose = prose;
        this.sentences = sentences;
        this.address = address;
    }

    /** Adds what these pages show of a trip; of two as public as each other, the first shows the site. */
    public void add(TripLine trip, Visited place, Sketch opening) {
        trips.add(trip);
        places.merge(trip.site(), place, Visited::and);
        if (plates.size() < IndexPage.MOST_PLATES || IndexPage.ORDER.compare(trip, plates.lastKey()) < 0) {
            plates.put(trip, opening.svg("sketch-" + trip.card().slug()));
            if (plates.size() > IndexPage.MOST_PLATES) {
                plates.pollLastEntry();
            }
        }
    }

    /**
     * The pages.
     *
     * @param idleSites that no trip goes to, ready for their audience
     * @param bags      with a file of their own
     * @param subjects  of the built-in catalogue
     * @param manual    null for a site that others see
     * @throws TemplateFault when a template cannot be filled in
     */
    public List<Page> pages(List<Site> idleSites, List<Bag> bags, List<Subject> subjects, @Nullable Manual manual) {
        trips.sort(IndexPage.ORDER);
        List<Page> pages = new ArrayList<>();
        List<IndexPage.Entry> woods = new ArrayList<>();
        for (PlacePage place : places(idleSites)) {
            String file = "sites/" + place.place().slug() + ".html";
            woods.add(new IndexPage.Entry(place.place().name(), file, note(place)));
            pages.add(new Page(file, templates.fill("site.ftlh", place)));
        }
        List<IndexPage.Entry> carried = new ArrayList<>();
        for (Bag bag : bags) {
            String slug = bag.slug();
            if (slug != null) {
                BagPage page = bag(bag, slug);
                carried.add(new IndexPage.Entry(bag.name(), "gear/" + slug + ".html", note(page)));
                pages.add(new Page("gear/" + slug + ".html", templates.fill("bag.ftlh", page)));
            }
        }
        pages.add(new Page("index.html", templates.fill("index.ftlh", new IndexPage(css, IndexPage.title(trips), IndexPage.lead(trips),
                IndexPage.years(trips, sketches()), woods, carried, IndexPage.flowers(trips), subjects.size(), manual == null ? List.of() : manual.entries(), published()))));
        if (manual != null) {
            pages.addAll(manual.pages(templates, css));
        }
        pages.add(new Page("methods.html", templates.fill("methods.html.ftl", MethodsPage.of(css, sentences))));
        pages.add(new Page("plan.schema.json", PlanJson.schema()));
        pages.add(new Page("subjects.html",
                templates.fill("subjects.ftlh", new SubjectsPage(css, SubjectLine.of(subjects, sentences)))));
        return pages;
    }

    private Map<String, TemplateHTMLOutputModel> sketches() {
        return plates.entrySet().stream().filter(plate -> !plate.getValue().isEmpty())
                .collect(Collectors.toMap(plate -> plate.getKey().card().slug(), plate -> Templates.html(plate.getValue())));
    }

    private @Nullable Published published() {
        return address == null || trips.isEmpty() ? null : address.index(IndexPage.title(trips), IndexPage.lead(trips), trips.get(0).card());
    }

    private List<PlacePage> places(List<Site> idleSites) {
        List<PlacePage> pages = new ArrayList<>();
        places.forEach((slug, shown) -> pages.add(new PlacePage(css,
                PlaceView.of(shown.site(), shown.precision(), shown.spared(), prose, sentences), shown.light(), shown.date(), shown.seasons(),
                links(trip -> trip.site().equals(slug), TripLine.Card::flowers))));
        for (Site site : idleSites) {
            if (!places.containsKey(site.slug())) {
                pages.add(new PlacePage(css, PlaceView.of(site, site.sensitive() ? Share.Precision.COARSE : Share.Precision.EXACT,
                        site.sensitive(), prose, sentences), List.of(), null, List.of(), List.of()));
            }
        }
        return pages;
    }

    private BagPage bag(Bag bag, String slug) {
        return new BagPage(css, BagView.of(bag, sentences), links(trip -> slug.equals(trip.bag()), card -> card.weight() + " of it"),
                links(trip -> trip.companions().stream().anyMatch(companion -> slug.equals(companion.text())), TripLine.Card::site));
    }

    private List<Link> links(Predicate<TripLine> which, Function<TripLine.Card, String> note) {
        return trips.stream().filter(which).map(TripLine::card)
                .map(card -> new Link(card.slug(), card.title(), card.date(), note.apply(card))).toList();
    }

    /** What the index says of a wood. */
    private String note(PlacePage place) {
        Set<String> subjects = new LinkedHashSet<>();
        List<String> days = new ArrayList<>();
        for (TripLine trip : trips) {
            if (trip.site().equals(place.place().slug())) {
                trip.flowers().forEach(flower -> subjects.add(flower.name()));
                days.add(trip.card().day());
            }
        }
        List<String> says = new ArrayList<>(List.of(IndexPage.some(List.copyOf(subjects), ", ")));
        if (!place.place().spots().lines().isEmpty()) {
            says.add(Words.count(place.place().spots().lines().size(), "spot"));
        }
        says.add(days.isEmpty() ? "no trip yet" : IndexPage.some(days, ", "));
        says.removeIf(String::isEmpty);
        return String.join(" · ", says);
    }

    /** What the index says of a bag. */
    private String note(BagPage bag) {
        List<String> days = new ArrayList<>();
        for (TripLine trip : trips) {
            if (String.valueOf(bag.bag().slug()).equals(trip.bag())) {
                days.add(trip.card().day() + ", " + trip.card().weight());
            }
            trip.companions().stream().filter(companion -> companion.text().equals(bag.bag().slug()))
                    .forEach(companion -> days.add(companion.name() + ", " + trip.card().day()));
        }
        return days.isEmpty() ? "no trip yet" : IndexPage.some(days, "; ");
    }
}
