package understorey.weather;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.WeatherAdvice;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * Radiation mist at dawn: air that a clear, still night has cooled to its dew point. Mist that drifts in from water or
 * hangs in cloud is not covered. Hollows, streams and wood edges have more mist than a forecast for the district says, the
 * ground of a closed wood less (from memory).
 *
 * @param likelihood null if it is unknown
 * @param when       time in which mist is to be expected, from 2 hours before sunrise; null if none is likely
 * @param reasons    in the order of telling; never empty
 */
public record Mist(@Nullable Likelihood likelihood, @Nullable Interval when, List<Advice> reasons) {

    /** FAA AC 00-6A: fog is to be anticipated at a spread of 5 °F and less. */
    static final double DAMP_C = 2.8;
    /** Common practice, no source. */
    private static final double NEARLY_DAMP_C = 5;
    /** Radiation fog needs less than about 5 mph (a university lecture, Arizona NATS 101). */
    static final double CALM_BELOW_MS = 2.2;
    /** Low cloud of a night: up to the first mist is favoured, from the second on unlikely. Common practice, no source. */
    static final double CLEAR_OKTA = 2;
    private static final double CLOSED_OKTA = 5;
    /** Classes of the index: below the first high, above the second low (2WW/TN-79/008). Both limits count as moderate: an assumption. */
    private static final double INDEX_HIGH_BELOW = 31;
    private static final double INDEX_LOW_ABOVE = 55;
    private static final double CLEAR_SKY_EMISSIVITY = 0.75;
    /** Tolerance of limits for rounding errors of sums. */
    private static final double LAST_BIT = 1e-9;

    /** The times of mist are common practice, no source. */
    private static final Duration BEFORE_SUNRISE = Duration.ofHours(2);
    private static final Duration IN_SHADE = Duration.ofHours(2);
    private static final Duration THINNING = Duration.ofMinutes(90);

    public Mist {
        reasons = List.copyOf(reasons);
    }

    /**
     * The mist to expect at a place. The Fog Stability Index decides if the air at 850 hPa is known, otherwise a rule
     * of thumb: a spread of 2.8 °C and less is high with both a wind below 2.2 m/s and 2 okta and less, medium with
     * one of them, low with neither; a spread of up to 5 °C is low with both. An unknown figure counts as not met. By either
     * way, a cloud of more than 2 okta through the night leaves it medium at most, and from 5 okta on low at most; the rule
     * gives none then unless the air is calm.
     *
     * @param sunOnFloor first time in the morning at which the sun clears the skyline of the valley. After 2 hours, and
     *                   if it never does (null), mist thins without it
     */
    public static Mist atDawn(SunDay sun, @Nullable ZonedDateTime sunOnFloor, List<ForecastHour> forecast, @Nullable SkyWord sky) {
        if (sun.sunrise() == null) {
            return new Mist(null, null, List.of(new WeatherAdvice.MistNoSunrise()));
        }
        DawnAir air = DawnAir.of(sun.sunrise(), forecast, sky);
        if (air == null) {
            return new Mist(null, new Interval(sun.sunrise().minus(BEFORE_SUNRISE), sun.sunrise().plus(IN_SHADE)
                    .plus(THINNING)), List.of(new WeatherAdvice.MistUnknown()));
        }
        List<Advice> reasons = new ArrayList<>();
        Likelihood likelihood = underCloud(air.okta(), air.index() == null ? byRule(air, reasons) : byIndex(air.index()));
        if (air.index() != null) {
            reasons.add(new WeatherAdvice.MistIndex(air.index(), INDEX_HIGH_BELOW, INDEX_LOW_ABOVE));
            if (air.okta() != null && likelihood != byIndex(air.index())) {
                reasons.add(cloud(air.okta(), false));
            }
        }
        if (air.afterSunrise()) {
            reasons.add(new WeatherAdvice.MistForecastLate());
        }
        if (likelihood == Likelihood.NONE) {
            return new Mist(likelihood, null, reasons);
        }
        ZonedDateTime latest = sun.sunrise().plus(IN_SHADE);
        boolean inShade = sunOnFloor == null || sunOnFloor.isAfter(latest);
        ZonedDateTime thins = sunOnFloor == null || inShade ? latest : sunOnFloor;
        Interval when = new Interval(sun.sunrise().minus(BEFORE_SUNRISE), thins.plus(THINNING));
        reasons.add(clearing(inShade, thins, when.to()));
        return new Mist(likelihood, when, reasons);
    }

