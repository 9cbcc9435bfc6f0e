package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.LightAdvice;
import understorey.advice.WaitAdvice;
import understorey.kit.Verdict;
import understorey.light.Outlook;
import understorey.order.Alternative;
import understorey.order.Leg;
import understorey.plan.ForecastHour;
import understorey.plan.Frame;
import understorey.plan.LightWish;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.SkylinePoint;
import understorey.plan.Spot;
import understorey.plan.Trip;

class OrderPlannerTest {

    private static final Shot HIGH = wishing("high", LightWish.OVERHEAD, "Go home.");
    private static final Shot LOW = wishing("low", LightWish.LOW_SUN, null);

    private static Shot wishing(String name, LightWish wish, String otherwise) {
        Shot shot = picture(name).at("Bank").shot();
        return new Shot(name, shot.role(), shot.subject(), shot.spot(), null, null, null, null, null, null, List.of(wish), null, null, null,
                null, otherwise, null, null, null, null, null);
    }

    private static Brief brief(SkyWord sky, List<ForecastHour> forecast, Shot... shots) {
        return brief(Samples.wood(), sky, forecast, shots);
    }

    private static Brief brief(Site site, SkyWord sky, List<ForecastHour> forecast, Shot... shots) {
        Trip trip = Samples.trip(site, MAY_DAY, "05:30", "13:30", forecast, shots);
        return Planner.brief(new Trip(trip.title(), trip.slug(), null, trip.site(), trip.when(), trip.arrive(), trip.leave(), trip.gear(),
                List.of(), null, sky, forecast, null, trip.shots(), null));
    }

    /** In the file the picture of the high sun stands first; the sun stands high at noon, 13:14 of British summer. */
    @Test
    void takesEachPictureInTheLightItWishesFor() {
        Brief brief = brief(SkyWord.CLEAR, List.of(), HIGH, LOW);
        assertTrue(brief.order().timeOf("low").to().isBefore(brief.order().timeOf("high").from()));
        assertEquals(Outlook.Grade.GOOD, brief.shot("high").outlook().grade());
        assertEquals(Outlook.Grade.GOOD, brief.shot("low").outlook().grade());
        for (TimedShot shot : brief.timed()) {
            Duration planned = Duration.between(brief.order().timeOf(shot.intent().shot().name()).from(), shot.light().sun().time());
            assertEquals(Duration.ofSeconds(450), planned, "exposure and sketch are of the middle of the time found");
        }
    }

    /** On a bank that looks at a ridge of 10° all round. */
    @Test
    void waitsForTheSunToClearTheLandAndSaysSo() {
        Spot bank = new Spot("Bank", null, null, null, List.of(new SkylinePoint(0, 10)), null, null, null, null);
        Brief brief = brief(Samples.wood(List.of(bank), List.of(), null, null), SkyWord.CLEAR, List.of(), wishing("back", LightWish.BACKLIGHT, null));
        Leg wait = brief.order().legs().stream().filter(leg -> leg.what() == Leg.What.WAIT).findFirst().orElseThrow();
        WaitAdvice.WaitWithRoom room = assertInstanceOf(WaitAdvice.WaitWithRoom.class, wait.why());
        assertEquals(new WaitAdvice.WaitForSun(brief.day().places().get(0).sunlit().get(0).from()), room.why());
        assertTrue(Duration.between(brief.day().places().get(0).sunlit().get(0).from(), wait.to()).abs().toMinutes() < 30);
    }

    @Test
    void saysWhatSpoilsTheLightUntilThen() {
        List<ForecastHour> clearing = List.of(Samples.hour(MAY_DAY, "05:00", 1.0, 1.0, 8.0), Samples.hour(MAY_DAY, "08:00", 1.0, 1.0, 8.0),
                Samples.hour(MAY_DAY, "09:00", 1.0, 1.0, 0.0), Samples.hour(MAY_DAY, "13:00", 1.0, 1.0, 0.0));
        Brief brief = brief(null, clearing, wishing("front", LightWish.FRONTLIGHT, null));
        Leg wait = brief.order().legs().stream().filter(leg -> leg.what() == Leg.What.WAIT).findFirst().orElseThrow();
        WaitAdvice.WaitWithRoom room = assertInstanceOf(WaitAdvice.WaitWithRoom.class, wait.why());
        assertInstanceOf(LightAdvice.SunBehindCloud.class, assertInstanceOf(WaitAdvice.WaitForBetterLight.class, room.why()).why());
        assertEquals(LocalTime.of(8, 55), wait.to().toLocalTime(), "each okta takes some of the sun");
    }

