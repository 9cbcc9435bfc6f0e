package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SpoilerAdvice;
import understorey.brief.Brief;
import understorey.brief.PlannedShot;
import understorey.pages.markdown.Prose;
import understorey.pages.svg.Glyphs;
import understorey.pages.tables.Row;
import understorey.pages.templates.Templates;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Share;
import understorey.plan.SkyWord;
import understorey.plan.Trip;

/**
 * A trip in words, for the plan page, the field sheet and the Markdown twin.
 *
 * @param links    of the page's own navigation: name and address
 * @param hopeless why the day is hardly worth going, and what to do instead; null for any other day
 * @param go       when, where and by what time out
 * @param why      this day, in a line
 * @param spoilers what could spoil it, in a line
 * @param siteHref of the site's page, seen from the trip's folder
 * @param sky      expected; null without a forecast or a word for the sky
 * @param shots    in the author's order
 * @param taken    in the order taken
 * @param notTaken the others
 * @param visit    the visit as one figure; null when no picture is taken
 * @param story    as written
 * @param contact  who knows; null if none is named or the page is public
 * @param findings what the author should know before going, warnings first
 * @param season   when to go, and why
 * @param basis    what the plan assumes: hours, sky, and who may see it
 * @param located  a calendar and waypoints go with it
 * @param previous the trip before this one that the same audience may see: its day and title, and its page; null if none
 * @param next     the one after it
 * @param published null without an address of the site
 */
