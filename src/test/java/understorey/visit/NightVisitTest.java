package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.spot;
import static understorey.Samples.wood;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import understorey.Places;
import understorey.Samples;
import understorey.advice.VisitAdvice;
import understorey.light.LightAt;
import understorey.plan.Contact;
import understorey.plan.ForecastHour;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;

/** Visits that end on the day after their date. */
class NightVisitTest {

    /** The distance to the sun is that of the first date. */
    private static final double EV = 0.001;
    private static final LocalDate NEXT = MAY_DAY.plusDays(1);

    private static Trip trip(Site site, LocalDate date, String arrive, String leave) {
        return Samples.trip(site, date, arrive, leave, List.of(), picture("a").at("Bank").shot());
    }

    private static Hours hours(Site site, String arrive, String leave) {
        return Hours.of(trip(site, MAY_DAY, arrive, leave), MAY_DAY);
    }

    private static Site open(String from, String to) {
        return wood(wood().spots(), List.of(), new Opening(LocalTime.parse(from), LocalTime.parse(to)), null);
    }

    private static ZonedDateTime at(LocalDate date, String time) {
        return date.atTime(LocalTime.parse(time)).atZone(Samples.zone());
    }

    private static Site woodAt(Places place) {
        return Samples.wood(place, List.of(spot("Bank", null, null, null)), List.of(), null, null);
    }

    @Test
    void leavesOnTheNextDayIfTheTimeIsNotAfterTheArrival() {
        assertEquals(at(NEXT, "03:00"), hours(wood(), "22:00", "03:00").leave());
        assertEquals(at(NEXT, "22:00"), hours(wood(), "22:00", "22:00").leave(), "a day at most");
        assertEquals(at(NEXT, "02:00"), hours(wood(), "22:00", null).leave(), "four hours later");
        assertEquals(at(MAY_DAY, "22:01"), hours(wood(), "22:00", "22:01").leave());
    }

    /** From noon to noon, or as much more as the visit needs. */
    @Test
    void countsItsDayFromNoon() {
        assertEquals(new Interval(at(MAY_DAY, "12:00"), at(NEXT, "12:00")), hours(wood(), "22:00", "03:00").day());
        assertEquals(new Interval(at(MAY_DAY, "10:00"), at(NEXT, "12:00")), hours(wood(), "10:20", "02:00").day());
        assertEquals(new Interval(at(MAY_DAY, "12:00"), at(NEXT, "16:00")), hours(wood(), "22:00", "14:30").day());
        assertEquals(Interval.day(MAY_DAY, Samples.zone()), hours(wood(), "05:00", "11:00").day());
    }

    @Test
    void putsAFixedTimeBeforeTheArrivalOnTheNextDay() {
        Hours night = hours(wood(), "22:00", "03:00");
        assertEquals(at(NEXT, "01:00"), night.at(night.minute(LocalTime.of(1, 0))));
        assertEquals(at(MAY_DAY, "22:30"), night.at(night.minute(LocalTime.of(22, 30))));
        assertEquals(at(NEXT, "04:00"), night.checkInDue(new Contact("a friend", LocalTime.of(4, 0))));
    }

    @Test
    void keepsToOpeningHoursOverMidnight() {
        Hours night = hours(open("20:00", "02:00"), "22:00", "03:00");
        assertEquals(new Interval(at(MAY_DAY, "22:00"), at(NEXT, "02:00")), night.usable());
        assertEquals(at(NEXT, "02:00"), night.end());
        assertEquals(List.of(new VisitAdvice.AfterClosing(at(NEXT, "03:00"), LocalTime.of(2, 0))), night.remarks());
        assertEquals(at(MAY_DAY, "20:00"), hours(open("20:00", "02:00"), "18:00", "23:00").usable().from(), "an evening before midnight");
        assertEquals(at(MAY_DAY, "02:00"), hours(open("20:00", "02:00"), "00:30", "04:00").usable().to(), "opened the evening before");
        assertEquals(at(NEXT, "05:00"), hours(open("05:00", "20:00"), "22:00", "06:00").usable().from(), "opens the next morning");
        assertNull(hours(open("05:00", "20:00"), "22:00", "03:00").usable(), "shut all night");
    }

