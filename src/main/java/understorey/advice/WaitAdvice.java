package understorey.advice;

import static understorey.advice.Measure.MINUTES;
import static understorey.advice.Measure.STOPS;

import java.time.ZonedDateTime;

/** What a wait is for. */
public sealed interface WaitAdvice extends Advice {

    record WaitForOpening(ZonedDateTime opens) implements WaitAdvice {
    }

    record WaitForPin(ZonedDateTime pin) implements WaitAdvice {
    }

    record WaitForSunrise(ZonedDateTime sunrise) implements WaitAdvice {
    }

    /** The sun clears the skyline at the place of the picture. */
    record WaitForSun(ZonedDateTime clears) implements WaitAdvice {
    }

    /** The visit has no light for the picture, but daylight from then on. */
    record WaitForDay(ZonedDateTime from) implements WaitAdvice {
    }

    /** The light of the next picture has a better grade from then on. */
    record WaitForLight(ZonedDateTime from, Enum<?> grade) implements WaitAdvice {
    }

    /** The light of the next picture comes nearest to the wish from then on, without a better grade than shortly before. */
    record WaitForBestLight(ZonedDateTime from, Enum<?> grade) implements WaitAdvice {
    }

    record WaitForBetterLight(ZonedDateTime from, Advice why) implements WaitAdvice {
    }

    /** The ground is brighter then by so many stops: a faster shutter speed, or a lower ISO. */
    record WaitForMoreLight(ZonedDateTime from, @In(STOPS) double stops) implements WaitAdvice {
    }

    /** Wind or light allow a faster shutter speed, a lower ISO or more depth of field then. */
    record WaitForEasierSettings(ZonedDateTime from) implements WaitAdvice {
    }

    /** What a wait is for under a sky that may come; the forecast does not say which. */
    record WaitForSky(Enum<?> sky, Advice why) implements WaitAdvice {
    }

    /** A wait by day that is long enough for a picture that is not in the plan; {@code why} is its reason. */
    record WaitWithRoom(@In(MINUTES) long minutes, Advice why) implements WaitAdvice {
    }
}
