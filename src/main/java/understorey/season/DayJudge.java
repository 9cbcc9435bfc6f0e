package understorey.season;

import static understorey.advice.Measure.DAYS;

import java.time.Duration;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.DayAdvice;
import understorey.light.Outlook;
import understorey.light.Wishes;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.visit.Hours;
import understorey.weather.Weather;

/** Judges one day of a trip after another. The weights of hours and weather are common practice, no source. */
final class DayJudge {

    private static final int MOST_PROMISES = 3;
    private static final Duration SHOT = Duration.ofMinutes(15);
    private static final double FULL_FROM = 0.5;
    private static final double PERHAPS_FROM = 0.15;
    /** Error of an estimate, days, from which a small chance is worth naming. */
    private static final double ROUGH_D = 3;
    /** Factors of an hour with rain, and of one with wind that moves every stem, from a gentle breeze. */
    private static final double WET = 0.5;
    private static final double WINDY = 0.7;
    private static final double WINDY_MS = 5;
    private static final double RAIN_COUNTS_MM = 0.2;
    private static final double NAMED_FROM = 0.3;

    private final Trip trip;
    private final List<FloweringWindow> windows;
    private final DayLights.Places places;
    private final Duration wanted;

    DayJudge(Trip trip, List<FloweringWindow> windows) {
        this.trip = trip;
        this.windows = windows;
        this.places = new DayLights.Places(trip);
        this.wanted = trip.shots().stream().map(shot -> shot.duration() == null ? SHOT : shot.duration())
                .reduce(Duration.ZERO, Duration::plus);
    }

    RankedDay day(LocalDate date) {
        List<Advice> reasons = new ArrayList<>();
        Hours visit = Hours.of(trip, date);
        Interval hours = visit.usable();
        DayLights lights = hours == null ? null : new DayLights(trip, visit, hours);
        List<RankedDay.Promise> promises = trip.shots().stream().map(shot -> promise(shot, date, lights)).toList();
        double value = 0;
        double light = 0;
        double flower = 0;
        int weights = 0;
        int known = 0;
        for (RankedDay.Promise promise : promises) {
            value += promise.value() * promise.priority();
            light += promise.light() * promise.priority();
            weights += promise.priority();
            if (promise.flower() != null) {
                flower += promise.flower() * promise.priority();
                known += promise.priority();
            }
        }
        flowers(date, reasons);
        boolean wants = wishes(date, reasons);
        double share = hours(hours, reasons) * (lights == null ? 1 : weather(lights, reasons));
        List<RankedDay.Promise> most = promises.stream()
                .sorted(Comparator.comparing(promise -> -promise.value() * promise.priority())).limit(MOST_PROMISES).toList();
        return new RankedDay(date, 0, value / weights * share, known == 0 ? null : Double.valueOf(flower / known),
                light / weights, hours, wants, most, List.copyOf(reasons));
    }

    private RankedDay.Promise promise(Shot shot, LocalDate date, @Nullable DayLights lights) {
        FloweringWindow window = DayRanking.window(windows, shot.subject(), date);
        Double flower = window == null ? null : Double.valueOf(window.chanceOn(date));
        DayLights.Best best = lights == null ? new DayLights.Best(0, 0, null)
                : lights.best(shot, places.of(shot, date));
        return new RankedDay.Promise(shot, flower, best.light(), Outlook.Grade.of(best.most()),
                best.moment() == null ? null : best.moment().sun().time(),
                best.moment() == null ? List.of() : Wishes.of(shot).because(best.moment()));
    }

    /** Adds the advice on the flowers of the first picture with a known season. */
    private void flowers(LocalDate date, List<Advice> reasons) {
        reasons.add(trip.shots().stream().map(shot -> DayRanking.window(windows, shot.subject(), date)).filter(Objects::nonNull)
                .findFirst().map(window -> flowers(window, date)).orElseGet(DayAdvice.DayFlowersUnknown::new));
    }

    private static Advice flowers(FloweringWindow window, LocalDate date) {
        double chance = window.chanceOn(date);
        String subject = window.subject().name();
        if (chance >= FULL_FROM || chance >= PERHAPS_FROM && window.errorD() > ROUGH_D || date.equals(window.best())) {
            return chance >= FULL_FROM ? new DayAdvice.DayFull(subject, chance) : new DayAdvice.DayPerhapsFull(subject, chance);
        }
        if (date.isBefore(window.best())) {
            return new DayAdvice.DayTooEarly(ChronoUnit.DAYS.between(date, window.best()), subject, chance);
        }
        return new DayAdvice.DayTooLate(ChronoUnit.DAYS.between(window.best(), date), subject, chance);
    }

    private boolean wishes(LocalDate date, List<Advice> reasons) {
        for (FloweringWindow window : windows) {
            LocalDate last = window.seen().isEmpty() ? null : window.seen().get(window.seen().size() - 1).date();
            if (last != null && window.covers(date) && !date.isAfter(last)) {
                reasons.add(new DayAdvice.DayPast(last));
                return false;
            }
        }
        if (trip.wishes().avoids(date)) {
            reasons.add(new DayAdvice.DayAvoided());
            return false;
        }
        if (!trip.wishes().wants(date.getDayOfWeek())) {
            reasons.add(new DayAdvice.DayWrongWeekday(date.getDayOfWeek()));
            return false;
        }
        return true;
    }

    /** Share of the time for the pictures that the day has. */
    private double hours(@Nullable Interval hours, List<Advice> reasons) {
        if (hours == null) {
            reasons.add(new DayAdvice.DayClosed());
            return 0;
        }
        double share = (double) hours.length().toMinutes() / wanted.toMinutes();
        if (share < 1) {
            reasons.add(new DayAdvice.DayHoursShort(hours.length().toMinutes(), wanted.toMinutes()));
        }
        return Math.min(1, share);
    }

    private double weather(DayLights lights, List<Advice> reasons) {
        double sum = 0;
        double wet = 0;
        double windy = 0;
        double strongest = 0;
        boolean known = false;
        for (Weather weather : lights.weather()) {
            boolean rains = weather.rainMm() != null && weather.rainMm() >= RAIN_COUNTS_MM;
            double rain = rains ? weather.rainChance() == null ? 1 : weather.rainChance() : 0;
            boolean blows = weather.windMs() != null && weather.windMs() >= WINDY_MS;
            wet += rain;
            windy += blows ? 1 : 0;
            strongest = Math.max(strongest, weather.windMs() == null ? 0 : weather.windMs());
            known |= weather.windMs() != null || weather.rainMm() != null || weather.temperatureC() != null;
            sum += (1 - rain * (1 - WET)) * (blows ? WINDY : 1);
        }
        int steps = lights.weather().size();
        if (wet / steps >= NAMED_FROM) {
            reasons.add(new DayAdvice.DayRain(wet / steps));
        }
        if (windy / steps >= NAMED_FROM) {
            reasons.add(new DayAdvice.DayWind(strongest));
        }
        if (!known && !trip.forecast().isEmpty()) {
            reasons.add(new DayAdvice.DayWithoutForecast());
        }
        return sum / steps;
    }
}