    @Test
    void knowsACarParkThatClosesInTheNight() {
        Site site = wood(wood().spots(), List.of(), null, new Parking("Gate", LocalTime.of(1, 0), null));
        assertEquals(at(NEXT, "01:00"), hours(site, "22:00", "03:00").usable().to());
        assertEquals(at(MAY_DAY, "23:30"), hours(site, "20:00", "23:30").usable().to(), "home before it closes");
        Site evening = wood(wood().spots(), List.of(), null, new Parking("Gate", LocalTime.of(20, 0), null));
        assertNull(hours(evening, "22:00", "03:00").usable(), "closed on arrival");
    }

    /** The clocks go back at 02:00 on 31 October 2027, and forward at 01:00 on 28 March 2027, in the United Kingdom. */
    @Test
    void lastsAnHourMoreOrLessWhereTheClocksChange() {
        LocalDate autumn = LocalDate.of(2027, 10, 30);
        Day longNight = Day.of(trip(wood(), autumn, "22:00", "03:00"), autumn);
        assertEquals(Duration.ofHours(6), longNight.hours().visit().length());
        assertEquals(100, longNight.light().size());
        assertEquals(1440 + 60, longNight.hours().minute(longNight.hours().day().to()));
        LocalDate spring = LocalDate.of(2027, 3, 27);
        Day shortNight = Day.of(trip(wood(), spring, "22:00", "03:00"), spring);
        assertEquals(Duration.ofHours(4), shortNight.hours().visit().length());
        assertEquals(92, shortNight.light().size());
        assertEquals(Duration.ofMinutes(210), Hours.of(trip(wood(), autumn, "22:00", "01:30"), autumn).visit().length(),
                "of 01:30 that comes twice, the first");
    }

    /** Altitude at the lower transit is latitude + declination − 90°: Meeus, Astronomical Algorithms, ch. 13; 23.44° at the solstice. */
    @Test
    void hasTheSunAllNightAt69NorthInJune() {
        Places north = new Places(new Position(69.65, 18.95), ZoneId.of("Europe/Oslo"), LocalDate.of(2027, 6, 21));
        Day day = Day.of(trip(woodAt(north), north.date(), "22:00", "03:00"), north.date());
        assertTrue(day.sun().upAllDay());
        assertFalse(day.headTorch().needed());
        LightAt lowest = day.light().stream().min(Comparator.comparingDouble(row -> row.sun().altitudeDeg())).orElseThrow();
        assertEquals(69.65 + 23.44 - 90, lowest.sun().altitudeDeg(), 0.05);
        assertTrue(day.hours().visit().contains(lowest.time()));
        assertEquals(north.date().plusDays(1), lowest.time().toLocalDate(), "after midnight by summer time");
    }

    /** Full moon on 20 May 2027 about 11:00 UTC, new moon on 4 June (from memory). A full moon low in the south gives EV −6 or more. */
    @Test
    void hasTheMoonThatRisesInTheEveningAndSetsTheNextMorning() {
        LocalDate date = LocalDate.of(2027, 5, 20);
        Day day = Day.of(trip(wood(), date, "22:00", "03:00"), date);
        assertTrue(day.moon().illuminatedFraction() > 0.99);
        assertEquals(date, day.moon().rise().toLocalDate());
        assertEquals(date.plusDays(1), day.moon().set().toLocalDate());
        ZonedDateTime late = at(date.plusDays(1), "01:30");
        double moonlit = row(day, late).floorEv(0);
        LocalDate dark = LocalDate.of(2027, 6, 4);
        double moonless = row(Day.of(trip(wood(), dark, "22:00", "03:00"), dark), at(dark.plusDays(1), "01:30")).floorEv(0);
        assertTrue(moonlit > -7 && moonlit < -3, "EV " + moonlit);
        assertTrue(moonlit > moonless + 2, moonlit + " against " + moonless);
    }

    private static LightAt row(Day day, ZonedDateTime time) {
        return day.light().stream().filter(row -> row.time().isEqual(time)).findFirst().orElseThrow();
    }

