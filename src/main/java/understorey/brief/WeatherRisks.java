package understorey.brief;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.SpoilerAdvice;
import understorey.exposure.Settings;
import understorey.exposure.motion.MotionBlur;
import understorey.plan.LightWish;
import understorey.sky.Interval;
import understorey.visit.WeatherHour;
import understorey.weather.Likelihood;
import understorey.weather.Mist;
import understorey.weather.Weather;

/** Finds what the weather could spoil: wind, rain, mist, and what the forecast does not give. */
final class WeatherRisks {

    /** Rain in an hour costs this much of it; after the visit it may come early: rules of thumb, no source. */
    private static final double WET = 0.6;
    private static final double ANY_SKY = 0.4;
    private static final double ANY_WIND = 0.3;
    /** Faster than that a light breeze blurs nothing: common practice, no source. */
    private static final double FROZEN_S = 1 / 250.0;
    /** Not enough to be named beside another risk. */
    private static final double CALM = 0.01;

    private final Brief brief;
    private final List<Risk> risks = new ArrayList<>();

    private WeatherRisks(Brief brief) {
        this.brief = brief;
    }

    static List<Risk> of(Brief brief) {
        WeatherRisks weather = new WeatherRisks(brief);
        weather.sky();
        if (!weather.blurs()) {
            weather.wind();
        }
        weather.rain();
        weather.mistNeeded();
        weather.mistInTheWay();
        return weather.risks;
    }

    /** How far apart the skies are for the picture that they change most. */
    private void sky() {
        double stops = brief.timed().stream().filter(shot -> !shot.otherSkies().isEmpty()).map(TimedShot::otherSkies)
                .map(skies -> skies.stream().mapToDouble(sky -> sky.settings().ev100()).summaryStatistics())
                .mapToDouble(ev -> ev.getMax() - ev.getMin()).max().orElse(0);
        if (brief.trip().forecast().isEmpty() && stops > 0) {
            add(ANY_SKY, new SpoilerAdvice.NoForecast(stops));
        }
    }

    /** The pictures that need a lull, with the figures of the one that needs it most; false if none does. */
    private boolean blurs() {
        MotionBlur worst = null;
        int number = 0;
        double cost = 0;
        double all = 0;
        for (TimedShot shot : brief.timed()) {
            MotionBlur blur = blur(shot);
            all += shot.intent().priority();
            if (blur != null) {
                cost += cost(blur.degree()) * shot.intent().priority();
                number = worst == null || blur.longestS() < worst.longestS() ? shot.number() : number;
                worst = worst == null || blur.longestS() < worst.longestS() ? blur : worst;
            }
        }
        if (worst != null) {
            add(cost / all, new SpoilerAdvice.WindBlurs(worst.windMs(), List.of(number), worst.longestS(),
                    PictureSet.of(brief, shot -> blur(shot) != null).numbers()));
        }
        return worst != null;
    }

    /** How much of a picture motion blur may cost: rules of thumb, no source. */
    private static double cost(MotionBlur.Degree degree) {
        return switch (degree) {
            case IN_GUSTS -> 0.35;
            case UNLESS_IN_LULL -> 0.6;
            case ALWAYS -> 0.9;
        };
    }

    /** Null for a picture that the wind spares, or whose gusts are only assumed. */
    private static @Nullable MotionBlur blur(TimedShot shot) {
        Settings settings = taken(shot);
        MotionBlur blur = settings == null ? null : settings.motionBlur();
        boolean assumed = shot.weather().windMs() == null && shot.weather().gustMs() == null;
        return assumed && blur != null && blur.degree() == MotionBlur.Degree.IN_GUSTS ? null : blur;
    }

    /** Settings of a picture that has a camera and a time; null for any other. */
    private static @Nullable Settings taken(TimedShot shot) {
        return shot.time() == null ? null : shot.settings();
    }

