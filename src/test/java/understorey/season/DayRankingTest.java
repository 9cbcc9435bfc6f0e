package understorey.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.Advice;
import understorey.advice.DayAdvice;
import understorey.light.Outlook;
import understorey.plan.DayWishes;
import understorey.plan.Display;
import understorey.plan.ForecastHour;
import understorey.plan.LightWish;
import understorey.plan.Opening;
import understorey.plan.Position;
import understorey.plan.Season;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.When;
import understorey.sky.Interval;

class DayRankingTest {

    private static final List<LocalDate> SPRING = new When.Between(LocalDate.of(2027, 4, 10), LocalDate.of(2027, 6, 8)).days();
    private static final Season PAST = Woods.records("2023-05-04", "2024-05-01", "2025-05-07", "2026-05-04");

    private static Shot shot(String name, LightWish... light) {
        return shot(name, Woods.RAMSONS, light);
    }

    private static Shot shot(String name, Subject subject, LightWish... light) {
        return new Shot(name, null, subject, null, null, null, null, null, null, null, List.of(light), null, null,
                null, null, null, null, null, null, null, null);
    }

    private static Trip trip(Site site, DayWishes wishes, SkyWord sky, List<ForecastHour> forecast, Shot... shots) {
        return new Trip("A trip", "a-trip", null, site, new When.On(SPRING.get(0)), LocalTime.of(5, 0), LocalTime.of(9, 0),
                Samples.bag(Samples.fullFrame(24), Samples.ZOOM), List.of(), null, sky, forecast, null, List.of(shots),
                null, wishes, Display.USUAL);
    }

    private static Trip trip(Shot... shots) {
        return trip(Woods.wood(53, 200.0, PAST), DayWishes.NONE, SkyWord.CLEAR, List.of(), shots);
    }

    private static boolean says(RankedDay day, Class<? extends Advice> kind) {
        return day.reasons().stream().anyMatch(kind::isInstance);
    }

    /** Where flowers were looked at on a day, that day and those before it are past. */
    @Test
    void plansNoDayThatIsPast() {
        Season seen = Woods.season(null, List.of(Woods.seen("2027-05-04", Season.Stage.FULL_FLOWER)), "2023-05-04", "2024-05-01",
                "2025-05-07", "2026-05-04");
        DayRanking ranking = DayRanking.of(trip(Woods.wood(53, 200.0, seen), DayWishes.NONE, SkyWord.CLEAR, List.of(), shot("The floor")), SPRING);
        LocalDate last = LocalDate.of(2027, 5, 4);
        for (RankedDay day : ranking.days()) {
            assertEquals(day.date().isAfter(last), day.wanted(), day.date().toString());
            assertEquals(!day.wanted(), says(day, DayAdvice.DayPast.class));
        }
        assertTrue(ranking.best().isAfter(last));
    }

    @Test
    void choosesADayInFullFlower() {
        DayRanking ranking = DayRanking.of(trip(shot("The floor")), SPRING);
        FloweringWindow window = ranking.windows().get(0);
        assertEquals(1, ranking.windows().size());
        assertEquals(1, ranking.day(ranking.best()).rank());
        assertTrue(says(ranking.day(ranking.best()), DayAdvice.DayFull.class));
        assertFalse(ranking.best().isBefore(window.fullFrom()) || ranking.best().isAfter(window.fullTo()));
        assertTrue(says(ranking.day(LocalDate.of(2027, 4, 12)), DayAdvice.DayTooEarly.class));
        assertTrue(says(ranking.day(LocalDate.of(2027, 6, 1)), DayAdvice.DayTooLate.class));
        assertEquals(SPRING.size(), ranking.days().stream().map(RankedDay::rank).distinct().count());
    }

    @Test
    void tellsTheThreeBestPicturesOfADay() {
        RankedDay best = DayRanking.of(trip(shot("Twilight", LightWish.TWILIGHT), shot("High sun", LightWish.OVERHEAD),
                shot("Any"), shot("Soft", LightWish.SOFT)), SPRING).days().get(24);
        assertEquals(3, best.shots().size());
        assertFalse(best.shots().stream().anyMatch(promise -> promise.shot().name().equals("Twilight")));
        for (RankedDay.Promise promise : best.shots()) {
            assertNotNull(promise.at());
            assertTrue(promise.light() >= 0 && promise.light() <= 1);
        }
    }

    /** From five to nine the sun is low on the first days of spring and no longer in June. */
    @Test
    void weighsTheLightThatThePicturesWant() {
        Trip low = trip(shot("Low", LightWish.LOW_SUN));
        DayRanking ranking = DayRanking.of(low, SPRING);
        assertTrue(ranking.days().get(0).light() > 0.8);
        Trip late = new Trip("A trip", "a-trip", null, low.site(), low.when(), LocalTime.of(9, 0), LocalTime.of(11, 0),
                low.gear(), List.of(), null, SkyWord.CLEAR, List.of(), null, low.shots(), null);
        RankedDay best = DayRanking.of(late, SPRING).days().get(24);
        assertTrue(best.light() < 0.05, "light " + best.light());
        assertEquals(Outlook.Grade.POOR, best.shots().get(0).grade());
        assertTrue(best.score() < ranking.days().get(24).score());
    }

