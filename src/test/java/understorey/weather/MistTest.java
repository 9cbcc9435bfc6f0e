package understorey.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.weather.Air.at;
import static understorey.weather.Air.kinds;
import static understorey.weather.Air.rows;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Places;
import understorey.Samples;
import understorey.advice.WeatherAdvice;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.sky.Interval;
import understorey.sky.SunDay;

class MistTest {

    private static final double KNOT_MS = 1852 / 3600.0;
    /** Sunrise is at about half past five. */
    private static final SunDay SUN = sun(Places.MID_LATITUDE);
    private static final ZonedDateTime SUNRISE = SUN.sunrise();
    private static final ZonedDateTime ON_FLOOR = SUNRISE.plusMinutes(100);

    private static SunDay sun(Places place) {
        return SunDay.of(place.position(), Interval.day(place.date(), place.zone()));
    }

    private static Mist mist(List<ForecastHour> forecast) {
        return Mist.atDawn(SUN, ON_FLOOR, forecast, null);
    }

    /** The same air all night. */
    private static Mist mist(double spreadC, double windMs, double okta) {
        return mist(rows(at("00:00").damp(6, spreadC).wind(windMs).cloud(okta),
                at("06:00").damp(6, spreadC).wind(windMs).cloud(okta)));
    }

    /** 2WW/TN-79/008; worked examples and classes as in the table. */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/fog-stability-index.csv")
    void worksTheFogStabilityIndexOut(double temperatureC, double temperature850C, double dewPointC, double windKn,
            double index, Likelihood likelihood) {
        assertEquals(index, DawnAir.stabilityIndex(temperatureC, temperature850C, dewPointC, windKn * KNOT_MS), 1e-9);
        Mist mist = mist(rows(at("05:00").damp(temperatureC, temperatureC - dewPointC).wind(9).cloud(0)
                .aloft(temperature850C, windKn * KNOT_MS)));
        assertEquals(likelihood, mist.likelihood());
        assertEquals(List.of(WeatherAdvice.MistIndex.class, WeatherAdvice.MistClears.class), kinds(mist.reasons()));
        assertEquals(index, Samples.the(WeatherAdvice.MistIndex.class, mist.reasons()).index(), 1e-9);
    }

    /** Closed cloud at dawn is no mist night, whatever the air aloft: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"2, HIGH", "3, MEDIUM", "4.9, MEDIUM", "5, LOW", "8, LOW"})
    void expectsLittleMistUnderACloudyNight(double okta, Likelihood likelihood) {
        Mist mist = mist(rows(at("05:00").damp(6, 0.5).wind(1).cloud(okta).aloft(10, 2)));
        assertEquals(likelihood, mist.likelihood());
        assertEquals(okta > 2, kinds(mist.reasons()).contains(WeatherAdvice.MistSkyCloudy.class));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/reference/night-cooling.csv")
    void coolsLessUnderCloud(double okta, double share) {
        assertEquals(share, Mist.coolingLeft(okta), 0.006);
    }

    /** Both limits in the moderate class: our reading, since neither page says. */
    @ParameterizedTest
    @CsvSource({"-5, HIGH", "30.9, HIGH", "31, MEDIUM", "55, MEDIUM", "55.1, LOW", "120, LOW"})
    void parsesTheIndexIntoItsClasses(double index, Likelihood likelihood) {
        assertEquals(likelihood, Mist.byIndex(index));
    }