    @Test
    void saysWhatElseToDoIfTheSunDoesNotCome() {
        Brief brief = brief(SkyWord.CLEAR, List.of(), HIGH, LOW);
        assertEquals(List.of(Alternative.Day.OVERCAST, Alternative.Day.RAIN),
                brief.alternatives().stream().map(Alternative::day).filter(day -> day != Alternative.Day.WIND).toList());
        Alternative overcast = brief.alternatives().get(0);
        assertEquals(List.of("high"), overcast.instead().stream().map(Shot::name).toList());
        assertEquals(2, overcast.changes().size());
        assertTrue(overcast.order().timeOf("high").from().toLocalTime().isBefore(LocalTime.of(8, 0)), "there is nothing to wait for");
    }

    /** There is time for one of the two: where neither has its light, for the first. */
    @Test
    void givesItsTimeToDropsOnlyOnAWetDay() {
        Shot drops = wishing("drops", LightWish.AFTER_RAIN, "Look for a hoverfly.");
        List<ForecastHour> dry = List.of(hour(5, 0), hour(6, 0), hour(7, 0));
        Brief brief = Planner.brief(Samples.trip(Samples.wood(), MAY_DAY, "06:30", "06:55", dry, LOW, drops));
        assertNotNull(brief.order().timeOf("low"));
        assertNull(brief.order().timeOf("drops"));
        Alternative rain = brief.alternatives().stream().filter(alternative -> alternative.day() == Alternative.Day.RAIN).findFirst().orElseThrow();
        assertNotNull(rain.order().timeOf("drops"), rain.changes().toString());
        assertNull(rain.order().timeOf("low"));
    }

    /** Rain from nine to ten, and dry hours before and after. */
    @Test
    void waitsForDropsOnlyOnAWetDay() {
        Shot drops = wishing("drops", LightWish.AFTER_RAIN, null);
        List<ForecastHour> wet = new ArrayList<>();
        List<ForecastHour> dry = new ArrayList<>();
        for (int hour = 5; hour < 14; hour++) {
            dry.add(hour(hour, 0));
            wet.add(hour(hour, hour == 9 ? 2 : 0));
        }
        assertTrue(brief(null, wet, drops).order().timeOf("drops").from().toLocalTime().isAfter(LocalTime.of(8, 45)));
        assertTrue(brief(null, dry, drops).order().timeOf("drops").from().toLocalTime().isBefore(LocalTime.of(7, 0)), "once it comes out sharp");
    }

    private static ForecastHour hour(int hour, double rainMm) {
        return new ForecastHour(MAY_DAY, LocalTime.of(hour, 0), null, null, null, 1.0, 1.0, 0.0, rainMm, null, null, null);
    }

    @Test
    void givesItsTimeToWhatALensCanTake() {
        Shot easy = framed("easy", null, null);
        Shot tiny = framed("tiny", 0.002, null);
        Trip trip = Samples.trip(Samples.wood(), MAY_DAY, "06:30", "06:50", List.of(), tiny, easy);
        Brief brief = Planner.brief(trip);
        assertEquals(Verdict.CANNOT, brief.shot("tiny").verdict());
        assertNull(brief.order().timeOf("tiny"));
        assertNotNull(brief.order().timeOf("easy"));
    }

    private static Shot framed(String name, Double widthM, String otherwise) {
        Shot shot = picture(name).at("Bank").shot();
        return new Shot(name, shot.role(), shot.subject(), shot.spot(), null, null, null, widthM == null ? 24.0 : null,
                widthM == null ? null : new Frame(widthM, null, null, null), null, List.of(), null, null, null, null, otherwise, null, null,
                null, null, null);
    }