    @Test
    void putsAnUnwantedDayBehindEveryWantedOne() {
        DayWishes wishes = new DayWishes(List.of(DayOfWeek.SATURDAY), List.of(
                new DayWishes.Stretch(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 5, 8))), null);
        DayRanking ranking = DayRanking.of(trip(Woods.wood(53, 200.0, PAST), wishes, SkyWord.CLEAR, List.of(), shot("One")),
                SPRING);
        assertEquals(DayOfWeek.SATURDAY, ranking.best().getDayOfWeek());
        assertEquals(LocalDate.of(2027, 5, 15), ranking.best());
        assertTrue(says(ranking.day(LocalDate.of(2027, 5, 5)), DayAdvice.DayAvoided.class));
        assertTrue(says(ranking.day(LocalDate.of(2027, 5, 12)), DayAdvice.DayWrongWeekday.class));
        int lastWanted = ranking.days().stream().filter(day -> day.wanted() && !day.hopeless()).mapToInt(RankedDay::rank).max()
                .orElseThrow();
        assertTrue(ranking.days().stream().filter(day -> !day.wanted()).allMatch(day -> day.rank() > lastWanted));
        assertEquals(List.of(), ranking.findings());
    }

    /** Moss has no season, so its light is as good before and after the flowers: the low sun of early April is the best of all. */
    @Test
    void putsADayWithoutFlowersBehindEveryDayWithSome() {
        Shot moss = shot("Moss", Woods.subject("a-moss", false, null, null), LightWish.LOW_SUN);
        Trip trip = trip(Woods.wood(53, 200.0, PAST), DayWishes.NONE, SkyWord.CLEAR, List.of(), shot("The floor", LightWish.OVERHEAD), moss);
        hasNoneWithoutFlowersBeforeAny(DayRanking.of(trip, SPRING));
    }

    /** Two Saturdays have flowers, and no other day is wanted. */
    @Test
    void putsAWantedDayWithoutFlowersBehindAnUnwantedOneWithSome() {
        DayWishes wishes = new DayWishes(List.of(DayOfWeek.SATURDAY), List.of(
                new DayWishes.Stretch(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 5, 8))), null);
        DayRanking ranking = DayRanking.of(trip(Woods.wood(53, 200.0, PAST), wishes, SkyWord.CLEAR, List.of(), shot("One")),
                SPRING);
        hasNoneWithoutFlowersBeforeAny(ranking);
        assertTrue(ranking.days().stream().anyMatch(day -> day.wanted() && day.hopeless()));
        assertEquals(DayOfWeek.SATURDAY, ranking.best().getDayOfWeek());
    }

    private static void hasNoneWithoutFlowersBeforeAny(DayRanking ranking) {
        int lastWithSome = ranking.days().stream().filter(day -> day.flower() >= 0.01).mapToInt(RankedDay::rank).max().orElseThrow();
        List<RankedDay> without = ranking.days().stream().filter(day -> Math.round(day.flower() * 100) == 0).toList();
        assertFalse(without.isEmpty());
        assertTrue(without.stream().allMatch(day -> day.rank() > lastWithSome));
    }

    /** Flowers come in May, the only wanted days are in June. */
    @Test
    void plansAWantedDayWhereNoWantedOneHasFlowers() {
        DayWishes wishes = new DayWishes(List.of(), List.of(new DayWishes.Stretch(SPRING.get(0), LocalDate.of(2027, 6, 5))), null);
        DayRanking ranking = DayRanking.of(trip(Woods.wood(53, 200.0, PAST), wishes, SkyWord.CLEAR, List.of(), shot("One")),
                SPRING);
        assertTrue(ranking.day(ranking.best()).wanted() && ranking.day(ranking.best()).hopeless());
        assertEquals(List.of(), ranking.findings());
    }

    @Test
    void saysSoWhereNoDayIsWanted() {
        DayWishes wishes = new DayWishes(List.of(), List.of(new DayWishes.Stretch(SPRING.get(0),
                SPRING.get(SPRING.size() - 1))), null);
        DayRanking ranking = DayRanking.of(trip(Woods.wood(53, 200.0, PAST), wishes, SkyWord.CLEAR, List.of(), shot("One")),
                SPRING);
        assertInstanceOf(DayAdvice.NoDayWanted.class, ranking.findings().get(0));
        assertTrue(says(ranking.day(ranking.best()), DayAdvice.DayFull.class));
    }

    @Test
    void losesTheHoursThatTheSiteIsShut() {
        Site open = Woods.wood(53, 200.0, PAST);
        Site shut = new Site(open.name(), open.slug(), null, open.position(), 200.0, open.zone(), List.of(), null,
                List.of(), List.of(), new Opening(LocalTime.of(8, 50), LocalTime.of(18, 0)), null, open.seasons(),
                List.of(), null, null, false, List.of(), null, List.of(), null);
        RankedDay day = DayRanking.of(trip(shut, DayWishes.NONE, SkyWord.CLEAR, List.of(), shot("One"), shot("Two")),
                SPRING).days().get(24);
        assertEquals(10, day.hours().length().toMinutes());
        assertTrue(says(day, DayAdvice.DayHoursShort.class));
        Site never = new Site(open.name(), open.slug(), null, open.position(), 200.0, open.zone(), List.of(), null,
                List.of(), List.of(), new Opening(LocalTime.of(10, 0), LocalTime.of(18, 0)), null, open.seasons(),
                List.of(), null, null, false, List.of(), null, List.of(), null);
        RankedDay closed = DayRanking.of(trip(never, DayWishes.NONE, SkyWord.CLEAR, List.of(), shot("One")), SPRING)
                .days().get(24);
        assertNull(closed.hours());
        assertEquals(0, closed.score());
        assertTrue(says(closed, DayAdvice.DayClosed.class));
    }

    @Test
    void prefersTheDryDayWhereTheForecastTells() {
        List<ForecastHour> forecast = List.of(
                new ForecastHour(LocalDate.of(2027, 5, 4), LocalTime.of(5, 0), 8.0, null, null, 8.0, null, 8.0, 2.0, null, null, null),
                new ForecastHour(LocalDate.of(2027, 5, 4), LocalTime.of(8, 0), 8.0, null, null, 8.0, null, 8.0, 2.0, null, null, null),
                new ForecastHour(LocalDate.of(2027, 5, 5), LocalTime.of(5, 0), 8.0, null, null, 1.0, null, 1.0, 0.0, null, null, null),
                new ForecastHour(LocalDate.of(2027, 5, 5), LocalTime.of(8, 0), 8.0, null, null, 1.0, null, 1.0, 0.0, null, null, null));
        DayRanking ranking = DayRanking.of(trip(Woods.wood(53, 200.0, PAST), DayWishes.NONE, null, forecast,
                shot("Low", LightWish.LOW_SUN)), List.of(LocalDate.of(2027, 5, 4), LocalDate.of(2027, 5, 5),
                LocalDate.of(2027, 5, 6)));
        assertEquals(LocalDate.of(2027, 5, 5), ranking.best());
        assertTrue(says(ranking.days().get(0), DayAdvice.DayRain.class) && says(ranking.days().get(0), DayAdvice.DayWind.class));
        assertTrue(says(ranking.days().get(2), DayAdvice.DayWithoutForecast.class));
    }

    @Test
    void explainsATieByTheEarlierDay() {
        Shot moss = Samples.picture("Moss").of(Woods.subject("a-moss", false, null, null)).shot();
        DayRanking ranking = DayRanking.of(trip(Woods.wood(53, 200.0), DayWishes.NONE, SkyWord.OVERCAST, List.of(), moss),
                SPRING.subList(0, 3));
        assertEquals(SPRING.get(0), ranking.best());
        assertTrue(says(ranking.days().get(0), DayAdvice.DayAsGoodEarlier.class));
        assertTrue(says(ranking.days().get(0), DayAdvice.DayFlowersUnknown.class));
        assertNull(ranking.days().get(0).flower());
        assertEquals(List.of(), ranking.windows());
    }

    @Test
    void knowsBothSeasonsWhereTheDaysReachIntoTwo() {
        DayRanking ranking = DayRanking.of(trip(shot("One")), List.of(LocalDate.of(2027, 5, 4), LocalDate.of(2028, 5, 4)));
        assertEquals(2, ranking.windows().size());
        assertTrue(ranking.days().get(1).flower() > 0.5);
    }

    @Test
    void countsFromCivilDawnForFourHoursWhereTheAuthorSaysNothing() {
        Trip given = trip(shot("One"));
        Trip open = new Trip("A trip", "a-trip", null, given.site(), given.when(), null, null, given.gear(), List.of(), null,
                SkyWord.CLEAR, List.of(), null, given.shots(), null);
        RankedDay day = DayRanking.of(open, SPRING).days().get(0);
        assertEquals(240, day.hours().length().toMinutes());
        ZonedDateTime dawn = understorey.sky.SunDay.of(new Position(53, 0), Interval.day(SPRING.get(0), given.site().zone())).civilDawn();
        assertTrue(Duration.between(dawn, day.hours().from()).abs().toSeconds() <= 30, "to the minute");
        assertEquals(0, day.hours().from().getSecond());
    }

    @Test
    void asksAPinnedPictureAtItsOwnTimeOnly() {
        Shot pinned = new Shot("Late", null, Woods.RAMSONS, null, null, null, null, null, null, null,
                List.of(LightWish.LOW_SUN), null, null, null, null, null, null, LocalTime.of(8, 40), null, null, null);
        assertTrue(DayRanking.of(trip(pinned), SPRING).days().get(24).light() < 0.1);
    }
}
