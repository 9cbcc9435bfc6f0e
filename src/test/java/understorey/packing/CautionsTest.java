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
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import understorey.Places;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.light.LightAt;
import understorey.light.Standpoint;
import understorey.pages.Trips;
import understorey.plan.Contact;
import understorey.plan.ForecastHour;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.reading.subject.SubjectCatalogue;
import understorey.sky.Interval;
import understorey.sky.SunAt;
import understorey.sky.SunDay;
import understorey.visit.Day;

class CautionsTest {

    private static final Places POLE = new Places(new Position(80, 15), ZoneId.of("Europe/Oslo"),
            LocalDate.of(2027, 12, 20));

    private static List<Advice> cautions(Places place, String arrive, String leave, ForecastHour... forecast) {
        Trip trip = Samples.trip(wood(place, wood().spots(), wood().walks(), null, null), place.date(), arrive, leave,
                List.of(forecast), picture("a").shot(), picture("b").shot(),
                picture("c").of(Samples.subject("no-care", null, null, null, null, " ")).shot());
        return Cautions.of(Day.of(trip, place.date()));
    }

    private static List<Class<?>> kinds(String arrive, String leave, ForecastHour... forecast) {
        return Samples.kinds(cautions(Places.MID_LATITUDE, arrive, leave, forecast));
    }

    /** The samples have no country, so that no law is on file. */
    @Test
    void alwaysCarriesTheShortBlock() {
        assertEquals(List.of(CautionAdvice.BranchesInWind.class, CautionAdvice.KeepToThePaths.class,
                CautionAdvice.CareForSubject.class, CautionAdvice.PlantLawUnknown.class, CautionAdvice.Ticks.class,
                CautionAdvice.SunThroughALens.class,
                CautionAdvice.TellSomeone.class, CautionAdvice.LocalRules.class), kinds("09:00", "12:00"));
    }

    /** The plan itself names the contact and the check-in time. */
    @Test
    void leavesOutTheAdviceToTellSomeoneWhereAContactIsNamed() {
        Trip trip = Samples.trip(wood(Places.MID_LATITUDE, wood().spots(), wood().walks(), null, null), Places.MID_LATITUDE.date(), "09:00",
                "12:00", List.of(), picture("a").shot());
        Trip told = Trips.told(trip, new Contact("my sister", null));
        assertTrue(Samples.kinds(Cautions.of(Day.of(trip, Places.MID_LATITUDE.date()))).contains(CautionAdvice.TellSomeone.class));
        assertFalse(Samples.kinds(Cautions.of(Day.of(told, Places.MID_LATITUDE.date()))).contains(CautionAdvice.TellSomeone.class));
    }

    @Test
    void warnsOfDarknessOnTheWayInAndOut() {
        assertTrue(kinds("04:00", "12:00").contains(CautionAdvice.DarkOnTheWayIn.class));
        assertTrue(kinds(null, null).contains(CautionAdvice.DarkOnTheWayIn.class));
        assertFalse(kinds("04:00", "12:00").contains(CautionAdvice.DarkOnTheWayOut.class));
        assertTrue(kinds("15:00", "22:00").contains(CautionAdvice.DarkOnTheWayOut.class));
        assertFalse(kinds("15:00", "22:00").contains(CautionAdvice.DarkOnTheWayIn.class));
    }