public record PlanView(TemplateHTMLOutputModel css, String title, List<Row> links, @Nullable String hopeless, String date,
                       String arrive, String leave, GoView go, String whyName, SeasonView.Why why, String spoilers, String siteHref,
                       LightView light, @Nullable String sky, List<SpotView> places,
                       List<ShotView> shots, List<ShotView> taken, List<ShotView> notTaken,
                       @Nullable VisitView visit,
                       @Nullable String story, @Nullable TemplateHTMLOutputModel storyHtml, OrderView order,
                       KitView kit, PlaceView place, List<String> cautions,
                       @Nullable String contact, List<Remark> findings,
                       SeasonView season, String basis, boolean located, @Nullable Row previous, @Nullable Row next,
                       @Nullable Published published) {

    private static final List<Row> LINKS = List.of(new Row("All trips", "../index.html"), new Row("Field sheet", "field-sheet.html"),
            new Row("Carry", "#carry"), new Row("Getting there", "#place"), new Row("Cautions", "#cautions"), new Row("Appendix", "#appendix"));

    /** A finding. */
    public record Remark(boolean warning, String text) {
    }

    /** Other pages around that of a trip. */
    public record Around(@Nullable Row previous, @Nullable Row next, @Nullable Published published) {
    }

    public static PlanView of(Brief brief, TemplateHTMLOutputModel css, Sentences sentences, Prose prose, Around around) {
        Trip trip = brief.trip();
        Glyphs glyphs = new Glyphs();
        List<PlannedShot> inOrder = brief.order().shooting().stream().map(leg -> brief.shots().get(brief.shot(leg.shot()).number() - 1)).toList();
        List<ShotView> taken = inOrder.stream().map(shot -> ShotView.of(brief, shot, sentences, prose, glyphs)).toList();
        List<ShotView> notTaken = brief.shots().stream().filter(shot -> !inOrder.contains(shot))
                .map(shot -> ShotView.of(brief, shot, sentences, prose, glyphs)).toList();
        List<ShotView> shots = Stream.concat(taken.stream(), notTaken.stream()).sorted(Comparator.comparing(ShotView::number)).toList();
        List<SpotView> places = SpotView.of(brief, sentences);
        return new PlanView(css, trip.title(), LINKS, hopeless(brief, sentences), Dates.day(trip, brief.date()),
                sentences.clock().of(brief.order().arrive()), sentences.clock().on(brief.order().leave(), brief.date()), GoView.of(brief, sentences.clock()),
                trip.hidesTheDay() ? "Why then" : "Why today", SeasonView.why(brief, sentences),
                spoilers(brief, sentences), "../sites/" + trip.site().slug() + ".html",
                LightView.of(brief, horizon(places), sunlit(places), sentences), sky(brief), places, shots, taken, notTaken,
                VisitView.of(brief, sentences), trip.story(),
                ifKnown(prose.html(trip.story()), Templates::html), OrderView.of(brief, sentences),
                KitView.of(brief, sentences), PlaceView.of(trip.site(), trip.precision(), trip.sparesThePlace(), prose, sentences),
                sentences.of(brief.cautions()), contact(trip, sentences.clock()), findings(brief, sentences),
                SeasonView.of(brief, sentences), basis(brief, sentences.clock()), !trip.hidesTheDay(), around.previous(), around.next(), around.published());
    }

    private static @Nullable String sky(Brief brief) {
        if (brief.assumed().contains("sky")) {
            return null;
        }
        return !brief.trip().forecast().isEmpty() ? "the forecast sky"
                : ifKnown(brief.trip().sky(), sky -> (sky == SkyWord.OVERCAST ? "an " : "a ") + Words.word(sky) + " sky");
    }

    private static String horizon(List<SpotView> places) {
        List<String> horizons = places.stream().map(SpotView::horizon).distinct().toList();
        return horizons.size() == 1 ? horizons.get(0) : "the skyline";
    }

    /** By place, those together that have the same hours. */
    private static String sunlit(List<SpotView> places) {
        Map<String, String> names = new LinkedHashMap<>();
        for (SpotView place : places) {
            names.merge(place.sunlit() == null ? "never" : place.sunlit(), place.name(), (others, name) -> others + ", " + name);
        }
        if (places.size() == 1) {
            return names.keySet().iterator().next();
        }
        return names.entrySet().stream().map(line -> line.getValue() + " " + line.getKey()).collect(Collectors.joining("; "));
    }

    /** The first sentence of each, what fits on the sheet. */
    static List<String> leads(List<String> texts) {
        return texts.stream().map(text -> Sentences.split(text).get(0)).toList();
    }

    /** What the plan assumes: hours, sky, and who may see it. */
    private static String basis(Brief brief, ClockWords clock) {
        Trip trip = brief.trip();
        Set<String> assumed = brief.day().hours().assumed();
        String sky = sky(brief);
        return "Visit " + clock.of(brief.order().arrive()) + (!assumed.contains("arrive") ? ""
                : brief.day().sun().civilDawn() != null ? " (default: civil dawn)" : " (default: two hours before solar noon)")
                + " to " + clock.of(brief.order().leave()) + (assumed.contains("leave") ? " (default: four hours later)" : "")
                + "; " + (sky == null ? "any sky (default)" : sky) + "; " + audience(trip) + (trip.share() == null ? " (default)" : "") + ".";
    }

    private static String audience(Trip trip) {
        return Words.audience(trip.audience()) + ", " + switch (trip.precision()) {
            case EXACT -> "exact position";
            case COARSE -> "approximate position";
            case HIDDEN -> "hidden position";
        };
    }

    private static @Nullable String contact(Trip trip, ClockWords clock) {
        if (trip.contact() == null || trip.audience() == Share.Audience.PUBLIC) {
            return null;
        }
        String tell = trip.contact().tell() == null ? "" : trip.contact().tell();
        return trip.contact().backBy() == null ? tell
                : tell + (tell.isEmpty() ? "" : "; ") + "check-in by " + clock.of(trip.contact().backBy());
    }

    private static @Nullable String hopeless(Brief brief, Sentences sentences) {
        return brief.hopeless().isEmpty() ? null : String.join(" ", sentences.of(brief.hopeless()));
    }

    /** Without what stands above it: the chance of full flower, and why the day is hardly worth going. */
    private static String spoilers(Brief brief, Sentences sentences) {
        List<Advice> hopeless = brief.hopeless();
        return brief.spoilers().stream().filter(risk -> !(risk instanceof SpoilerAdvice.FlowersLikely) && !hopeless.contains(risk))
                .map(sentences::of).collect(Collectors.joining(" "));
    }

    private static List<Remark> findings(Brief brief, Sentences sentences) {
        return brief.findings().stream()
                .map(finding -> new Remark(finding.severity() == Advice.Severity.WARNING, sentences.of(finding)))
                .sorted(Comparator.comparing(Remark::warning).reversed()).toList();
    }
}
