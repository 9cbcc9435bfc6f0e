package understorey.advice;

import static understorey.advice.Measure.CELSIUS;
import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.SHUTTER_SECONDS;

/** Why something stays at home, and what the whole bag lacks. */
public sealed interface BagAdvice extends Advice {

    /** Why a thing stays at home: no body takes it, it suits no picture, a lighter one does. */
    record LeftNoBody(String mount) implements BagAdvice {
    }

    record LeftUnasked() implements BagAdvice {
    }

    record LeftAsWell(String shot, String instead) implements BagAdvice {
    }

    record LeftCompromise(String shot, String instead) implements BagAdvice {
    }

    record LeftSpared(String shot, String instead) implements BagAdvice {
    }

    record LeftOutclassed(String shot, String instead) implements BagAdvice {
    }

    /** The author decided on another camera. */
    record LeftByChoice(String shot, String instead) implements BagAdvice {
    }

    /** The only picture that it is for cannot be taken in the light there will be. */
    record LeftNoLight() implements BagAdvice {
    }

    /** A head torch, where it is light from an hour before the visit to an hour after. */
    record LeftLight() implements BagAdvice {
    }

    /** A rain cover, where the forecast has no rain. */
    record LeftDry() implements BagAdvice {
    }

    /** The bag lists no card. */
    record HelpCard(@In(COUNT) double needed) implements BagAdvice {
    }

    /** A long time on legs, and nothing to let go with. */
    record HelpRelease(String shot, @In(SHUTTER_SECONDS) double time) implements BagAdvice {
    }

    /** A way is dark and no extra is a head torch. */
    record HelpLamp() implements BagAdvice {
    }

    record HelpCards(@In(COUNT) double needed, @In(COUNT) double have) implements BagAdvice {
    }

    record HelpBatteries(@In(COUNT) int needed, @In(COUNT) int have) implements BagAdvice {
    }

    record BatteriesCold(@In(COUNT) int needed, @In(CELSIUS) double celsius, @In(COUNT) int have) implements BagAdvice {
    }
}