    /** The open ground's light at the end of civil twilight (Seidelmann: 3.4 lux, EV 0.45) comes to a dull wood later. */
    @Test
    void givesTheTimesAtWhichTheFloorIsAsDarkAsCivilTwilightInTheOpen() {
        SunDay sun = SunDay.of(Places.MID_LATITUDE.position(), Interval.day(MAY_DAY, Samples.zone()));
        List<Advice> cautions = cautions(Places.MID_LATITUDE, "04:00", "22:00");
        ZonedDateTime until = Samples.the(CautionAdvice.DarkOnTheWayIn.class, cautions).until();
        ZonedDateTime from = Samples.the(CautionAdvice.DarkOnTheWayOut.class, cautions).from();
        assertTrue(until.isAfter(sun.civilDawn()) && until.isBefore(sun.sunrise()), until.toString());
        assertTrue(from.isBefore(sun.civilDusk()) && from.isAfter(sun.sunset()), from.toString());
        for (ZonedDateTime time : List.of(until, from)) {
            LightAt light = LightAt.of(SunAt.of(Places.MID_LATITUDE.position(), time), Standpoint.of(wood(), null, MAY_DAY));
            assertEquals(0.45, light.floor().overcast(), 0.1);
        }
        assertEquals(Duration.between(MAY_DAY.atTime(4, 0).atZone(Samples.zone()), until).toSeconds() / 60.0,
                Samples.the(CautionAdvice.DarkOnTheWayIn.class, cautions).minutes(), 0.5);
    }

    @Test
    void warnsInPolarNight() {
        List<Class<?>> twilight = Samples.kinds(cautions(Places.POLAR_NIGHT, null, null));
        assertTrue(twilight.contains(CautionAdvice.DarkOnTheWayIn.class) && twilight.contains(CautionAdvice.DarkOnTheWayOut.class));
        List<Class<?>> night = Samples.kinds(cautions(POLE, null, null));
        assertTrue(night.contains(CautionAdvice.DarkAllTheTime.class) && !night.contains(CautionAdvice.DarkOnTheWayIn.class));
        List<Class<?>> day = Samples.kinds(cautions(Places.POLAR_DAY, null, null));
        assertFalse(day.contains(CautionAdvice.DarkOnTheWayIn.class) || day.contains(CautionAdvice.DarkOnTheWayOut.class));
    }

    /** Where the sun sets after midnight, the date's set is that of the evening before: a morning visit is light. */
    @Test
    void doesNotTakeTheSunsetOfTheNightBeforeForTonights() {
        Places north = new Places(new Position(65.65, 20), ZoneId.of("Europe/Stockholm"), LocalDate.of(2027, 6, 16));
        SunDay sun = SunDay.of(north.position(), Interval.day(north.date(), north.zone()));
        assertTrue(sun.sunset().isBefore(sun.sunrise()));
        assertFalse(Samples.kinds(cautions(north, "09:00", "13:00")).contains(CautionAdvice.DarkOnTheWayOut.class));
    }

