package understorey.weather;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.weather.Air.at;
import static understorey.weather.Air.kinds;
import static understorey.weather.Air.rows;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Samples;
import understorey.advice.WeatherAdvice;
import understorey.plan.ForecastHour;
import understorey.plan.SkyWord;
import understorey.sky.Interval;

class DropsTest {

    private static final double NEAR = 1e-6;

    private static Drops drops(List<ForecastHour> forecast) {
        return Drops.of(Interval.day(MAY_DAY, Samples.zone()), forecast, null);
    }

    private static ZonedDateTime clock(String time) {
        return MAY_DAY.atTime(LocalTime.parse(time)).atZone(Samples.zone());
    }

    /** Hours of drying weather with rain in the first, all at 10 °C. */
    private static List<ForecastHour> afterRain(double rainMm, double spreadC, double windMs) {
        return rows(at("05:00").damp(10, spreadC).wind(windMs).cloud(8).rain(rainMm),
                at("06:00").damp(10, spreadC).wind(windMs).cloud(8).rain(0),
                at("22:00").damp(10, spreadC).wind(windMs).cloud(8).rain(0));
    }

    /** Penman 1948, aerodynamic part, from memory; worked by hand from the saturation pressures of the reference table. */
    @Test
    void driesAtTheAerodynamicRate() {
        double lackingHpa = 23.3344 - 12.2602;
        assertEquals(0.26 * lackingHpa, WaterFilm.evaporationMmPerDay(20, 10, 0), 0.0005);
        assertEquals(0.26 * 1.54 * lackingHpa, WaterFilm.evaporationMmPerDay(20, 10, 10), 0.0005);
        assertEquals(0, WaterFilm.evaporationMmPerDay(10, 10, 5));
    }

    @Test
    void keepsNoMoreWaterThanLeavesHold() {
        WaterFilm film = new WaterFilm();
        film.rain(0.05);
        film.rain(0.05);
        assertEquals(0.1, film.laidMm(), NEAR);
        film.rain(4);
        assertEquals(0.2, film.laidMm(), NEAR);
        film.lose(0.05);
        assertEquals(0.75, film.share(), NEAR);
        film.dew();
        assertEquals(0.15, film.mm(), NEAR);
        assertEquals(1, film.share(), NEAR);
        film.lose(9);
        assertEquals(0, film.share(), NEAR);
        assertTrue(!film.wet());
    }

    @Test
    void lastsUntilTheAirHasTakenTheFilm() {
        Drops drops = drops(afterRain(1, 4, 0));
        double hours = 0.2 / WaterFilm.evaporationMmPerDay(10, 6, 0) * 24;
        ZonedDateTime dry = clock("06:00").plusSeconds(Math.round(hours * 3600));
        assertTrue(Math.abs(Duration.between(dry, drops.dryBy()).toSeconds()) <= 2, dry + " " + drops.dryBy());
        assertEquals(0, drops.at(clock("04:59")));
        assertEquals(1, drops.at(clock("05:00")), NEAR);
        assertEquals(1, drops.at(clock("05:59")), NEAR);
        assertEquals(0.5, drops.at(clock("06:00").plusSeconds(Math.round(hours * 1800))), 0.001);
        assertEquals(0, drops.at(drops.dryBy().plusSeconds(2)), 0.001);
        assertEquals(List.of(WeatherAdvice.DropsAfterRain.class, WeatherAdvice.DropsByDamp.class), kinds(drops.reasons()));
        assertEquals(clock("06:00"), Samples.the(WeatherAdvice.DropsAfterRain.class, drops.reasons()).time());
    }

    @Test
    void driesSoonerWhereLessRainFell() {
        Duration full = Duration.between(clock("06:00"), drops(afterRain(1, 4, 0)).dryBy());
        Duration half = Duration.between(clock("06:00"), drops(afterRain(0.1, 4, 0)).dryBy());
        assertEquals(full.toSeconds() / 2.0, half.toSeconds(), 2);
    }

