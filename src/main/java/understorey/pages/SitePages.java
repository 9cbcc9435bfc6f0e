package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.pages.feeds.TripCalendar;
import understorey.pages.feeds.Waypoints;
import understorey.pages.html.PlanView;
import understorey.pages.html.SheetPage;
import understorey.pages.html.SpotView;
import understorey.pages.json.PlanJson;
import understorey.pages.markdown.Prose;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.pages.words.TemplateFault;
import understorey.plan.Bag;
import understorey.plan.Site;
import understorey.plan.Subject;

/**
 * Every page of a folder of plans: for each trip the plan, the field sheet, the Markdown twin, {@code plan.json},
 * {@code trip.ics} and {@code spots.gpx}; and the {@link SharedPages}. Several threads may make trips
 * at once.
 */
public final class SitePages {

    /**
     * One trip.
     *
     * @param pages its own
     * @param line  what the index and its bag's page show of it
     * @param place what its site's page shows
     */
    public record TripPages(List<Page> pages, TripLine line, Visited place) {
    }

    private final Templates templates;
    private final Sentences sentences;
    private final Prose prose = new Prose();
    private final TemplateHTMLOutputModel css;
    private final TemplateHTMLOutputModel sheetCss;

    private SitePages(@Nullable Path folder) {
        templates = new Templates(folder);
        for (String page : List.of("plan.ftlh", "field-sheet.ftlh", "plan.md.ftl", "site.ftlh", "bag.ftlh", "index.ftlh")) {
            templates.open(page);
        }
        sentences = Sentences.of(templates::text);
        String style = templates.text("style.css") + templates.text("marks.css");
        css = Templates.html(style + templates.text("plan.css"));
        sheetCss = Templates.html(style + templates.text("sheet.css"));
    }

    /**
     * Opens the templates.
     *
     * @param templates folder of the user's own; null for the built-in ones
     * @throws TemplateFault when one cannot be read
     */
    public static SitePages open(@Nullable Path templates) {
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
        SharedPages shared = shared();
        List<Page> pages = new ArrayList<>();
        for (Brief brief : briefs) {
            TripPages trip = trip(brief);
            shared.add(trip.line(), trip.place());
            pages.addAll(trip.pages());
        }
        pages.addAll(shared.pages(idleSites, bags, subjects));
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
                        templates.fill("field-sheet.ftlh", SheetPage.of(brief, view, sheetCss, sentences, prose))),
                new Page(folder + "plan.md", templates.fill("plan.md.ftl", view).replace('\u00a0', ' ')),
                new Page(folder + "plan.json", PlanJson.of(brief, reason -> sentences.of(reason).replace('\u00a0', ' ')))));
        if (!brief.trip().hidesTheDay()) {
            pages.add(new Page(folder + "trip.ics", TripCalendar.of(brief)));
            pages.add(new Page(folder + "spots.gpx", Waypoints.of(brief)));
        }
        return new TripPages(List.copyOf(pages), TripLine.of(brief, findings(brief)),
                Visited.of(brief, SpotView.of(brief, sentences)));
    }

    /** For the pages that trips share, of no trip yet. */
    public SharedPages shared() {
        return new SharedPages(templates, css, prose);
    }

    /** What the plan of a trip found, warnings first, each with its level before it. */
    private List<String> findings(Brief brief) {
        return PlanView.findings(brief, sentences).stream()
                .map(remark -> (remark.warning() ? "warning: " : "note: ") + remark.text().replace('\u00a0', ' ')).toList();
    }
}
