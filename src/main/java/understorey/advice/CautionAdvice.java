package understorey.advice;

import static understorey.advice.Measure.METRES_PER_SECOND;
import static understorey.advice.Measure.MINUTES;

import java.time.ZonedDateTime;

/** Cautions that fit the trip. */
public sealed interface CautionAdvice extends Advice {

    /** May spoil the visit or endanger people. */
    sealed interface Warning extends CautionAdvice {

        @Override
        default Severity severity() {
            return Severity.WARNING;
        }
    }

    record LocalRules() implements CautionAdvice {
    }

    record DarkOnTheWayIn(ZonedDateTime until, @In(MINUTES) long minutes) implements CautionAdvice {
    }

    record DarkOnTheWayOut(ZonedDateTime from, @In(MINUTES) long minutes) implements CautionAdvice {
    }

    record DarkInBetween(ZonedDateTime from, ZonedDateTime until) implements CautionAdvice {
    }

    record DarkAllTheTime() implements CautionAdvice {
    }

    record KeepToThePaths() implements CautionAdvice {
    }

    record Ticks() implements CautionAdvice {
    }

    record BranchesInWind() implements CautionAdvice {
    }

    /** Gusts from 14 m/s: twigs and branches break. */
    record GustsBreakBranches(@In(METRES_PER_SECOND) double gust) implements Warning {
    }

    /** Gusts from 20 m/s: stay away. */
    record GustsTooStrong(@In(METRES_PER_SECOND) double gust) implements Warning {
    }

    record SunThroughALens() implements CautionAdvice {
    }

    /** Of a visit past midnight. */
    record AccessAtNight() implements CautionAdvice {
    }

    record TellSomeone() implements CautionAdvice {
    }

    /** A rule of the site's country about its wild plants. */
    record PlantLaw(String subject, String rule, String source) implements CautionAdvice {
    }

    /** No country is given, or no rule of it is on file. */
    record PlantLawUnknown() implements CautionAdvice {
    }

    record RainCover(ZonedDateTime from) implements CautionAdvice {
    }

    /** What the catalogue says of a subject. */
    record CareForSubject(String subject, String care) implements CautionAdvice {
    }
}
