package understorey.season;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SeasonAdvice;
import understorey.plan.Season;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Temperatures;
import understorey.season.model.Course;
import understorey.season.model.PastYears;
import understorey.season.model.PeakChances;
import understorey.season.model.PlainMean;
import understorey.season.model.Prediction;
import understorey.season.model.SeasonScale;
import understorey.season.model.StudentT;

/** Computes a flowering window: a first estimate of the peak from records or catalogue, then the sightings of this year. */
final class FloweringForecast {

    /** Standard error of one more year, days, if the records are too few to give it (from memory; Tullgarn 6, Kyoto 6). */
    private static final double YEARS_DIFFER_D = 10;
    /** Standard error of the peak, days, if there are only sightings of this year. */
    private static final double UNKNOWN_D = 30;
    /** Least standard error, days: years that happen to be alike do not make the dates of a stand more exact. */
    static final double LEAST_ERROR_D = 1;
    /** Standard error, days, of the distance of first and last flowers from the peak. */
    private static final double COURSE_ERROR_D = 3;

    private final Site site;
    private final Subject subject;
    private final LocalDate near;
    private final @Nullable Double springWarmerC;
    private final List<Season.Flowering> records;
    private final List<Season.Sighting> sightings;
    private final @Nullable Temperatures temperatures;
    private final List<Advice> reasons = new ArrayList<>();
    private final List<Advice> findings = new ArrayList<>();
    private FloweringWindow.Method method = FloweringWindow.Method.SIGHTINGS;

    FloweringForecast(Site site, Subject subject, LocalDate near, @Nullable Double springWarmerC) {
        this.site = site;
        this.subject = subject;
        this.near = near;
        this.springWarmerC = springWarmerC;
        Season known = known(site, subject);
        this.records = known == null ? List.of() : known.records();
        this.sightings = known == null ? List.of() : known.seen();
        this.temperatures = known == null ? null : known.temperatures();
    }

    private static @Nullable Season known(Site site, Subject subject) {
        return site.seasons().stream().filter(season -> season.subject().equals(subject.key())).findFirst()
                .orElse(null);
    }

    /** The window; null if nothing is known about the subject's season. */
    @Nullable FloweringWindow window() {
        CatalogueSeason catalogue = CatalogueSeason.of(subject, site);
        SeasonScale scale = !records.isEmpty() ? null : catalogue != null ? catalogue.scale()
                : sightings.isEmpty() ? null : SeasonScale.around(List.of(sightings.get(0).date()));
        if (records.isEmpty() && scale == null) {
            return null;
        }
        SeasonScale own = scale == null ? PastYears.of(records, null, null).scale() : scale;
        int season = own.seasonOf(near);
        PastYears past = PastYears.of(records, own, season);
        if (past.n() == 0 && catalogue != null) {
            own = catalogue.scale();
            season = own.seasonOf(near);
            past = PastYears.of(records, own, season);
        }
        if (past.twice() != null) {
            findings.add(new SeasonAdvice.RecordsTwice(subject.name(), own.anchor().atYear(past.twice())));
        }
        List<Season.Sighting> seen = seen(own, season);
        Prediction peak = past.n() > 0 ? byRecords(past, season) : catalogue != null ? byCatalogue(catalogue)
                : Prediction.assumed(own.day(season, seen.isEmpty() ? near : seen.get(0).date()), UNKNOWN_D);
        if (method == FloweringWindow.Method.SIGHTINGS) {
            reasons.add(new SeasonAdvice.BySightingsAlone());
        }
        Course course = past.n() > 0 || catalogue == null ? past.course() : catalogue.course();
        return window(own, season, course, seen, PeakChances.of(peak));
    }

    private Prediction byCatalogue(CatalogueSeason catalogue) {
        method = FloweringWindow.Method.CATALOGUE;
        reasons.addAll(catalogue.reasons());
        return new SpringShift(springWarmerC, catalogue.scale(), site).moved(catalogue.peak(), reasons);
    }

    private Prediction byRecords(PastYears past, int season) {
        SpringShift shift = new SpringShift(springWarmerC, past.scale(), site);
        if (past.n() < 3) {
            method = FloweringWindow.Method.FEW_RECORDS;
            Prediction mean = Prediction.assumed(PlainMean.mean(past.peakD()),
                    YEARS_DIFFER_D * Math.sqrt(1 + 1.0 / past.n()));
            reasons.add(new SeasonAdvice.ByFewRecords(past.n(), halfWidth(mean)));
            return shift.moved(mean, reasons);
        }
        if (temperatures != null) {
            SpringForecast spring = new SpringForecast(past, temperatures, season, springWarmerC, site);
            Prediction peak = spring.peak();
            reasons.addAll(spring.reasons());
            if (peak != null) {
                method = spring.method();
                return peak;
            }
        }
        method = FloweringWindow.Method.MEAN;
        Prediction mean = PlainMean.of(past.peakD()).next().noSurerThan(LEAST_ERROR_D);
        reasons.add(0, new SeasonAdvice.ByMean(past.n(), halfWidth(mean)));
        return shift.moved(mean, reasons);
    }

    static double halfWidth(Prediction peak) {
        Prediction.Range likely = peak.range(FloweringWindow.LIKELY);
        return (likely.high() - likely.low()) / 2;
    }