    /** Two hours: common practice, no source. */
    @Test
    void takesAPlainWindowWhereNobodyTellsTheDamp() {
        Drops drops = drops(rows(at("05:00").rain(0.5).chance(0.4), at("12:00").rain(0)));
        assertEquals(clock("08:00"), drops.dryBy());
        assertEquals(0.5, drops.at(clock("07:00")), NEAR);
        assertEquals(0.4, drops.chance(clock("07:00")), NEAR);
        assertEquals(1, drops.chance(clock("09:00")), NEAR);
        assertEquals(List.of(WeatherAdvice.DropsAfterRain.class, WeatherAdvice.DropsIfItRains.class,
                WeatherAdvice.DropsByRule.class), kinds(drops.reasons()));
    }

    /** The first rain leaves drops in nine of ten cases, whatever the second does. */
    @Test
    void keepsTheChanceOfTheRainBefore() {
        Drops drops = drops(rows(at("05:00").rain(2).chance(0.9), at("06:00").rain(0.5).chance(0.3), at("07:00").rain(0), at("12:00").rain(0)));
        assertEquals(0.9, drops.chance(clock("07:30")), NEAR);
        assertEquals(0.9, Samples.the(WeatherAdvice.DropsIfItRains.class, drops.reasons()).chance(), NEAR);
    }

    @Test
    void takesStillAirWhereNobodyTellsTheWind() {
        Drops drops = drops(rows(at("05:00").damp(10, 4).rain(1), at("22:00").damp(10, 4).rain(0)));
        assertEquals(drops(afterRain(1, 4, 0)).dryBy(), drops.dryBy());
        assertEquals(List.of(WeatherAdvice.DropsAfterRain.class, WeatherAdvice.DropsByDamp.class,
                WeatherAdvice.DropsWindUnknown.class), kinds(drops.reasons()));
    }

    /** Spread, wind and cloud as for mist. */
    @Test
    void findsDewInAClearStillDampNightAlone() {
        assertEquals(1, dewAt("05:30", 6, 2.8, 2.1, 2));
        assertEquals(Double.NaN, dewAt("05:30", 6, 2.9, 2.1, 2));
        assertEquals(Double.NaN, dewAt("05:30", 6, 1, 2.2, 2));
        assertEquals(Double.NaN, dewAt("05:30", 6, 1, 2.1, 3));
        assertEquals(Double.NaN, dewAt("05:30", -3, 1, 2.1, 2));
        assertEquals(0, dewAt("11:00", 6, 2.8, 2.1, 2));
        Drops evening = drops(rows(at("18:00").damp(6, 0).wind(1).cloud(0), at("22:00").damp(6, 0).wind(1).cloud(0)));
        assertEquals(Double.NaN, evening.at(clock("20:00")));
    }

    private static double dewAt(String time, double airC, double spreadC, double windMs, double okta) {
        return drops(rows(at("05:00").damp(airC, spreadC).wind(windMs).cloud(okta),
                at("06:00").damp(airC, spreadC).wind(windMs).cloud(okta),
                at("08:00").damp(airC + 10, 12).wind(windMs).cloud(okta),
                at("18:00").damp(airC + 10, 12).wind(windMs).cloud(okta))).at(clock(time));
    }

    @Test
    void tellsUntilWhenDewStands() {
        Drops drops = drops(rows(at("04:00").damp(5, 0.5).wind(0.5).cloud(1), at("06:00").damp(6, 0.5).wind(1).cloud(1),
                at("10:00").damp(14, 7).wind(3).cloud(1), at("16:00").damp(16, 9).wind(3).cloud(1)));
        assertEquals(List.of(WeatherAdvice.DropsOfDew.class, WeatherAdvice.DropsByDamp.class), kinds(drops.reasons()));
        assertTrue(drops.dryBy().isAfter(clock("07:00")) && drops.dryBy().isBefore(clock("11:00")),
                drops.dryBy().toString());
    }