    /**
     * Mist to expect at a time, 0 to 1: its likelihood times the share that is left; not a number at a time of mist of
     * unknown likelihood.
     */
    public double at(ZonedDateTime time) {
        if (when == null || !when.contains(time)) {
            return 0;
        }
        if (likelihood == null) {
            return Double.NaN;
        }
        double left = (double) Duration.between(time, when.to()).toSeconds() / THINNING.toSeconds();
        return level(likelihood) * Math.min(1, left);
    }

    /** Whether mist may well come, also where it would be thinning: its likelihood is at least medium. */
    public boolean mayBe(ZonedDateTime time) {
        return when != null && when.contains(time) && (likelihood == Likelihood.MEDIUM || likelihood == Likelihood.HIGH);
    }

    /** Weight of a likelihood beside other light wishes: an assumption, not a probability. */
    private static double level(Likelihood likelihood) {
        return switch (likelihood) {
            case NONE -> 0;
            case LOW -> 0.25;
            case MEDIUM -> 0.6;
            case HIGH -> 1;
        };
    }

    static Likelihood byIndex(double index) {
        if (index < INDEX_HIGH_BELOW - LAST_BIT) {
            return Likelihood.HIGH;
        }
        return index <= INDEX_LOW_ABOVE + LAST_BIT ? Likelihood.MEDIUM : Likelihood.LOW;
    }

    /** As much as clouds leave of a likelihood; an unknown cover leaves it all. */
    private static Likelihood underCloud(@Nullable Double okta, Likelihood likelihood) {
        Likelihood most = okta == null || okta <= CLEAR_OKTA + LAST_BIT ? Likelihood.HIGH
                : okta < CLOSED_OKTA - LAST_BIT ? Likelihood.MEDIUM : Likelihood.LOW;
        return likelihood.compareTo(most) > 0 ? most : likelihood;
    }

    /**
     * Share of a clear night's loss of heat that the ground still has under a low cloud of 0 to 8 okta: (1 − ε)/(1 − ε₀) with
     * ε = 0.75(1 + 0.22 C²) and C the cover as a share of the sky. Bolz, form and values from memory; within about 0.1.
     */
    static double coolingLeft(double okta) {
        double share = okta / 8;
        return (1 - CLEAR_SKY_EMISSIVITY * (1 + 0.22 * share * share)) / (1 - CLEAR_SKY_EMISSIVITY);
    }

    private static Likelihood byRule(DawnAir air, List<Advice> reasons) {
        boolean calm = air.windMs() != null && air.windMs() < CALM_BELOW_MS - LAST_BIT;
        boolean clear = air.okta() != null && air.okta() <= CLEAR_OKTA + LAST_BIT;
        boolean damp = air.spreadC() <= DAMP_C + LAST_BIT;
        reasons.add(damp ? damp(air) : dry(air));
        reasons.add(air.windMs() == null ? new WeatherAdvice.MistWindUnknown() : wind(air.windMs(), calm));
        reasons.add(air.okta() == null ? new WeatherAdvice.MistSkyUnknown() : cloud(air.okta(), clear));
        reasons.add(new WeatherAdvice.MistByRule());
        if (damp) {
            boolean closed = air.okta() != null && air.okta() >= CLOSED_OKTA - LAST_BIT;
            return calm && clear ? Likelihood.HIGH : calm || clear ? Likelihood.MEDIUM : closed ? Likelihood.NONE : Likelihood.LOW;
        }
        return air.spreadC() <= NEARLY_DAMP_C + LAST_BIT && calm && clear ? Likelihood.LOW : Likelihood.NONE;
    }

    private static Advice damp(DawnAir air) {
        return new WeatherAdvice.MistAirDamp(air.spreadC(), DAMP_C);
    }

    private static Advice dry(DawnAir air) {
        return new WeatherAdvice.MistAirDry(air.spreadC(), DAMP_C);
    }

    private static Advice wind(double windMs, boolean calm) {
        if (calm) {
            return new WeatherAdvice.MistCalm(windMs);
        }
        return new WeatherAdvice.MistWindy(windMs, CALM_BELOW_MS);
    }

    private static Advice cloud(double okta, boolean clear) {
        if (clear) {
            return new WeatherAdvice.MistSkyClear(okta);
        }
        return new WeatherAdvice.MistSkyCloudy(okta, coolingLeft(okta));
    }

    private static Advice clearing(boolean inShade, ZonedDateTime thins, ZonedDateTime gone) {
        if (inShade) {
            return new WeatherAdvice.MistClearsInShade(thins, gone);
        }
        return new WeatherAdvice.MistClears(thins, gone);
    }
}
