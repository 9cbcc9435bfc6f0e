package understorey.advice;

import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.DAYS;
import static understorey.advice.Measure.DAY_OF_YEAR;
import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.MINUTES;
import static understorey.advice.Measure.RAIN;
import static understorey.advice.Measure.SHARE;
import static understorey.advice.Measure.SHUTTER_SECONDS;
import static understorey.advice.Measure.STOPS;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;

/** What could spoil a day. */
public sealed interface SpoilerAdvice extends Advice {

    record FlowersUnlikely(@In(SHARE) double chance, String subject) implements SpoilerAdvice {
    }

    record FlowersLikely(@In(SHARE) double chance, String subject, @In(DAYS) double error) implements SpoilerAdvice {
    }

    record FlowersUnknown(String subject, List<Integer> pictures) implements SpoilerAdvice {
    }

    record PicturesImpossible(List<Integer> pictures, @In(COUNT) int count, @In(COUNT) int all) implements SpoilerAdvice {
    }

    record PicturesLeftOut(List<Integer> pictures, @In(COUNT) int count, @In(COUNT) int all) implements SpoilerAdvice {
    }

    record PicturesCompromised(List<Integer> pictures, @In(COUNT) int count, @In(COUNT) int all) implements SpoilerAdvice {
    }

    record LightPoor(List<Integer> pictures, @In(COUNT) int count, @In(COUNT) int all) implements SpoilerAdvice {
    }

    record WindBlurs(@In(METRES_PER_SECOND) double wind, List<Integer> worst, @In(SHUTTER_SECONDS) double longest,
            List<Integer> pictures) implements SpoilerAdvice {
    }

    /** The shutter speeds of the plan hold it. */
    record WindForecast(@In(METRES_PER_SECOND) double wind) implements SpoilerAdvice {
    }

    /** A danger under trees. */
    record BranchesMayFall(@In(METRES_PER_SECOND) double gust) implements SpoilerAdvice {
    }

    record NoWindForecast(@In(SHUTTER_SECONDS) double time, List<Integer> pictures) implements SpoilerAdvice {
    }

    record RainPerhaps(@In(SHARE) double chance, @In(RAIN) double amount, ZonedDateTime time) implements SpoilerAdvice {
    }

    /** The forecast gives only the chance. */
    record RainOfAnyAmount(@In(SHARE) double chance, ZonedDateTime time) implements SpoilerAdvice {
    }

    record RainForecast(@In(RAIN) double amount, ZonedDateTime time) implements SpoilerAdvice {
    }

    record MistMayFail(Enum<?> likelihood, List<Integer> pictures) implements SpoilerAdvice {
    }

    record MistNotExpected(List<Integer> pictures) implements SpoilerAdvice {
    }

    record MistNotEstimated(List<Integer> pictures) implements SpoilerAdvice {
    }

    record MistHidesSun(Enum<?> likelihood, ZonedDateTime gone, List<Integer> pictures) implements SpoilerAdvice {
    }

    record NoForecast(@In(STOPS) double stops) implements SpoilerAdvice {
    }

    /** No time is left between the walk back and the closing. */
    record ClosingAtOnce(ZonedDateTime at) implements SpoilerAdvice {
    }

    /** Most pictures are of flowers that are hardly open. */
    record FlowersHardly(@In(SHARE) double chance, String subject) implements SpoilerAdvice {
    }

    /** When the flowers are likelier. */
    record GoInstead(@In(DAY_OF_YEAR) LocalDate from, @In(DAY_OF_YEAR) LocalDate to, @In(SHARE) double most) implements SpoilerAdvice {
    }

    record BestOfDaysGiven(@In(COUNT) int days) implements SpoilerAdvice {
    }

    record FewPossible(@In(COUNT) int count, @In(COUNT) int all) implements SpoilerAdvice {
    }

    record ClosingSoon(ZonedDateTime at, @In(MINUTES) long minutes) implements SpoilerAdvice {
    }
}