    @Test
    void losesSightOfDropsWhereTheForecastEnds() {
        Drops drops = drops(rows(at("05:00").damp(10, 0).wind(0).cloud(8).rain(0.5)));
        assertEquals(1, drops.at(clock("05:59")), NEAR);
        assertEquals(0, drops.at(clock("06:00")));
        assertNull(drops.dryBy());
        assertEquals(List.of(WeatherAdvice.DropsOutlast.class), kinds(drops.reasons()));
        assertEquals(clock("06:00"), Samples.the(WeatherAdvice.DropsOutlast.class, drops.reasons()).time());
    }

    @Test
    void tellsOfEveryRainAndIsDryAfterTheLast() {
        Drops drops = drops(rows(at("05:00").rain(0.5), at("06:00").rain(0), at("10:00").rain(0.5), at("11:00").rain(0),
                at("20:00").rain(0)));
        assertEquals(List.of(WeatherAdvice.DropsAfterRain.class, WeatherAdvice.DropsAfterRain.class,
                WeatherAdvice.DropsByRule.class), kinds(drops.reasons()));
        assertEquals(clock("13:00"), drops.dryBy());
        assertEquals(0, drops.at(clock("09:00")));
        assertEquals(1, drops.at(clock("10:30")), NEAR);
    }

    @Test
    void saysWhetherThereAreNoDropsOrNoWordOfThem() {
        assertEquals(List.of(WeatherAdvice.DropsNone.class), kinds(drops(rows(at("05:00").rain(0), at("09:00").rain(0))).reasons()));
        for (List<ForecastHour> forecast : List.of(List.<ForecastHour>of(), rows(at("05:00").wind(3).cloud(8)))) {
            Drops none = Drops.of(Interval.day(MAY_DAY, Samples.zone()), forecast, SkyWord.CLEAR);
            assertEquals(List.of(WeatherAdvice.DropsUnknown.class), kinds(none.reasons()));
            assertNull(none.dryBy());
            assertEquals(Double.NaN, none.at(clock("05:30")));
        }
    }

    @Test
    void takesTheRainOfTheNightBeforeInATripOfSeveralDays() {
        List<ForecastHour> rows = rows(at("23:00").on(MAY_DAY.minusDays(1)).rain(0.5), at("00:00").on(MAY_DAY).rain(0),
                at("09:00").on(MAY_DAY).rain(0), at("05:00").on(MAY_DAY.plusDays(1)).rain(3));
        Drops drops = drops(rows);
        assertEquals(0.5, drops.at(clock("01:00")), NEAR);
        assertEquals(clock("02:00"), drops.dryBy());
        assertEquals(List.of(WeatherAdvice.DropsNone.class), kinds(drops(rows(at("12:00").on(MAY_DAY.minusDays(1)).rain(0.5),
                at("09:00").on(MAY_DAY).rain(0))).reasons()));
    }

    @Test
    void dropsNoRainThatIsOfAnotherDay() {
        List<ForecastHour> rows = rows(at("05:00").on(MAY_DAY.minusDays(3)).rain(9), at("05:00").on(MAY_DAY).rain(0),
                at("05:00").on(MAY_DAY.plusDays(1)).rain(9));
        assertEquals(List.of(WeatherAdvice.DropsNone.class), kinds(drops(rows).reasons()));
    }

    @Test
    void countsTheHoursOfADayOfClockChange() {
        for (Places place : List.of(Places.SHORT_DAY, Places.LONG_DAY, Places.NO_MIDNIGHT)) {
            ZoneId zone = place.zone();
            ZonedDateTime one = place.date().atTime(1, 0).atZone(zone);
            Drops drops = Drops.of(Interval.day(place.date(), zone), rows(at("01:00").rain(0.5), at("09:00").rain(0)), null);
            assertEquals(one.plusHours(3), drops.dryBy());
            assertEquals(1, drops.at(one.plusMinutes(59)), NEAR);
            assertEquals(0.5, drops.at(one.plusHours(2)), NEAR);
        }
    }
}
