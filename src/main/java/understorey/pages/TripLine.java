package understorey.pages;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.advice.TripAdvice;
import understorey.brief.Brief;
import understorey.pages.tables.Row;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.scene.chart.YearStrip;
import understorey.season.FloweringWindow;

/**
 * What stays of a trip when its own pages are made.
 *
 * @param series     null for a single trip
 * @param site       name of the page of its site
 * @param bag        name of the page of its bag; null for one without a page
 * @param companions who carries which other bag: name, and name of the bag's page
 * @param flowers    subjects of its pictures
 * @param findings   of its plan, warnings first
 */
public record TripLine(Card card, LocalDate date, @Nullable String series, String site, @Nullable String bag, List<Row> companions,
                       List<Flower> flowers, List<Said> findings) {

    /**
     * The trip on the index.
     *
     * @param date    with the part of the day
     * @param day     without weekday and year
     * @param flowers its first subject, with the chance of full flower
     * @param better  when that chance is better; null where no other days are clearly better
     * @param located when it has a calendar and waypoints
     */
    public record Card(String slug, String title, String date, String day, String site, String flowers, @Nullable String better,
                       String hours, String pictures, String bag, String weight, boolean located) {
    }

    /**
     * A subject.
     *
     * @param builtIn whether it has its block on the page of subjects
     * @param window  null when its season is unknown
     * @param errorD  half of the likely span of the peak, days
     * @param chance  of full flower on the day of the trip
     */
    public record Flower(String key, String name, boolean builtIn, YearStrip.@Nullable Window window, double errorD, double chance) {
    }

    /** Something to know before going, in words. */
    public record Said(Advice advice, String text) {

        public boolean warning() {
            return advice.severity() == Advice.Severity.WARNING;
        }
    }

    /** What is found is said in the words of the trip itself, the card in those that all trips share. */
    static TripLine of(Brief brief, Sentences sentences, Sentences shared) {
        Trip trip = brief.trip();
        List<Row> companions = new ArrayList<>();
        trip.companions().forEach(companion -> {
            String slug = companion.gear().slug();
            if (slug != null) {
                companions.add(new Row(companion.name(), slug));
            }
        });
        return new TripLine(card(brief, shared), brief.date(), trip.series(), trip.site().slug(), trip.gear().slug(), List.copyOf(companions),
                trip.shots().stream().map(shot -> shot.subject()).distinct().map(subject -> flower(brief, subject)).toList(),
                brief.findings().stream().map(finding -> new Said(finding, sentences.of(finding).replace('\u00a0', ' ')))
                        .sorted(Comparator.comparing(Said::warning).reversed()).toList());
    }

    private static Card card(Brief brief, Sentences sentences) {
        Trip trip = brief.trip();
        String weight = sentences.of(brief.packing().weightG(), Measure.GRAMS);
        return new Card(trip.slug(), trip.title(), date(brief), Dates.shortDay(trip, brief.date()), trip.site().name(), flowers(brief),
                better(brief), sentences.clock().span(brief.order().arrive(), brief.order().leave(), brief.date()),
                Words.count(brief.timed().size(), "picture"), trip.gear().name() + ", " + weight, weight, !trip.hidesTheDay());
    }

    private static String date(Brief brief) {
        String part = PartOfDay.of(brief.day().sun(), brief.order().arrive(), brief.order().leave());
        String day = Dates.day(brief.trip(), brief.date());
        return part == null || brief.trip().hidesTheDay() ? day : day + ", " + part;
    }

    private static String flowers(Brief brief) {
        FloweringWindow window = brief.season().window();
        return window == null ? brief.trip().shots().stream().map(shot -> shot.subject().name()).distinct().collect(Collectors.joining(", "))
                : window.subject().name() + ", " + Words.percent(window.chanceOn(brief.date())) + " chance of full flower";
    }

    private static @Nullable String better(Brief brief) {
        FloweringWindow window = brief.season().window();
        for (Advice finding : brief.findings()) {
            if (finding instanceof TripAdvice.BetterDays better && window != null && better.subject().equals(window.subject().name())) {
                return "better from " + Dates.dates(better.from(), better.to());
            }
        }
        return null;
    }

    private static Flower flower(Brief brief, Subject subject) {
        FloweringWindow window = brief.season().windows().stream()
                .filter(known -> known.subject().key().equals(subject.key())).findFirst().orElse(null);
        return window == null ? new Flower(subject.key(), subject.name(), subject.guide() != null, null, 0, 0)
                : new Flower(subject.key(), subject.name(), subject.guide() != null, YearStrip.Window.of(window), window.errorD(),
                window.chanceOn(brief.date()));
    }
}
