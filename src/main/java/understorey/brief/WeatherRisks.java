package understorey.brief;

import static understorey.reason.Figure.Measure.CLOCK;
import static understorey.reason.Figure.Measure.METRES_PER_SECOND;
import static understorey.reason.Figure.Measure.MILLIMETRES;
import static understorey.reason.Figure.Measure.PICTURES;
import static understorey.reason.Figure.Measure.SHARE;
import static understorey.reason.Figure.Measure.SHUTTER_SECONDS;
import static understorey.reason.Figure.Measure.STOPS;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import understorey.exposure.ExposureReason;
import understorey.light.Likelihood;
import understorey.light.Mist;
import understorey.light.Weather;
import understorey.plan.LightWish;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.visit.WeatherHour;

/** Finds what the weather could spoil: wind, rain, mist, and what the forecast does not give. */
final class WeatherRisks {

    /** How much of a picture each remark on the wind may cost: rules of thumb, no source. */
    private static final Map<ExposureReason, Double> BLURRED = new EnumMap<>(Map.of(ExposureReason.WAIT_FOR_LULL, 0.35,
            ExposureReason.ISO_FOR_LULL, 0.35, ExposureReason.WAIT_OR_SMEAR, 0.6, ExposureReason.WIND_TOO_STRONG, 0.9));
    /** Rain in an hour costs this much of it; after the visit it may come early: rules of thumb, no source. */
    private static final double WET = 0.6;
    private static final double AFTER_VISIT = 0.5;
    private static final double LEAST_RAIN_CHANCE = 0.2;
    private static final double LEAST_RAIN_MM = 0.1;
    private static final double ANY_SKY = 0.4;
    private static final double ANY_WIND = 0.3;
    /** Not enough to be named beside another risk. */
    private static final double CALM = 0.01;
    private static final List<LightWish> NEED_SUN = List.of(LightWish.LOW_SUN, LightWish.BACKLIGHT, LightWish.SIDELIGHT,
            LightWish.FRONTLIGHT, LightWish.OVERHEAD);

    private final Brief brief;
    private final List<Risk> risks = new ArrayList<>();

    private WeatherRisks(Brief brief) {
        this.brief = brief;
    }

    static List<Risk> of(Brief brief) {
        WeatherRisks weather = new WeatherRisks(brief);
        weather.sky();
        weather.blur();
        weather.wind();
        weather.rain();
        weather.mistNeeded();
        weather.mistInTheWay();
        return weather.risks;
    }

    /** How far apart the skies are for the picture that they change most. */
    private void sky() {
        double stops = 0;
        for (TimedShot shot : brief.timed()) {
            for (TimedShot.Other one : shot.otherSkies()) {
                for (TimedShot.Other other : shot.otherSkies()) {
                    stops = Math.max(stops, one.settings().ev100() - other.settings().ev100());
                }
            }
        }
        if (brief.trip().forecast().isEmpty() && stops > 0) {
            add(ANY_SKY, Reason.of(SpoilerReason.NO_FORECAST).with("stops", stops, STOPS));
        }
    }

    /** The pictures that need a lull, with the figures of the one that needs it most. */
    private void blur() {
        Reason worst = null;
        int number = 0;
        double cost = 0;
        double all = 0;
        for (TimedShot shot : brief.timed()) {
            Reason wind = onWind(shot);
            all += shot.intent().priority();
            cost += wind == null ? 0 : BLURRED.get(wind.kind()) * shot.intent().priority();
            if (wind != null && (worst == null || longest(wind) < longest(worst))) {
                worst = wind;
                number = shot.number();
            }
        }
        if (worst != null) {
            add(cost / all, Reason.of(SpoilerReason.WIND_BLURS).with("wind", worst.figures().get("wind"))
                    .with("longest", worst.figures().get("longest")).with("worst", new Figure(List.of(number), PICTURES))
                    .with("pictures", PictureSet.of(brief, shot -> onWind(shot) != null).figure()));
        }
    }

    private static double longest(Reason wind) {
        return ((Number) wind.figures().get("longest").value()).doubleValue();
    }

    /** The remark on the wind that costs most; null for a picture that the wind spares. */
    private static Reason onWind(TimedShot shot) {
        Reason most = null;
        if (shot.settings() != null && shot.time() != null) {
            for (Reason reason : shot.settings().reasons()) {
                Double cost = BLURRED.get(reason.kind());
                most = cost != null && (most == null || cost > BLURRED.get(most.kind())) ? reason : most;
            }
        }
        return most;
    }

