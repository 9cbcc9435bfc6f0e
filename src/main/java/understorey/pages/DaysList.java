package understorey.pages;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.Measure;
import understorey.pages.json.PlanJson;
import understorey.pages.words.Dates;
import understorey.pages.words.Figures;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.plan.Display;
import understorey.plan.Season;
import understorey.plan.Site;
import understorey.season.DayRanking;
import understorey.season.FloweringWindow;
import understorey.season.RankedDay;
import understorey.season.SeenYear;

/** The days of a trip for the terminal, a table and other programs, the best first. */
public final class DaysList {

    /** With fewer flowers than that a day promises nothing, whatever its light. */
    private static final double NO_FLOWERS = 0.02;
    private static final int BAR = 10;
    private static final int WIDEST_DATE = 15;

    private final Sentences sentences;

    private DaysList(Sentences sentences) {
        this.sentences = sentences;
    }

    /** With the built-in sentences. */
    public static DaysList open(Display display) {
        return new DaysList(Sentences.builtIn().in(display));
    }

    /** What the author should look into, a line each. */
    public List<String> warnings(DayRanking ranking) {
        List<String> lines = new ArrayList<>();
        ranking.findings().forEach(reason -> lines.add("warning: " + plain(reason)));
        ranking.windows().forEach(window -> window.findings().forEach(reason -> lines.add("warning: " + plain(reason))));
        return lines;
    }

    /** The windows, then a line a day with its best pictures beneath, then what of this year is worth keeping. */
    public String table(DayRanking ranking, Site site) {
        StringBuilder text = new StringBuilder(4096);
        for (FloweringWindow window : ranking.windows()) {
            text.append(Words.capital(window.subject().name())).append(": full flower ")
                    .append(full(window.fullFrom(), window.fullTo())).append("; highest chance on ")
                    .append(Dates.dayMonth(window.best())).append("; peak likely between ")
                    .append(Dates.dayMonth(window.peak().from())).append(" and ")
                    .append(Dates.dayMonth(window.peak().to())).append(".\n");
            window.reasons().forEach(reason -> text.append("  ").append(plain(reason)).append('\n'));
        }
        text.append(text.length() == 0 ? "" : "\n").append("rank  day              flowers  light  overall     reason\n");
        double most = ranking.days().stream().mapToDouble(RankedDay::score).max().orElse(0);
        ordered(ranking).forEach(day -> line(day, most, text));
        keep(site, text);
        return text.toString();
    }

    private static String full(LocalDate from, LocalDate to) {
        return from.getYear() == to.getYear() ? Dates.dates(from, to) + " " + to.getYear()
                : Dates.dayMonth(from) + " " + from.getYear() + " to " + Dates.dayMonth(to) + " " + to.getYear();
    }

    private static List<RankedDay> ordered(DayRanking ranking) {
        return ranking.days().stream().sorted(Comparator.comparingInt(RankedDay::rank)).toList();
    }

    private void line(RankedDay day, double most, StringBuilder text) {
        String rank = String.valueOf(day.rank());
        String flowers = day.flower() == null ? Words.NONE : plain(Words.percentInCell(day.flower()));
        String light = Math.round(day.light() * 100) + " %";
        int bar = most == 0 || day.flower() != null && day.flower() < NO_FLOWERS ? 0 : (int) Math.round(day.score() / most * BAR);
        text.append(" ".repeat(4 - rank.length())).append(rank).append("  ").append(padded(date(day.date()), WIDEST_DATE))
                .append("  ").append(" ".repeat(7 - flowers.length())).append(flowers)
                .append("  ").append(" ".repeat(5 - light.length())).append(light)
                .append("  ").append(padded("█".repeat(bar), BAR)).append("  ").append(plain(String.join(" ", sentences.of(day.reasons())))).append('\n');
        if (!day.shots().isEmpty()) {
            text.append("      ").append(String.join("; ", shots(day))).append('\n');
        }
    }

    private List<String> shots(RankedDay day) {
        return day.shots().stream().map(promise -> promise.shot().name() + (promise.at() == null ? "" : " " + plain(sentences.clock().of(promise.at())))
                + (promise.shot().light().isEmpty() ? "" : " (" + Words.word(promise.grade()) + " light)")).toList();
    }

    /** {@code Sun 18 Apr 2027}: of even width but for the day of the month. */
    private static String date(LocalDate date) {
        String day = String.valueOf(date.getDayOfMonth());
        return Words.name(date.getDayOfWeek()).substring(0, 3) + " " + " ".repeat(2 - day.length()) + day + " "
                + Words.name(date.getMonth()).substring(0, 3) + " " + date.getYear();
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private void keep(Site site, StringBuilder text) {
        for (Season season : site.seasons()) {
            List<String> lines = yaml(season);
            if (!lines.isEmpty()) {
                text.append("\nTo keep this year’s sightings, add these lines to the records of ").append(season.subject())
                        .append(" at ").append(site.name()).append(":\n");
                if (season.records().isEmpty()) {
                    text.append("    records:\n");
                }
                lines.forEach(line -> text.append("      ").append(line).append('\n'));
            }
        }
    }

    /** Lines to add to the records of a season. */
    static List<String> yaml(Season season) {
        List<String> lines = new ArrayList<>();
        for (Season.Flowering record : SeenYear.of(season).records()) {
            List<String> dates = new ArrayList<>();
            add(dates, "first", record.first());
            add(dates, "full", record.full());
            add(dates, "over", record.over());
            lines.add("- {" + String.join(", ", dates) + "}");
        }
        return lines;
    }

    private static void add(List<String> dates, String key, @Nullable LocalDate date) {
        if (date != null) {
            dates.add(key + ": " + date);
        }
    }

    /** One row a day, the best first; RFC 4180. */
    public String csv(DayRanking ranking) {
        StringBuilder text = new StringBuilder(4096).append(
                "rank,date,wanted,flower_chance,light_quality,score,from,to,shots,reasons\n");
        for (RankedDay day : ordered(ranking)) {
            text.append(day.rank()).append(',').append(day.date()).append(',').append(day.wanted()).append(',')
                    .append(share(day.flower())).append(',')
                    .append(share(day.light())).append(',')
                    .append(share(day.score())).append(',')
                    .append(day.hours() == null ? "" : sentences.clock().of(day.hours().from())).append(',')
                    .append(day.hours() == null ? "" : sentences.clock().of(day.hours().to())).append(',')
                    .append(cell(String.join("; ", shots(day)))).append(',')
                    .append(cell(plain(String.join(" ", sentences.of(day.reasons()))))).append('\n');
        }
        return text.toString();
    }

    private static String share(@Nullable Double share) {
        BigDecimal figure = Figures.of(share, Measure.SHARE);
        return figure == null ? "" : figure.toPlainString();
    }

    private static String cell(String text) {
        boolean plain = text.indexOf(',') < 0 && text.indexOf('"') < 0 && text.indexOf('\n') < 0;
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }

    /** The windows and the days, the best first, as they stand in {@code plan.json}, and lines of YAML to keep. */
    public String json(DayRanking ranking, Site site) {
        List<String> keep = site.seasons().stream().flatMap(season -> yaml(season).stream()).toList();
        return PlanJson.days(ranking, ordered(ranking), keep, this::plain);
    }

    private String plain(Advice reason) {
        return plain(sentences.of(reason));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
