package understorey.weather;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.WeatherAdvice;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.sky.Interval;

/** Simulates the film of water on the flowers over a day, and over the part of the day before that the forecast covers. */
final class DropsEstimate {

    /** How long drops stay if the damp of the air is unknown; common practice, no source. */
    private static final double PLAIN_WINDOW_S = 2 * 3600;
    private static final double DAY_S = 86_400;
    /** Tolerance of limits for rounding errors of sums. */
    private static final double LAST_BIT = 1e-9;

    private final Forecast forecast;
    private final @Nullable SkyWord sky;
    private final ZonedDateTime dayBegins;
    private final ZonedDateTime from;
    private final double[] shares;
    private final double[] losses;
    private final double[] chances;
    private final WaterFilm film = new WaterFilm();
    private final List<Advice> reasons = new ArrayList<>();
    private @Nullable ZonedDateTime dryBy;

    /** State of the present film. */
    private ZonedDateTime wetUntil;
    private boolean ofDew;
    private double chance = 1;

    private boolean rainTold;
    private boolean byDamp;
    private boolean byRule;
    private boolean windUnknown;

    DropsEstimate(Interval day, List<ForecastHour> hours, @Nullable SkyWord sky) {
        this.forecast = new Forecast(hours, day.from().toLocalDate(), day.from().getZone());
        this.sky = sky;
        dayBegins = day.from();
        wetUntil = dayBegins;
        long beforeS = dayBegins.minusDays(1).toEpochSecond();
        long endS = day.to().toEpochSecond();
        long firstS = endS;
        long lastS = beforeS;
        for (Forecast.Row row : forecast.rows()) {
            if (row.startS() >= beforeS && row.startS() < endS) {
                firstS = Math.min(firstS, row.startS());
                lastS = Math.max(lastS, row.endS());
            }
        }
        from = Instant.ofEpochSecond(firstS).atZone(dayBegins.getZone());
        long span = Math.max(0, Math.min(lastS, endS) - firstS);
        int steps = (int) ((span + Drops.STEP_S - 1) / Drops.STEP_S);
        shares = new double[steps];
        losses = new double[steps];
        chances = new double[steps];
    }

    Drops drops() {
        for (int step = 0; step < shares.length; step++) {
            ZonedDateTime begins = from.plusSeconds(step * Drops.STEP_S);
            ZonedDateTime middle = begins.plusSeconds(Drops.STEP_S / 2);
            if (forecast.at(middle).covered()) {
                step(step, begins, forecast.weather(middle, sky));
            } else {
                outlast(begins);
                film.clear();
                chances[step] = 1;
            }
        }
        outlast(from.plusSeconds(shares.length * Drops.STEP_S));
        boolean judged = rainTold || !reasons.isEmpty();
        remark(judged);
        return new Drops(from, shares, losses, chances, reasons, judged, dryBy);
    }

    private void step(int step, ZonedDateTime begins, Weather weather) {
        rainTold |= weather.rainMm() != null && !begins.isBefore(dayBegins);
        if (weather.temperatureC() != null && weather.temperatureC() <= 0) {
            film.clear();
        } else if (weather.rainMm() != null && weather.rainMm() > 0) {
            wetted(begins, false);
            double before = film.mm();
            film.rain(weather.rainMm() * Drops.STEP_S / ForecastMoment.HOUR_S);
            added(before, weather.rainChance() == null ? 1 : weather.rainChance());
            shares[step] = film.share();
        } else if (dewForms(begins, weather)) {
            wetted(begins, true);
            double before = film.mm();
            film.dew();
            added(before, 1);
            shares[step] = film.share();
        } else if (film.wet()) {
            shares[step] = film.share();
            double lossMm = lossMm(weather, !begins.isBefore(dayBegins));
            losses[step] = lossMm / film.laidMm();
            double part = lossMm <= film.mm() ? 1 : film.mm() / lossMm;
            film.lose(lossMm);
            if (!film.wet()) {
                dried(begins.plusSeconds(Math.round(part * Drops.STEP_S)));
            }
        }
        chances[step] = shares[step] > 0 ? chance : 1;
    }

    /** Water that was there keeps its chance: the film has the mean chance of its water. */
    private void added(double beforeMm, double addedChance) {
        chance = film.wet() ? (beforeMm * chance + (film.mm() - beforeMm) * addedChance) / film.mm() : 1;
    }

    private void wetted(ZonedDateTime begins, boolean dew) {
        if (film.wet() && ofDew && !dew && begins.isAfter(dayBegins)) {
            reasons.add(new WeatherAdvice.DropsOfDew(begins));
        }
        wetUntil = begins.plusSeconds(Drops.STEP_S);
        ofDew = dew;
    }

    /**
     * Whether dew forms: in the morning, in damp and calm air under a clear sky, above 0 °C. The time of sunrise is not
     * needed, because the air comes so near its dew point only while the ground cools. Evening dew is there the next
     * morning too. In frost rime forms instead of drops. Leaves under a clear sky cool below the air: they are wet before
     * there is mist.
     */
    private boolean dewForms(ZonedDateTime time, Weather weather) {
        Weather.Damp damp = weather.damp();
        return time.toLocalTime().isBefore(LocalTime.NOON)
                && damp != null && damp.spreadC() <= Mist.DAMP_C + LAST_BIT && damp.temperatureC() > 0
                && weather.windMs() != null && weather.windMs() < Mist.CALM_BELOW_MS - LAST_BIT
                && weather.okta() != null && weather.okta() <= Mist.CLEAR_OKTA + LAST_BIT;
    }

    private double lossMm(Weather weather, boolean today) {
        Weather.Damp damp = weather.damp();
        if (damp == null) {
            byRule |= today;
            return film.laidMm() * Drops.STEP_S / PLAIN_WINDOW_S;
        }
        byDamp |= today;
        windUnknown |= today && weather.windMs() == null;
        double windMs = weather.windMs() == null ? 0 : weather.windMs();
        return WaterFilm.evaporationMmPerDay(damp.temperatureC(), damp.dewPointC(), windMs) * Drops.STEP_S / DAY_S;
    }

    private void dried(ZonedDateTime time) {
        if (time.isBefore(dayBegins)) {
            return;
        }
        dryBy = time;
        if (ofDew) {
            reasons.add(new WeatherAdvice.DropsOfDew(time));
        } else {
            reasons.add(new WeatherAdvice.DropsAfterRain(wetUntil, time));
        }
        ifItRains();
    }

    /** Ends the drops where the forecast ends: how long they stay is then unknown. */
    private void outlast(ZonedDateTime time) {
        if (film.wet() && time.isAfter(dayBegins)) {
            dryBy = null;
            reasons.add(new WeatherAdvice.DropsOutlast(time));
            ifItRains();
        }
    }

    private void ifItRains() {
        if (chance < 1) {
            reasons.add(new WeatherAdvice.DropsIfItRains(chance));
        }
    }

    private void remark(boolean judged) {
        if (reasons.isEmpty()) {
            reasons.add(judged ? new WeatherAdvice.DropsNone() : new WeatherAdvice.DropsUnknown());
        }
        if (byDamp) {
            reasons.add(new WeatherAdvice.DropsByDamp());
        }
        if (byRule) {
            reasons.add(new WeatherAdvice.DropsByRule());
        }
        if (windUnknown) {
            reasons.add(new WeatherAdvice.DropsWindUnknown());
        }
    }
}