    /** The strongest wind; without one the slowest shutter speed, which a wind would spoil first. */
    private void wind() {
        double strongestMs = -1;
        for (WeatherHour hour : brief.weather()) {
            strongestMs = Math.max(strongestMs, Math.max(orNone(hour.weather().windMs()), orNone(hour.weather().gustMs())));
        }
        if (strongestMs >= 0) {
            add(CALM, Reason.of(SpoilerReason.WIND_FORECAST).with("wind", strongestMs, METRES_PER_SECOND));
            return;
        }
        TimedShot slowest = null;
        for (TimedShot shot : brief.timed()) {
            boolean taken = shot.settings() != null && shot.time() != null;
            if (taken && (slowest == null || shot.settings().shutterS() > slowest.settings().shutterS())) {
                slowest = shot;
            }
        }
        if (slowest != null) {
            add(ANY_WIND, Reason.of(SpoilerReason.NO_WIND_FORECAST)
                    .with("time", slowest.settings().shutterS(), SHUTTER_SECONDS)
                    .with("pictures", new Figure(List.of(slowest.number()), PICTURES)));
        }
    }

    private static double orNone(Double speedMs) {
        return speedMs == null ? -1 : speedMs;
    }

    /** The hour of the visit, or just after it, in which rain costs most. */
    private void rain() {
        Risk worst = null;
        for (WeatherHour hour : brief.weather()) {
            Risk risk = rain(hour);
            worst = worst == null || risk != null && risk.weight() > worst.weight() ? risk : worst;
        }
        if (worst != null) {
            risks.add(worst);
        }
    }

    private Risk rain(WeatherHour hour) {
        Weather weather = hour.weather();
        if (weather.rainMm() == null || weather.rainMm() < LEAST_RAIN_MM) {
            return null;
        }
        double cost = WET * (hour.time().isBefore(brief.order().leave()) ? 1 : AFTER_VISIT);
        Figure at = new Figure(hour.time(), CLOCK);
        if (weather.rainChance() == null) {
            return new Risk(cost, Reason.of(SpoilerReason.RAIN_FORECAST).with("amount", weather.rainMm(), MILLIMETRES).with("time", at));
        }
        return weather.rainChance() < LEAST_RAIN_CHANCE ? null : new Risk(cost * weather.rainChance(),
                Reason.of(SpoilerReason.RAIN_PERHAPS).with("chance", weather.rainChance(), SHARE)
                        .with("amount", weather.rainMm(), MILLIMETRES).with("time", at));
    }

    private void mistNeeded() {
        PictureSet pictures = PictureSet.of(brief, shot -> shot.intent().shot().light().contains(LightWish.MIST));
        Likelihood likelihood = mist().likelihood();
        if (pictures.isEmpty() || likelihood == Likelihood.HIGH) {
            return;
        }
        if (likelihood == null) {
            add(0.5 * pictures.share(), Reason.of(SpoilerReason.MIST_NOT_ESTIMATED).with("pictures", pictures.figure()));
        } else if (likelihood == Likelihood.NONE) {
            add(0.9 * pictures.share(), Reason.of(SpoilerReason.MIST_NOT_EXPECTED).with("pictures", pictures.figure()));
        } else {
            add((likelihood == Likelihood.LOW ? 0.7 : 0.4) * pictures.share(), Reason.of(SpoilerReason.MIST_MAY_FAIL)
                    .with("likelihood", Figure.word(likelihood)).with("pictures", pictures.figure()));
        }
    }

    /** Pictures that need sun before any mist is gone. */
    private void mistInTheWay() {
        Mist mist = mist();
        if (mist.stands() == null || mist.likelihood() != Likelihood.HIGH && mist.likelihood() != Likelihood.MEDIUM) {
            return;
        }
        PictureSet pictures = PictureSet.of(brief, shot -> shot.time() != null && shot.time().from().isBefore(mist.stands().to())
                && shot.intent().shot().light().stream().anyMatch(NEED_SUN::contains)
                && !shot.intent().shot().light().contains(LightWish.MIST));
        if (!pictures.isEmpty()) {
            add((mist.likelihood() == Likelihood.HIGH ? 0.5 : 0.25) * pictures.share(), Reason.of(SpoilerReason.MIST_HIDES_SUN)
                    .with("likelihood", Figure.word(mist.likelihood())).with("gone", new Figure(mist.stands().to(), CLOCK))
                    .with("pictures", pictures.figure()));
        }
    }

    private Mist mist() {
        return brief.day().places().get(0).mist();
    }

    private void add(double weight, Reason reason) {
        risks.add(new Risk(weight, reason));
    }
}