    /** Spread of 2.8 °C: FAA AC 00-6A. Wind of 2.2 m/s: university lecture. 2 okta and 5 °C: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0, 0, 0, HIGH", "2.8, 2.1, 2, HIGH", "2.8, 2.2, 2, MEDIUM", "2.8, 2.1, 2.1, MEDIUM",
        "2.8, 2.2, 2.1, LOW", "2.9, 2.1, 2, LOW", "5, 2.1, 2, LOW", "2.9, 2.2, 2, NONE", "2.9, 2.1, 2.1, NONE",
        "5.1, 0, 0, NONE", "1, 1, 4.9, MEDIUM", "1, 1, 5, LOW", "1, 3, 5, NONE"})
    void judgesByRuleWithoutTheAirAloft(double spreadC, double windMs, double okta, Likelihood likelihood) {
        assertEquals(likelihood, mist(spreadC, windMs, okta).likelihood());
    }

    @Test
    void saysWhatSpeaksForMistAndWhatAgainst() {
        assertEquals(List.of(WeatherAdvice.MistAirDamp.class, WeatherAdvice.MistCalm.class, WeatherAdvice.MistSkyClear.class,
                        WeatherAdvice.MistByRule.class, WeatherAdvice.MistClears.class),
                kinds(mist(1, 1, 1).reasons()));
        assertEquals(List.of(WeatherAdvice.MistAirDry.class, WeatherAdvice.MistWindy.class, WeatherAdvice.MistSkyCloudy.class,
                        WeatherAdvice.MistByRule.class),
                kinds(mist(6, 4, 7).reasons()));
    }

    @Test
    void countsWindAndCloudThatNobodyToldAsNotMet() {
        Mist damp = mist(rows(at("05:00").damp(6, 1)));
        assertEquals(Likelihood.LOW, damp.likelihood());
        assertEquals(List.of(WeatherAdvice.MistAirDamp.class, WeatherAdvice.MistWindUnknown.class, WeatherAdvice.MistSkyUnknown.class,
                        WeatherAdvice.MistByRule.class, WeatherAdvice.MistClears.class),
                kinds(damp.reasons()));
        assertEquals(Likelihood.MEDIUM, mist(rows(at("05:00").damp(6, 1).wind(1))).likelihood());
        assertEquals(Likelihood.MEDIUM,
                Mist.atDawn(SUN, ON_FLOOR, rows(at("05:00").damp(6, 1)), SkyWord.CLEAR).likelihood());
        assertEquals(Likelihood.NONE, mist(rows(at("05:00").damp(6, 4).wind(1))).likelihood());
    }

    @Test
    void looksForTheDampestMomentAndTheMeanWindOfTheNight() {
        Mist mist = mist(rows(at("01:00").damp(9, 6).wind(4).cloud(6), at("05:00").damp(5, 0.5).wind(0).cloud(0),
                at("06:00").damp(5, 0.5).wind(0).cloud(0)));
        assertEquals(Likelihood.MEDIUM, mist.likelihood());
        assertEquals(0.5, Samples.the(WeatherAdvice.MistAirDamp.class, mist.reasons()).spread(), 1e-9);
        assertEquals(1.6, Samples.the(WeatherAdvice.MistCalm.class, mist.reasons()).wind(), 0.15);
    }

    @Test
    void takesAForecastThatBeginsWithinAnHourAfterSunrise() {
        Mist late = mist(rows(at("06:15").damp(6, 1).wind(1).cloud(1)));
        assertEquals(Likelihood.HIGH, late.likelihood());
        assertTrue(kinds(late.reasons()).contains(WeatherAdvice.MistForecastLate.class));
        Mist tooLate = mist(rows(at("07:00").damp(6, 1).wind(1).cloud(1)));
        assertNull(tooLate.likelihood());
        assertEquals(List.of(WeatherAdvice.MistUnknown.class), kinds(tooLate.reasons()));
        assertEquals(List.of(), kinds(mist(1, 1, 1).reasons()).stream().filter(WeatherAdvice.MistForecastLate.class::equals).toList());
    }

    @Test
    void judgesNothingWithoutWordOfTheDamp() {
        for (List<ForecastHour> forecast : List.of(List.<ForecastHour>of(), rows(at("05:00").wind(1).cloud(1)))) {
            Mist mist = Mist.atDawn(SUN, ON_FLOOR, forecast, SkyWord.CLEAR);
            assertNull(mist.likelihood());
            assertEquals(0, mist.at(SUNRISE.plusHours(8)));
            assertEquals(List.of(WeatherAdvice.MistUnknown.class), kinds(mist.reasons()));
            assertEquals(Double.NaN, mist.at(SUNRISE));
        }
    }

    @Test
    void readsRowsOfItsOwnNightInATripOfSeveralDays() {
        List<ForecastHour> rows = rows(at("22:00").on(MAY_DAY.minusDays(1)).damp(6, 9).wind(1).cloud(1),
                at("04:00").on(MAY_DAY).damp(6, 1).wind(1).cloud(1),
                at("05:00").on(MAY_DAY.plusDays(1)).damp(6, 9).wind(1).cloud(1));
        assertEquals(Likelihood.HIGH, mist(rows).likelihood());
        List<ForecastHour> others = rows(at("05:00").on(MAY_DAY.minusDays(1)).damp(6, 1),
                at("05:00").on(MAY_DAY.plusDays(2)).damp(6, 1));
        assertNull(mist(others).likelihood());
    }

    @Test
    void takesRowsWithoutADateForTheDayOfTheSunrise() {
        Places place = new Places(Places.POLAR_DAY.position(), Places.POLAR_DAY.zone(), MAY_DAY.plusDays(4));
        SunDay sun = sun(place);
        assertTrue(sun.sunrise().getHour() < 4, sun.sunrise().toString());
        Mist mist = Mist.atDawn(sun, null, rows(at("00:00").damp(6, 9).wind(1).cloud(1),
                at("23:00").damp(6, 0).wind(1).cloud(1)), null);
        assertEquals(Likelihood.NONE, mist.likelihood());
    }

    @Test
    void hasNoDawnWhereTheSunDoesNotRise() {
        for (Places place : List.of(Places.POLAR_DAY, Places.POLAR_NIGHT)) {
            Mist mist = Mist.atDawn(sun(place), null, rows(at("05:00").damp(6, 1).wind(1).cloud(1)), null);
            assertNull(mist.likelihood());
            assertEquals(List.of(WeatherAdvice.MistNoSunrise.class), kinds(mist.reasons()));
            assertEquals(0, mist.at(place.date().atTime(5, 0).atZone(place.zone())));
        }
    }

    /** Two hours before sunrise and ninety minutes of thinning: common practice, no source. */
    @Test
    void standsUntilTheSunReachesTheFloorAndThinsFromThere() {
        Mist mist = mist(1, 1, 1);
        assertEquals(0, mist.at(SUNRISE.minusMinutes(121)));
        assertEquals(1, mist.at(SUNRISE.minusMinutes(120)));
        assertEquals(1, mist.at(ON_FLOOR));
        assertEquals(0.5, mist.at(ON_FLOOR.plusMinutes(45)), 0.001);
        assertEquals(0, mist.at(ON_FLOOR.plusMinutes(90)));
        assertEquals(ON_FLOOR, Samples.the(WeatherAdvice.MistClears.class, mist.reasons()).thins());
    }

