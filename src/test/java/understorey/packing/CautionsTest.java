package understorey.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.hour;
import static understorey.Samples.picture;
import static understorey.Samples.wood;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Places;
import understorey.Samples;
import understorey.light.LightAt;
import understorey.light.Standpoint;
import understorey.plan.ForecastHour;
import understorey.plan.Position;
import understorey.plan.Trip;
import understorey.reason.Reason;
import understorey.visit.Day;
import understorey.sky.SunAt;
import understorey.sky.SunDay;

class CautionsTest {

    private static final Places POLE = new Places(new Position(80, 15), ZoneId.of("Europe/Oslo"),
            LocalDate.of(2027, 12, 20));

    private static List<Reason> cautions(Places place, String arrive, String leave, ForecastHour... forecast) {
        Trip trip = Samples.trip(wood(place, wood().spots(), wood().walks(), null, null), place.date(), arrive, leave,
                List.of(forecast), picture("a").shot(), picture("b").shot(),
                picture("c").of(Samples.subject("no-care", null, null, null, null, " ")).shot());
        return Cautions.of(Day.of(trip, place.date()));
    }

    private static List<String> kinds(String arrive, String leave, ForecastHour... forecast) {
        return Samples.kinds(cautions(Places.MID_LATITUDE, arrive, leave, forecast));
    }

    @Test
    void alwaysCarriesTheShortBlock() {
        assertEquals(List.of("BRANCHES_IN_WIND", "KEEP_TO_THE_PATHS", "CARE_FOR_SUBJECT", "TICKS", "SUN_THROUGH_A_LENS",
                "TELL_SOMEONE", "LOCAL_RULES"), kinds("09:00", "12:00"));
    }

    @Test
    void warnsOfDarknessOnTheWayInAndOut() {
        assertTrue(kinds("04:00", "12:00").contains("DARK_ON_THE_WAY_IN"));
        assertTrue(kinds(null, null).contains("DARK_ON_THE_WAY_IN"));
        assertFalse(kinds("04:00", "12:00").contains("DARK_ON_THE_WAY_OUT"));
        assertTrue(kinds("15:00", "22:00").contains("DARK_ON_THE_WAY_OUT"));
        assertFalse(kinds("15:00", "22:00").contains("DARK_ON_THE_WAY_IN"));
    }

    /** The open ground's light at the end of civil twilight (Seidelmann: 3.4 lux, EV 0.45) comes to a dull wood later. */
    @Test
    void givesTheTimesAtWhichTheFloorIsAsDarkAsCivilTwilightInTheOpen() {
        SunDay sun = SunDay.of(Places.MID_LATITUDE.position(), MAY_DAY, Samples.zone());
        List<Reason> cautions = cautions(Places.MID_LATITUDE, "04:00", "22:00");
        ZonedDateTime until = (ZonedDateTime) figure(cautions, Caution.DARK_ON_THE_WAY_IN, "until");
        ZonedDateTime from = (ZonedDateTime) figure(cautions, Caution.DARK_ON_THE_WAY_OUT, "from");
        assertTrue(until.isAfter(sun.civilDawn()) && until.isBefore(sun.sunrise()), until.toString());
        assertTrue(from.isBefore(sun.civilDusk()) && from.isAfter(sun.sunset()), from.toString());
        for (ZonedDateTime time : List.of(until, from)) {
            LightAt light = LightAt.of(SunAt.of(Places.MID_LATITUDE.position(), time), Standpoint.of(wood(), null, MAY_DAY));
            assertEquals(0.45, light.floor().overcast(), 0.1);
        }
        assertEquals(Duration.between(MAY_DAY.atTime(4, 0).atZone(Samples.zone()), until).toSeconds() / 60.0,
                ((Number) figure(cautions, Caution.DARK_ON_THE_WAY_IN, "minutes")).doubleValue(), 0.5);
    }

    @Test
    void warnsInPolarNight() {
        List<String> twilight = Samples.kinds(cautions(Places.POLAR_NIGHT, null, null));
        assertTrue(twilight.contains("DARK_ON_THE_WAY_IN") && twilight.contains("DARK_ON_THE_WAY_OUT"));
        List<String> night = Samples.kinds(cautions(POLE, null, null));
        assertTrue(night.contains("DARK_ALL_THE_TIME") && !night.contains("DARK_ON_THE_WAY_IN"));
        List<String> day = Samples.kinds(cautions(Places.POLAR_DAY, null, null));
        assertFalse(day.contains("DARK_ON_THE_WAY_IN") || day.contains("DARK_ON_THE_WAY_OUT"));
    }

    /** Where the sun sets after midnight, the date's set is that of the evening before: a morning visit is light. */
    @Test
    void doesNotTakeTheSunsetOfTheNightBeforeForTonights() {
        Places north = new Places(new Position(65.65, 20), ZoneId.of("Europe/Stockholm"), LocalDate.of(2027, 6, 16));
        SunDay sun = SunDay.of(north.position(), north.date(), north.zone());
        assertTrue(sun.sunset().isBefore(sun.sunrise()));
        assertFalse(Samples.kinds(cautions(north, "09:00", "13:00")).contains("DARK_ON_THE_WAY_OUT"));
    }

    /**
     * A tree consultancy: twigs and branches can break from about 31 mph (13.9 m/s); National Trust, Hatfield
     * Forest: closed at forecast gusts of 45 mph (20.1 m/s). Levels of 14 and 20 m/s: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({"13.9, BRANCHES_IN_WIND", "14, GUSTS_BREAK_BRANCHES", "19.9, GUSTS_BREAK_BRANCHES",
        "20, GUSTS_TOO_STRONG", "20.1, GUSTS_TOO_STRONG"})
    void gradesTheGusts(double gustMs, String caution) {
        assertEquals(caution, kinds("09:00", "12:00", hour(null, "10:00", 5.0, gustMs, null)).get(0));
        assertEquals(caution, kinds("09:00", "12:00", hour(null, "10:00", gustMs, null, null)).get(0));
    }

    @Test
    void countsTheWindOfTheDayUpToTheEndOfTheVisit() {
        ForecastHour night = hour(MAY_DAY, "02:00", null, 22.0, null);
        ForecastHour evening = hour(MAY_DAY, "18:00", null, 22.0, null);
        ForecastHour tomorrow = hour(MAY_DAY.plusDays(1), "10:00", null, 22.0, null);
        assertEquals("GUSTS_TOO_STRONG", kinds("09:00", "12:00", night).get(0));
        assertEquals("BRANCHES_IN_WIND", kinds("09:00", "12:00", evening, tomorrow).get(0));
    }

    @Test
    void namesTheCareForASubjectOnce() {
        List<Reason> care = cautions(Places.MID_LATITUDE, "09:00", "12:00").stream()
                .filter(reason -> reason.kind() == Caution.CARE_FOR_SUBJECT).toList();
        assertEquals(1, care.size());
        assertEquals("Stay on the paths", care.get(0).figures().get("care").value());
    }

    private static Object figure(List<Reason> cautions, Caution kind, String name) {
        return cautions.stream().filter(reason -> reason.kind() == kind).findFirst().orElseThrow().figures().get(name)
                .value();
    }
}