    /** The sightings of this season, in order of date; a record of this season counts too. */
    private List<Season.Sighting> seen(SeasonScale scale, int season) {
        List<Season.Sighting> seen = Stream.concat(sightings.stream(), records.stream().flatMap(record -> Stream.of(
                        sighting(record.first(), Season.Stage.FIRST_FLOWERS), sighting(record.full(), Season.Stage.FULL_FLOWER),
                        sighting(record.over(), Season.Stage.OVER)).flatMap(Function.identity())))
                .filter(sighting -> scale.seasonOf(sighting.date()) == season).distinct()
                .sorted(Comparator.comparing(Season.Sighting::date).thenComparing(Season.Sighting::stage)).toList();
        disagreeing(seen);
        return seen;
    }

    private static Stream<Season.Sighting> sighting(@Nullable LocalDate date, Season.Stage stage) {
        return date == null ? Stream.empty() : Stream.of(new Season.Sighting(date, stage));
    }

    private void disagreeing(List<Season.Sighting> seen) {
        for (int i = 1; i < seen.size(); i++) {
            Season.Sighting before = seen.get(i - 1);
            Season.Sighting after = seen.get(i);
            if (after.stage().compareTo(before.stage()) < 0) {
                findings.add(new SeasonAdvice.SightingsDisagree(subject.name(), before.stage(), before.date(),
                        after.stage(), after.date()));
            }
        }
    }

    private FloweringWindow window(SeasonScale scale, int season, Course course, List<Season.Sighting> seen,
                                   PeakChances chances) {
        PeakChances updated = seen.isEmpty() ? chances : chances.doubted();
        for (Season.Sighting sighting : seen) {
            updated = updated.seen(course, sighting.stage(), scale.day(season, sighting.date()));
        }
        double middle = updated.quantile(0.5);
        double early = updated.quantile((1 - FloweringWindow.LIKELY) / 2);
        double late = updated.quantile((1 + FloweringWindow.LIKELY) / 2);
        if (!seen.isEmpty()) {
            reasons.add(new SeasonAdvice.SightingsUsed(seen.size(), seen.get(seen.size() - 1).stage(),
                    seen.get(seen.size() - 1).date(), (late - early) / 2));
        }
        if (course.assumed()) {
            reasons.add(records.isEmpty() && subject.guide() != null ? new SeasonAdvice.CourseByCatalogue(course.riseD(), course.fallD())
                    : new SeasonAdvice.CourseAssumed(course.riseD(), course.fallD()));
        }
        double more = StudentT.of(Double.POSITIVE_INFINITY).twoSided(FloweringWindow.LIKELY) * COURSE_ERROR_D;
        return new FloweringWindow(subject,
                expected(scale, season, middle - course.riseD(), Math.hypot(middle - early, more),
                        Math.hypot(late - middle, more)),
                expected(scale, season, middle, middle - early, late - middle),
                expected(scale, season, middle + course.fallD(), Math.hypot(middle - early, more),
                        Math.hypot(late - middle, more)),
                scale.date(season, middle + course.fullFromD()), scale.date(season, middle + course.fullToD()),
                best(scale, season, updated, course, seen), method, List.copyOf(seen), (late - early) / 2,
                past(scale, season), List.copyOf(reasons), List.copyOf(findings), updated, scale, season, course);
    }

    private static FloweringWindow.Expected expected(SeasonScale scale, int season, double day, double before,
                                                     double after) {
        return new FloweringWindow.Expected(scale.date(season, day), scale.date(season, day - before),
                scale.date(season, day + after));
    }

    /** The day with the highest chance; the middle one of several equal days. */
    private static LocalDate best(SeasonScale scale, int season, PeakChances chances, Course course,
                                  List<Season.Sighting> seen) {
        double most = -1;
        int from = 0;
        int to = 0;
        for (int day = -PeakChances.HALF_YEAR; day <= PeakChances.HALF_YEAR; day++) {
            double chance = FloweringWindow.fullOn(chances, course, seen, day, scale.date(season, day));
            if (chance > most + 1e-9) {
                most = chance;
                from = day;
                to = day;
            } else if (chance > most - 1e-9 && to == day - 1) {
                to = day;
            }
        }
        return scale.date(season, Math.floorDiv(from + to, 2));
    }

    private List<FloweringWindow.Past> past(SeasonScale scale, int season) {
        return records.stream().filter(record -> scale.seasonOf(PastYears.peak(record, Course.USUAL)) != season)
                .sorted(Comparator.comparing(record -> PastYears.peak(record, Course.USUAL)))
                .map(record -> past(scale, season, record)).toList();
    }

    private static FloweringWindow.Past past(SeasonScale scale, int season, Season.Flowering record) {
        int own = scale.seasonOf(PastYears.peak(record, Course.USUAL));
        return new FloweringWindow.Past(record, moved(scale, own, season, record.first()), moved(scale, own, season, record.full()),
                moved(scale, own, season, record.over()));
    }

    private static @Nullable LocalDate moved(SeasonScale scale, int from, int to, @Nullable LocalDate date) {
        return date == null ? null : scale.date(to, scale.day(from, date));
    }
}