    private static Alternative windy(Brief brief) {
        return brief.alternatives().stream().filter(alternative -> alternative.day() == Alternative.Day.WIND).findFirst().orElse(null);
    }

    private static List<ForecastHour> lightAir() {
        return List.of(Samples.hour(MAY_DAY, "05:00", 1.0, 1.5, 8.0), Samples.hour(MAY_DAY, "14:00", 1.0, 1.5, 8.0));
    }

    /**
     * On open ground a plant two fifths of a metre wide sways too much for the shutter speeds of the first light; in 4 m/s more it has
     * to wait longer. A wide view sways by less than a blur.
     */
    @Test
    void takesTheWideViewFirstAndTheHeadOnceThereIsLightForAFastShutterSpeed() {
        Brief brief = brief(null, lightAir(), framed("head", 0.4, "Kneel in the lee."), framed("floor", null, "Go home."));
        Alternative wind = windy(brief);
        assertTrue(brief.order().timeOf("floor").to().isBefore(brief.order().timeOf("head").from()));
        assertTrue(wind.order().timeOf("head").from().isAfter(brief.order().timeOf("head").to().plusMinutes(30)), wind.changes().toString());
        assertEquals(List.of(), wind.instead(), "later on it stands still enough");
    }

    /** In light air a close-up can be taken; in 4 m/s more no setting holds it at any hour. */
    @Test
    void saysWhatElseToDoIfTheStemsNeverStand() {
        List<ForecastHour> breeze = List.of(Samples.hour(MAY_DAY, "05:00", 1.0, 1.5, 8.0), Samples.hour(MAY_DAY, "14:00", 1.0, 1.5, 8.0));
        Brief brief = brief(null, breeze, framed("head", 0.1, "Kneel in the lee."), framed("floor", null, "Go home."));
        assertEquals(List.of("head"), windy(brief).instead().stream().map(Shot::name).toList());
    }

    @Test
    void takesTheHeadOnceTheWindOfTheForecastHasDropped() {
        List<ForecastHour> dropping = List.of(Samples.hour(MAY_DAY, "05:00", 30.0, 40.0, 8.0), Samples.hour(MAY_DAY, "09:00", 30.0, 40.0, 8.0),
                Samples.hour(MAY_DAY, "10:00", 0.5, 1.0, 8.0), Samples.hour(MAY_DAY, "14:00", 0.5, 1.0, 8.0));
        Brief brief = brief(null, dropping, framed("head", 0.1, null), framed("floor", null, null));
        assertTrue(brief.order().timeOf("head").from().toLocalTime().isAfter(LocalTime.of(9, 0)), brief.order().legs().toString());
        assertTrue(brief.order().timeOf("floor").from().toLocalTime().isBefore(LocalTime.of(8, 0)));
    }

    @Test
    void saysNothingOfTheWindWhereNoStemSmears() {
        assertNull(windy(brief(null, lightAir(), framed("floor", null, "Go home."), framed("another", null, null))));
    }

    /** Nobody told the clouds after seven: a middle sky then is better than the overcast one told before. */
    @Test
    void plansHoursOfWhichNobodyToldTheClouds() {
        Brief brief = brief(null, List.of(Samples.hour(MAY_DAY, "05:00", null, null, 8.0), Samples.hour(MAY_DAY, "06:00", null, null, 8.0)),
                HIGH);
        assertNotNull(brief.order().timeOf("high"));
        assertTrue(brief.order().timeOf("high").from().toLocalTime().isAfter(LocalTime.of(10, 0)));
    }

    @Test
    void plansWithAMiddleSkyWhereNobodySaidAnything() {
        Brief brief = brief(null, List.of(), HIGH, LOW);
        assertTrue(brief.order().timeOf("low").to().isBefore(brief.order().timeOf("high").from()));
        assertTrue(brief.order().timeOf("high").from().toLocalTime().isAfter(LocalTime.of(10, 0)));
    }
}
