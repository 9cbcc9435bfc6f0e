package understorey.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import understorey.Samples;
import understorey.advice.WaitAdvice;
import understorey.light.Side;
import understorey.light.SunDirection;
import understorey.order.Leg;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.visit.HeadTorchHours;

class ClockGridTest {

    private ClockGrid hidden;

    @BeforeEach
    void hide() {
        Site s = Samples.wood();
        Site site = new Site(s.name(), s.slug(), s.publicName(), s.position(), s.elevationM(), s.zone(), s.skyline(), s.canopy(),
                s.spots(), s.walks(), s.opening(), s.parking(), s.seasons(), s.subjects(), s.access(), s.reports(), true,
                s.cautions(), s.notes(), List.of(), null);
        Trip t = Samples.trip(site, Samples.MAY_DAY, "05:00", "11:00", List.of());
        hidden = ClockGrid.of(new Trip(t.title(), t.slug(), t.series(), site, t.when(), t.arrive(), t.leave(), t.gear(), t.companions(),
                t.contact(), t.sky(), t.forecast(), t.story(), t.shots(), new Share(Share.Audience.PUBLIC, Share.Precision.HIDDEN)));
    }

    private static ZonedDateTime at(String time) {
        return ZonedDateTime.parse("2027-05-15T" + time + "+01:00");
    }

    private static Leg waiting(String from, String to, long minutes) {
        return new Leg(at(from), at(to), Leg.What.WAIT, null, "a",
                new WaitAdvice.WaitWithRoom(minutes, new WaitAdvice.WaitForSunrise(at("07:00"))));
    }

    /** 69 minutes round to 75, but from 06:45 to 07:45 they are 60. */
    @Test
    void givesAWaitTheLengthBetweenItsRoundedEnds() {
        assertEquals(List.of(waiting("06:45", "07:45", 60), waiting("05:00", "05:30", 30)),
                hidden.round(List.of(waiting("06:43", "07:52", 69), waiting("05:07", "05:23", 16))));
    }

    @Test
    void dropsASideOfTheLightThatShrinksToNothing() {
        SunDirection.Stretch back = new SunDirection.Stretch(Side.BACK, new Interval(at("19:00"), at("21:00")));
        SunDirection.Stretch side = new SunDirection.Stretch(Side.SIDE, new Interval(at("20:55"), at("21:04")));
        assertEquals(List.of(back), hidden.round(List.of(back, side)));
    }

    @Test
    void needsNoHeadTorchForNoTimeAtAll() {
        HeadTorchHours hours = hidden.round(new HeadTorchHours(at("04:46"), at("04:50"), at("21:10"), at("21:20"), false));
        assertEquals(new HeadTorchHours(at("04:45"), null, null, at("21:15"), false), hours);
    }
}