    /** Two hours after sunrise: common practice, no source. */
    @Test
    void thinsByTheHourWhereTheLandKeepsTheSunAway() {
        Mist mist = Mist.atDawn(SUN, null, rows(at("05:00").damp(6, 1).wind(5).cloud(1)), null);
        assertTrue(kinds(mist.reasons()).contains(WeatherAdvice.MistClearsInShade.class));
        assertEquals(0.6, mist.at(SUNRISE.plusHours(2)), 1e-9);
        assertEquals(0.2, mist.at(SUNRISE.plusHours(3)), 0.001);
        assertEquals(0, mist.at(SUNRISE.plusMinutes(210)));
    }

    @Test
    void givesEveryLikelihoodALevelOfItsOwn() {
        List<Double> levels = new ArrayList<>();
        for (Mist mist : List.of(mist(9, 1, 1), mist(4, 1, 1), mist(1, 5, 1), mist(1, 1, 1))) {
            levels.add(mist.at(SUNRISE));
        }
        assertEquals(List.of(0.0, 0.25, 0.6, 1.0), levels);
    }

    @Test
    void keepsItsHoursOnANightOfClockChange() {
        SunDay sun = sun(Places.SHORT_DAY);
        Mist mist = Mist.atDawn(sun, null, rows(at("01:00").damp(6, 1).wind(1).cloud(1),
                at("07:00").damp(6, 1).wind(1).cloud(1)), null);
        assertEquals(Likelihood.HIGH, mist.likelihood());
        assertEquals(Duration.ofMinutes(120 + 120 + 90), mist.when().length());
    }
}