    /** The strongest wind; without one the slowest shutter speed, which a wind would spoil first. */
    private void wind() {
        double strongestMs = brief.weather().stream().filter(hour -> hour.time().isBefore(brief.order().leave()))
                .mapToDouble(hour -> Math.max(orNone(hour.weather().windMs()), orNone(hour.weather().gustMs()))).max().orElse(-1);
        if (strongestMs >= 0) {
            add(CALM, new SpoilerAdvice.WindForecast(strongestMs));
            return;
        }
        double slowestS = 0;
        int number = 0;
        for (TimedShot shot : brief.timed()) {
            Settings settings = taken(shot);
            if (settings != null && slowestS(shot, settings) > slowestS) {
                slowestS = slowestS(shot, settings);
                number = shot.number();
            }
        }
        if (slowestS > 0) {
            add(slowestS < FROZEN_S ? CALM : ANY_WIND, new SpoilerAdvice.NoWindForecast(slowestS, List.of(number)));
        }
    }

    /** Under the sky expected, or in any sky without a forecast, s. */
    private static double slowestS(TimedShot shot, Settings settings) {
        return shot.skyKnown() ? settings.shutterS()
                : shot.otherSkies().stream().mapToDouble(other -> other.settings().shutterS()).max().orElse(settings.shutterS());
    }

    private static double orNone(@Nullable Double speedMs) {
        return speedMs == null ? -1 : speedMs;
    }

    /** The hour of the visit in which rain costs most. */
    private void rain() {
        brief.weather().stream().map(this::rain).filter(Objects::nonNull)
                .reduce((worst, risk) -> risk.weight() > worst.weight() ? risk : worst).ifPresent(risks::add);
    }

    private @Nullable Risk rain(WeatherHour hour) {
        Weather weather = hour.weather();
        Double amount = weather.rainMm();
        Double chance = weather.rainChance();
        if (!hour.time().isBefore(brief.order().leave()) || !hour.wet()) {
            return null;
        }
        if (chance == null) {
            return new Risk(WET, new SpoilerAdvice.RainForecast(Objects.requireNonNull(amount, "wet"), hour.time()));
        }
        return new Risk(WET * chance, amount == null ? new SpoilerAdvice.RainOfAnyAmount(chance, hour.time())
                : new SpoilerAdvice.RainPerhaps(chance, amount, hour.time()));
    }

    private void mistNeeded() {
        PictureSet pictures = PictureSet.of(brief, shot -> shot.time() != null && shot.intent().shot().light().contains(LightWish.MIST));
        Likelihood likelihood = mist().likelihood();
        if (pictures.isEmpty() || likelihood == Likelihood.HIGH) {
            return;
        }
        if (likelihood == null) {
            add(0.5 * pictures.share(), new SpoilerAdvice.MistNotEstimated(pictures.numbers()));
        } else if (likelihood == Likelihood.NONE) {
            add(0.9 * pictures.share(), new SpoilerAdvice.MistNotExpected(pictures.numbers()));
        } else {
            add((likelihood == Likelihood.LOW ? 0.7 : 0.4) * pictures.share(), new SpoilerAdvice.MistMayFail(likelihood, pictures.numbers()));
        }
    }

    /** Pictures that need sun before any mist is gone. */
    private void mistInTheWay() {
        Likelihood likelihood = mist().likelihood();
        Interval when = mist().when();
        if (when == null || likelihood != Likelihood.HIGH && likelihood != Likelihood.MEDIUM) {
            return;
        }
        PictureSet pictures = PictureSet.of(brief, shot -> startsBefore(when.to(), shot)
                && shot.intent().shot().wishesForSun()
                && !shot.intent().shot().light().contains(LightWish.MIST));
        if (!pictures.isEmpty()) {
            add((likelihood == Likelihood.HIGH ? 0.5 : 0.25) * pictures.share(),
                    new SpoilerAdvice.MistHidesSun(likelihood, when.to(), pictures.numbers()));
        }
    }

    private static boolean startsBefore(ZonedDateTime end, TimedShot shot) {
        Interval time = shot.time();
        return time != null && time.from().isBefore(end);
    }

    /** The same at each place. */
    private Mist mist() {
        return brief.day().places().get(0).mist();
    }

    private void add(double weight, Advice reason) {
        risks.add(new Risk(weight, reason));
    }
}
