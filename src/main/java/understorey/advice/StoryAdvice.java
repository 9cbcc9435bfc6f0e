package understorey.advice;

import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.DEGREES;

/** What the story lacks, and where its pictures look alike. */
public sealed interface StoryAdvice extends Advice {

    /** A role that no picture plays. */
    record RoleMissing(Enum<?> role) implements StoryAdvice {
    }

    record HeightsAlike(@In(COUNT) int count, Enum<?> alike, Enum<?> missing) implements StoryAdvice {
    }

    record DistancesAlike(@In(COUNT) int count, Enum<?> alike, Enum<?> missing) implements StoryAdvice {
    }

    record ViewsAlike(@In(COUNT) int count, Enum<?> alike, Enum<?> missing) implements StoryAdvice {
    }

    record OrientationsAlike(@In(COUNT) int count, Enum<?> alike, Enum<?> missing) implements StoryAdvice {
    }

    /** Every picture looks one way, and all of them say which. */
    record FacingsAlike(@In(COUNT) int count, @In(DEGREES) double bearing) implements StoryAdvice {
    }

    /** Two pictures of one subject and spot that differ in nothing. */
    record PicturesAlike(String shot, String other) implements StoryAdvice, OfShot {
    }
}