    /**
     * A tree consultancy: twigs and branches can break from about 31 mph (13.9 m/s); National Trust, Hatfield
     * Forest: closed at forecast gusts of 45 mph (20.1 m/s). Levels of 14 and 20 m/s: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({"13.9, BranchesInWind", "14, GustsBreakBranches", "19.9, GustsBreakBranches",
        "20, GustsTooStrong", "20.1, GustsTooStrong"})
    void gradesTheGusts(double gustMs, String caution) {
        assertEquals(caution, kinds("09:00", "12:00", hour(null, "10:00", 5.0, gustMs, null)).get(0).getSimpleName());
        assertEquals(caution, kinds("09:00", "12:00", hour(null, "10:00", gustMs, null, null)).get(0).getSimpleName());
    }

    @Test
    void countsTheWindOfTheDayUpToTheEndOfTheVisit() {
        ForecastHour night = hour(MAY_DAY, "02:00", null, 22.0, null);
        ForecastHour evening = hour(MAY_DAY, "18:00", null, 22.0, null);
        ForecastHour tomorrow = hour(MAY_DAY.plusDays(1), "10:00", null, 22.0, null);
        assertEquals(CautionAdvice.GustsTooStrong.class, kinds("09:00", "12:00", night).get(0));
        assertEquals(CautionAdvice.BranchesInWind.class, kinds("09:00", "12:00", evening, tomorrow).get(0));
    }

    private static List<Advice> inCountry(String country, String... subjects) {
        Site wood = wood();
        Site site = new Site(wood.name(), wood.slug(), null, wood.position(), null, wood.zone(), List.of(), null, wood.spots(), wood.walks(),
                null, null, List.of(), List.of(), null, null, false, List.of(), null, List.of(), country);
        Trip trip = Samples.trip(site, MAY_DAY, "09:00", "12:00", List.of(), Stream.of(subjects)
                .map(subject -> picture(subject).of(SubjectCatalogue.builtIn().find(subject)).shot()).toArray(Shot[]::new));
        return Cautions.of(Day.of(trip, MAY_DAY));
    }

    private static List<CautionAdvice.PlantLaw> laws(String country, String... subjects) {
        return inCountry(country, subjects).stream().filter(CautionAdvice.PlantLaw.class::isInstance)
                .map(CautionAdvice.PlantLaw.class::cast).toList();
    }

    /** {@code protection} of subjects-more.csv: the Wildlife and Countryside Act is British, the bouquet rule German. */
    @Test
    void quotesTheLawOfTheCountryAndOfNoOther() {
        assertTrue(laws("GB", "wood-anemone").get(0).source().startsWith("Wildlife and Countryside Act 1981"));
        assertTrue(laws("DE", "wood-anemone").get(0).source().startsWith("Bundesnaturschutzgesetz"));
        for (String country : new String[] {"NO", "DK", null}) {
            assertEquals(List.of(), laws(country, "wood-anemone", "bluebell", "snowdrop"));
            assertTrue(Samples.kinds(inCountry(country, "wood-anemone")).contains(CautionAdvice.PlantLawUnknown.class));
        }
        assertFalse(Samples.kinds(inCountry("GB", "wood-anemone")).contains(CautionAdvice.PlantLawUnknown.class));
        for (Subject subject : SubjectCatalogue.builtIn().all()) {
            assertFalse(Pattern.compile("Great Britain|Germany|Michigan|New York|Act\\b|illegal|[Pp]rotected")
                    .matcher(subject.care()).find(), subject.care());
        }
    }

    @Test
    void quotesARuleForSeveralSubjectsOnceAndNoneFromMemory() {
        assertEquals("bluebell, wood anemone", laws("GB", "bluebell", "wood-anemone").get(0).subject());
        assertEquals(2, laws("GB", "bluebell", "wood-anemone").size());
        assertEquals(List.of(), laws("US", "lesser-celandine"));
    }

    @Test
    void asksForARainCoverOnlyWhereRainIsForecastWithinTheVisit() {
        assertTrue(kinds("09:00", "12:00", rain("10:00", 0.4, null)).contains(CautionAdvice.RainCover.class));
        assertTrue(kinds("09:00", "12:00", rain("10:00", null, 0.5)).contains(CautionAdvice.RainCover.class));
        assertFalse(kinds("09:00", "12:00", rain("10:00", 0.0, null)).contains(CautionAdvice.RainCover.class));
        assertFalse(kinds("09:00", "12:00", rain("10:00", 2.0, 0.1)).contains(CautionAdvice.RainCover.class));
        assertFalse(kinds("09:00", "12:00", rain("13:00", 2.0, null)).contains(CautionAdvice.RainCover.class));
        assertFalse(kinds("09:00", "12:00").contains(CautionAdvice.RainCover.class));
    }

    private static ForecastHour rain(String time, Double amountMm, Double chance) {
        return new ForecastHour(null, LocalTime.parse(time), null, null, null, null, null, null, amountMm, chance, null, null);
    }

    @Test
    void namesTheCareForASubjectOnce() {
        List<Advice> care = cautions(Places.MID_LATITUDE, "09:00", "12:00").stream()
                .filter(reason -> reason instanceof CautionAdvice.CareForSubject).toList();
        assertEquals(1, care.size());
        assertEquals("Stay on the paths", Samples.the(CautionAdvice.CareForSubject.class, care).care());
    }
}
