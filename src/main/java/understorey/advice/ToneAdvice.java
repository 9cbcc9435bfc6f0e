package understorey.advice;

import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.STOPS;

/** Which tones of the scene a frame holds. */
public sealed interface ToneAdvice extends Advice {

    record FrameHoldsSun(@In(STOPS) double stops) implements ToneAdvice {
    }

    record BracketUp(@In(STOPS) double contrast, @In(COUNT) int frames) implements ToneAdvice {
    }

    record Bracket(@In(STOPS) double contrast, @In(COUNT) int frames, @In(STOPS) double darkest) implements ToneAdvice {
    }

    /** One frame holds flecks and shade when it is exposed for the flecks. */
    record ExposeForFlecks(@In(STOPS) double contrast, @In(STOPS) double less) implements ToneAdvice {
    }

    /** A meter makes mist mid-grey, and it is brighter. */
    record ExposeForMist(@In(STOPS) double more) implements ToneAdvice {
    }

    /** Settings are for the shade between flecks of sun. */
    record SmallFrameInShade(@In(STOPS) double stops) implements ToneAdvice {
    }

    /** Settings are for a fleck of sun. */
    record SmallFrameInSun(@In(STOPS) double stops) implements ToneAdvice {
    }

    /** The petals are so bright that they clip where the meter makes leaves mid-grey. */
    record PetalsClip(String subject, @In(STOPS) double stops, @In(STOPS) double less) implements ToneAdvice {
    }

    record PetalsBright(String subject, @In(STOPS) double stops) implements ToneAdvice {
    }

    record PetalsMiddle(String subject) implements ToneAdvice {
    }

    record PetalsDark(String subject, @In(STOPS) double stops) implements ToneAdvice {
    }

    record NoRaw() implements ToneAdvice {
    }
}