    @Test
    void hasTheDuskOfItsDateAndTheDawnOfTheNext() {
        Day day = Day.of(trip(wood(), MAY_DAY, "20:00", "05:45"), MAY_DAY);
        assertEquals(MAY_DAY, day.sun().sunset().toLocalDate());
        assertEquals(NEXT, day.sun().sunrise().toLocalDate());
        Interval night = day.headTorch().between();
        assertNotNull(night);
        assertTrue(Duration.between(day.sun().civilDusk(), night.from()).abs().toMinutes() <= 10);
        assertTrue(Duration.between(day.sun().civilDawn(), night.to()).abs().toMinutes() <= 10);
        assertTrue(day.headTorch().neededBetween(at(NEXT, "01:00"), at(NEXT, "01:15")));
        assertFalse(day.headTorch().neededBetween(at(MAY_DAY, "20:00"), at(MAY_DAY, "20:15")));
        assertFalse(day.headTorch().neededBetween(at(NEXT, "05:30"), at(NEXT, "05:45")));
        assertTrue(Day.of(trip(wood(), MAY_DAY, "22:30", "03:00"), MAY_DAY).headTorch().allDay());
    }

    @Test
    void isANightInTheSouthernHemisphereToo() {
        Places south = Places.SOUTHERN;
        Day day = Day.of(trip(woodAt(south), south.date(), "17:00", "07:30"), south.date());
        assertEquals(south.date(), day.sun().sunset().toLocalDate());
        assertEquals(south.date().plusDays(1), day.sun().sunrise().toLocalDate());
        assertNotNull(day.headTorch().between());
    }

    @Test
    void hasTheForecastOfBothDates() {
        List<ForecastHour> rows = List.of(Samples.hour(MAY_DAY, "22:00", 1.0, 2.0, 2.0), Samples.hour(NEXT, "02:00", 5.0, 9.0, 6.0));
        Day day = Day.of(Samples.trip(wood(), MAY_DAY, "22:00", "03:00", rows, picture("a").at("Bank").shot()), MAY_DAY);
        assertEquals(2.0, day.sky().okta(at(MAY_DAY, "22:00")), 1e-9);
        assertEquals(4.0, day.sky().okta(at(NEXT, "00:00")), 1e-9);
        assertEquals(6.0, day.sky().okta(at(NEXT, "02:30")), 1e-9);
        assertNull(day.sky().okta(at(NEXT, "03:30")));
    }

    /** A night has the light of the evening and of the next morning, instant by instant. */
    @Property(tries = 60)
    void hasTheLightOfTwoDays(@ForAll @DoubleRange(min = -72, max = 72) double latitude, @ForAll @IntRange(min = 1, max = 364) int dayOfYear) {
        Places place = new Places(new Position(latitude, 11), ZoneId.of("Europe/Copenhagen"), LocalDate.ofYearDay(2027, dayOfYear));
        LocalDate next = place.date().plusDays(1);
        List<LightAt> days = new ArrayList<>(Day.of(trip(woodAt(place), place.date(), "20:00", "23:30"), place.date()).light());
        days.addAll(Day.of(trip(woodAt(place), next, "04:00", "06:00"), next).light());
        Day night = Day.of(trip(woodAt(place), place.date(), "22:00", "03:00"), place.date());
        List<LightAt> rows = night.light().stream().filter(row -> night.hours().visit().contains(row.time())).toList();
        assertTrue(rows.size() >= 16);
        for (LightAt row : rows) {
            LightAt same = days.stream().filter(other -> other.time().isEqual(row.time())).findFirst().orElseThrow();
            assertEquals(same.sun(), row.sun());
            assertEquals(same.open().sun() == null, row.open().sun() == null);
            assertEquals(same.open().sun() == null ? 0 : same.open().sun(), row.open().sun() == null ? 0 : row.open().sun(), EV);
            assertEquals(same.open().shade(), row.open().shade(), EV);
            assertEquals(same.floor().shade(), row.floor().shade(), EV);
            assertEquals(same.floor().overcast(), row.floor().overcast(), EV);
            assertEquals(same.floorEv(3), row.floorEv(3), EV);
            assertEquals(same.moonEv(), row.moonEv());
        }
    }
}
