package understorey.advice;

import static understorey.advice.Measure.CELSIUS;
import static understorey.advice.Measure.COMPASS;
import static understorey.advice.Measure.DEGREES;
import static understorey.advice.Measure.EV100;
import static understorey.advice.Measure.OKTA;
import static understorey.advice.Measure.RAIN;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.STOPS;

/** Why the light at a time is what a picture wishes for, or what spoils it. */
public sealed interface LightAdvice extends Advice {

    record SunIsLow(@In(DEGREES) double altitude) implements LightAdvice {
    }

    record SunTooHigh(@In(DEGREES) double altitude) implements LightAdvice {
    }

    record SunNotYetUp() implements LightAdvice {
    }

    record SunBehindLand() implements LightAdvice {
    }

    record SunHidden(@In(OKTA) double okta) implements LightAdvice {
    }

    /** Chance that the sun is out. */
    record SunBehindCloud(@In(OKTA) double okta, @In(SHARE) double chance) implements LightAdvice {
    }

    /** The sun comes in only from an edge of the wood towards it, and none is known. */
    record NeedsOpening(@In(COMPASS) double bearing) implements LightAdvice {
    }

    record FlecksTooFew(@In(SHARE) double share) implements LightAdvice {
    }

    record AheadAsWished(@In(DEGREES) double off) implements LightAdvice {
    }

    record AsideAsWished(@In(DEGREES) double off) implements LightAdvice {
    }

    record BehindYouAsWished(@In(DEGREES) double off) implements LightAdvice {
    }

    record SunOffTheSideWished(@In(DEGREES) double off) implements LightAdvice {
    }

    /** The picture has no bearing: turn. */
    record FaceIntoSun(@In(DEGREES) double bearing) implements LightAdvice {
    }

    record FaceAcrossSun(@In(DEGREES) double bearing) implements LightAdvice {
    }

    record FaceAwayFromSun(@In(DEGREES) double bearing) implements LightAdvice {
    }

    /** The sun is too high to light the picture from one side. */
    record SunTooSteep(@In(DEGREES) double altitude) implements LightAdvice {
    }

    record SunIsHigh(@In(DEGREES) double altitude) implements LightAdvice {
    }

    record SunNotHigh(@In(DEGREES) double altitude) implements LightAdvice {
    }

    record SoftWithoutSun() implements LightAdvice {
    }

    record SoftUnderCloud(@In(OKTA) double okta) implements LightAdvice {
    }

    record SoftUnderLeaves() implements LightAdvice {
    }

    /** Chance that the sun spoils soft light. */
    record SunComesOut(@In(OKTA) double okta, @In(SHARE) double chance) implements LightAdvice {
    }

    record Harsh(@In(STOPS) double contrast) implements LightAdvice {
    }

    record MistLikely() implements LightAdvice {
    }

    record MistPossible() implements LightAdvice {
    }

    record MistUnlikely() implements LightAdvice {
    }

    record MistNotJudged() implements LightAdvice {
    }

    record DropsThere() implements LightAdvice {
    }

    record DropsDrying() implements LightAdvice {
    }

    /** Chance of the rain that leaves the drops. */
    record DropsIfRainFell(@In(SHARE) double chance) implements LightAdvice {
    }

    record DropsGone() implements LightAdvice {
    }

    record DropsNotJudged() implements LightAdvice {
    }

    record TwilightNow() implements LightAdvice {
    }

    record NotTwilight() implements LightAdvice {
    }

    record FlowersOpen() implements LightAdvice {
    }

    record ClosedAtNight(@In(DEGREES) double altitude, Enum<?> source) implements LightAdvice {
    }

    record ClosedInDullWeather(@In(OKTA) double okta, Enum<?> source) implements LightAdvice {
    }

    record ClosedInTheCold(@In(CELSIUS) double temperature, @In(CELSIUS) double opens, Enum<?> source) implements LightAdvice {
    }

    record ClosedInRain(Enum<?> source) implements LightAdvice {
    }

    /** How sure the catalogue is that flowers close. */
    enum Source { CONFIRMED, UNCONFIRMED, NONE }

    record LightGone(@In(EV100) double ev) implements LightAdvice {
    }

    /** Rain in the hour of the picture, with its chance. */
    record RainFalls(@In(RAIN) double amount, @In(SHARE) double chance) implements LightAdvice {
    }

    /** Colours and focusing fade on the ground. */
    record TooDim(@In(EV100) double ev) implements LightAdvice {
    }
}
