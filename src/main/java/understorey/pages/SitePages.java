package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.pages.feeds.TripCalendar;
import understorey.pages.feeds.Waypoints;
import understorey.pages.html.PlanView;
import understorey.pages.html.SeasonView;
import understorey.pages.html.SheetPage;
import understorey.pages.html.SpotView;
import understorey.pages.json.PlanJson;
import understorey.pages.markdown.Prose;
import understorey.pages.preview.PreviewImage;
import understorey.pages.svg.Glyphs;
import understorey.pages.svg.Svg;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.pages.words.TemplateFault;
import understorey.plan.Display;
import understorey.scene.Scene;

/**
 * The pages of a trip: the plan, the field sheet, the Markdown twin, {@code plan.json}, {@code trip.ics} and
 * {@code spots.gpx}; those that trips share are {@link SharedPages}. Several threads may make trips at once.
 */
public final class SitePages {

    /**
     * One trip.
     *
     * @param pages its own
     * @param line  what the index and its bag's page show of it
     * @param place what its site's page shows
     * @param opening sketch of the picture that opens the story
     */
    public record TripPages(List<Page> pages, TripLine line, Visited place, Sketch opening) {
    }

    private final Templates templates;
    /** Those of the pages that trips share. */
    private final Sentences shared;
    private final Display sharedDisplay;
    private final Sentences forPrograms;
    private final Prose prose = new Prose();
    private final @Nullable Address address;
    private final @Nullable PreviewImage preview;
    private final TemplateHTMLOutputModel css;
    private final TemplateHTMLOutputModel sharedCss;
    private final TemplateHTMLOutputModel sheetCss;

    private SitePages(@Nullable Path folder, @Nullable Address address, Display display) {
        this.address = address;
        templates = new Templates(folder);
        for (String page : List.of("plan.html.ftl", "field-sheet.ftlh", "plan.md.ftl", "site.ftlh", "bag.ftlh", "index.ftlh")) {
            templates.open(page);
        }
        sharedDisplay = display;
        shared = Sentences.of(templates::text, display);
        forPrograms = shared.in(Display.USUAL);
        String style = style("style.css") + style("marks.css");
        preview = address == null ? null : new PreviewImage(style);
        css = Templates.html(style + style("plan.css"));
        sharedCss = Templates.html(style + style("index.css"));
        sheetCss = Templates.html(style + style("sheet.css"));
    }

    /** A style sheet without comments and spare blanks. */
    private String style(String name) {
        return templates.text(name).replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("\\s*([{};,])\\s*", "$1").replaceAll(":\\s+", ":");
    }

    /**
     * Opens the templates.
     *
     * @param templates folder of the user's own; null for the built-in ones
     * @param address   of the site; null for pages that tell no other site about themselves
     * @param shared    units and clock of the pages that trips share; those of a trip are its own
     * @throws TemplateFault when one cannot be read
     */
    public static SitePages open(@Nullable Path templates, @Nullable Address address, Display shared) {
        return new SitePages(templates, address, shared);
    }

    /**
     * One trip, ready for its audience.
     *
     * @throws TemplateFault when a template cannot be filled in
     */
    public TripPages trip(Brief brief, Neighbours neighbours) {
        return trip(brief, neighbours, page -> { });
    }

    /**
     * One trip, its plan first.
     *
     * @param early takes the plan as soon as it is made, before the other pages are
     */
    public TripPages trip(Brief brief, Neighbours neighbours, Consumer<Page> early) {
        String folder = brief.trip().slug() + "/";
        Sentences sentences = shared.in(brief.trip().display());
        TripLine line = TripLine.of(brief, sentences, shared);
        Neighbours.Beside beside = neighbours.of(brief.trip());
        PlanView view = PlanView.of(brief, css, sentences, prose, new PlanView.Around(beside.before(), beside.after(),
                address == null ? null : address.plan(line.card())));
        Page plan = new Page(folder + "index.html", templates.fill("plan.html.ftl", view));
        early.accept(plan);
        List<Page> pages = new ArrayList<>(List.of(plan,
                new Page(folder + "field-sheet.html",
                        templates.fill("field-sheet.ftlh", SheetPage.of(brief, view, sheetCss, sentences, prose))),
                new Page(folder + "plan.md", templates.markdown("plan.md.ftl", view)),
                new Page(folder + "plan.json", PlanJson.of(brief, reason -> forPrograms.of(reason).replace('\u00a0', ' ')))));
        if (!brief.trip().hidesTheDay()) {
            pages.add(new Page(folder + "trip.ics", TripCalendar.of(brief)));
            pages.add(new Page(folder + "spots.gpx", Waypoints.of(brief)));
        }
        Sketch opening = opening(brief);
        if (preview != null) {
            pages.add(new Page(folder + Address.IMAGE, preview.png(opening.svg("sketch"), brief.trip().title(),
                    line.card().date() + " · " + line.card().site())));
        }
        boolean same = sharedDisplay.equals(brief.trip().display());
        Visited place = Visited.of(brief, same ? view.season() : SeasonView.of(brief, shared), same ? view.places() : SpotView.of(brief, shared),
                shared);
        return new TripPages(List.copyOf(pages), line, place, opening);
    }

    /** Of the first picture of the story. */
    private Sketch opening(Brief brief) {
        Scene scene = brief.story().sequence().stream().limit(1)
                .map(intent -> brief.shots().get(brief.shot(intent.shot().name()).number() - 1).sketch())
                .filter(Objects::nonNull).findFirst().orElse(null);
        return id -> scene == null ? "" : Svg.shared(scene.drawing(shared), id, new Glyphs());
    }

    /** For the pages that trips share, of no trip yet. */
    public SharedPages shared() {
        return new SharedPages(templates, sharedCss, prose, shared, address);
    }
}
