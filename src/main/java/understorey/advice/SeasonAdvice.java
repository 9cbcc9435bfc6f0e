package understorey.advice;

import static understorey.advice.Measure.CELSIUS;
import static understorey.advice.Measure.CELSIUS_APART;
import static understorey.advice.Measure.COUNT;
import static understorey.advice.Measure.DAYS;
import static understorey.advice.Measure.DAYS_TO_TENTH;
import static understorey.advice.Measure.DAY_OF_YEAR;
import static understorey.advice.Measure.WHOLE_METRES;

import java.time.LocalDate;
import java.time.Month;

/** How a flowering window was found. */
public sealed interface SeasonAdvice extends Advice {

    /** May spoil the visit or endanger people. */
    sealed interface Warning extends SeasonAdvice {

        @Override
        default Severity severity() {
            return Severity.WARNING;
        }
    }

    /** The years, months or sightings that the window rests on. */
    sealed interface Method extends SeasonAdvice {
    }

    /** The months of the catalogue alone. */
    record ByCatalogue(Month first, Month last) implements Method {
    }

    /** The day of the catalogue at another place. */
    record ByCataloguePeak(@In(DAY_OF_YEAR) LocalDate day, String place, @In(DAYS) double error) implements Method {
    }

    /** The day of the catalogue at another place, moved to the other hemisphere. */
    record ByMirroredPeak(@In(DAY_OF_YEAR) LocalDate day, String place, @In(DAYS) double error) implements Method {
    }

    /** Moved by latitude and height (bioclimatic law). */
    record CatalogueLater(@In(DAYS) double days, @In(WHOLE_METRES) double climb) implements SeasonAdvice {
    }

    record CatalogueEarlier(@In(DAYS) double days, @In(WHOLE_METRES) double climb) implements SeasonAdvice {
    }

    /** One or two years give no interval. */
    record ByFewRecords(@In(COUNT) int years, @In(DAYS) double error) implements Method {
    }

    record ByMean(@In(COUNT) int years, @In(DAYS) double error) implements Method {
    }

    record ByWindow(@In(COUNT) int years, @In(DAY_OF_YEAR) LocalDate from, @In(DAY_OF_YEAR) LocalDate to,
            @In(CELSIUS) double temperature, @In(DAYS) double error) implements Method {
    }

    record ByThermalTime(@In(COUNT) int years, @In(CELSIUS) double base, @In(DAY_OF_YEAR) LocalDate start,
            @In(DAYS) double error) implements Method {
    }

    /** Only sightings of this year are known. */
    record BySightingsAlone() implements Method {
    }

    /** A model with temperatures predicts left-out years better than their mean does. */
    record TemperatureHelped(@In(COUNT) int years, @In(DAYS_TO_TENTH) double miss, @In(DAYS_TO_TENTH) double mean) implements SeasonAdvice {
    }

    record TemperatureDidNotHelp(@In(COUNT) int years, @In(DAYS_TO_TENTH) double miss,
            @In(DAYS_TO_TENTH) double mean) implements SeasonAdvice {
    }

    record TemperatureTooFewYears(@In(COUNT) int years, @In(COUNT) int least) implements SeasonAdvice {
    }

    record TemperatureNoneThisYear() implements SeasonAdvice {
    }

    /** Colder or warmer than any year on record. */
    record OutsideRecordedRange(@In(CELSIUS) double temperature, @In(CELSIUS) double low,
            @In(CELSIUS) double high) implements SeasonAdvice {
    }

    record RestAsUsual() implements SeasonAdvice {
    }

    record SpringEarlier(@In(CELSIUS_APART) double warmth, @In(DAYS) double days, @In(DAYS) double least,
            @In(DAYS) double most) implements SeasonAdvice {
    }

    record SpringLater(@In(CELSIUS_APART) double warmth, @In(DAYS) double days, @In(DAYS) double least,
            @In(DAYS) double most) implements SeasonAdvice {
    }

    record SightingsUsed(@In(COUNT) int sightings, Enum<?> stage, @In(DAY_OF_YEAR) LocalDate date,
            @In(DAYS) double error) implements SeasonAdvice {
    }

    record CourseAssumed(@In(DAYS) double rise, @In(DAYS) double fall) implements SeasonAdvice {
    }

    record CourseByCatalogue(@In(DAYS) double rise, @In(DAYS) double fall) implements SeasonAdvice {
    }

    /** A later stage seen before an earlier one. */
    record SightingsDisagree(String subject, Enum<?> later, @In(DAY_OF_YEAR) LocalDate date, Enum<?> earlier,
            @In(DAY_OF_YEAR) LocalDate after) implements Warning {
    }

    /** Two entries for one season. */
    record RecordsTwice(String subject, @In(DAY_OF_YEAR) LocalDate date) implements Warning {
    }
}
