package understorey.advice;

import static understorey.advice.Measure.CELSIUS_APART;
import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.OKTA;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.STOPS;
import static understorey.advice.Measure.WIND;

import java.time.ZonedDateTime;

/** Why mist or drops are likely, and how long they last. */
public sealed interface WeatherAdvice extends Advice {

    /** The published index of fog, with its limits. */
    record MistIndex(@In(COUNT) double index, @In(COUNT) double high, @In(COUNT) double low) implements WeatherAdvice {
    }

    /** There is no index, because the air aloft is unknown. */
    record MistByRule() implements WeatherAdvice {
    }

    record MistAirDamp(@In(CELSIUS_APART) double spread, @In(CELSIUS_APART) double limit) implements WeatherAdvice {
    }

    record MistAirDry(@In(CELSIUS_APART) double spread, @In(CELSIUS_APART) double limit) implements WeatherAdvice {
    }

    record MistCalm(@In(WIND) double wind) implements WeatherAdvice {
    }

    record MistWindy(@In(WIND) double wind, @In(METRES_PER_SECOND) double limit) implements WeatherAdvice {
    }

    record MistWindUnknown() implements WeatherAdvice {
    }

    record MistSkyClear(@In(OKTA) double cloud) implements WeatherAdvice {
    }

    /** Share of the cooling of a clear night that is left. */
    record MistSkyCloudy(@In(OKTA) double cloud, @In(SHARE) double left) implements WeatherAdvice {
    }

    record MistSkyUnknown() implements WeatherAdvice {
    }

    /** The forecast begins after sunrise. */
    record MistForecastLate() implements WeatherAdvice {
    }

    record MistUnknown() implements WeatherAdvice {
    }

    record MistNoSunrise() implements WeatherAdvice {
    }

    /** Mist thins when the sun reaches the ground. */
    record MistClears(ZonedDateTime thins, ZonedDateTime gone) implements WeatherAdvice {
    }

    /** Mist thins some hours after sunrise, where the skyline keeps the sun away. */
    record MistClearsInShade(ZonedDateTime thins, ZonedDateTime gone) implements WeatherAdvice {
    }

    /** How to expose in mist. */
    record InMist(@In(STOPS) double least, @In(STOPS) double most, ZonedDateTime until) implements WeatherAdvice {
    }

    /** Plan B. */
    record WithoutMist() implements WeatherAdvice {
    }

    record DropsAfterRain(ZonedDateTime time, ZonedDateTime dry) implements WeatherAdvice {
    }

    record DropsOfDew(ZonedDateTime dry) implements WeatherAdvice {
    }

    /** Drops are still there when the forecast or the date ends. */
    record DropsOutlast(ZonedDateTime time) implements WeatherAdvice {
    }

    /** Chance of the rain that leaves the drops. */
    record DropsIfItRains(@In(SHARE) double chance) implements WeatherAdvice {
    }

    record DropsByDamp() implements WeatherAdvice {
    }

    record DropsByRule() implements WeatherAdvice {
    }

    record DropsWindUnknown() implements WeatherAdvice {
    }

    record DropsNone() implements WeatherAdvice {
    }

    record DropsUnknown() implements WeatherAdvice {
    }
}
