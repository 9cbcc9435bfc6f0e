package understorey.outing;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.light.LightAt;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.SunDay;

/**
 * Out of the wood in time.
 *
 * @param back           when the plan has one back where the walk began
 * @param lastLight      when the floor grows too dark to see the path without a lamp; null when it does not on that date, or
 *                       is dark all day
 * @param daylightMargin minutes from being back to the last light, negative when one is back after it; null likewise
 * @param walkOut        from the farthest spot visited; null when no picture is taken, and where no parking is given
 * @param closing        the first gate to shut on that date; null when none does
 * @param message        for whoever knows where one is; null when nobody is named
 * @param remarks        what does not fit together
 */
public record Safety(ZonedDateTime back, ZonedDateTime leaveLastSpotBy, LampHours lamp, ZonedDateTime lastLight, Long daylightMargin,
                     WalkOut walkOut, Closing closing, Message message, List<Advice> remarks) {

    /** After this nobody waits any longer: common practice, no source. */
    private static final Duration GRACE = Duration.ofMinutes(30);

    /**
     * A gate that shuts.
     *
     * @param carPark     the car park's; else the site's
     * @param afterSunset minutes from sunset to its shutting, negative when it shuts by day; null without a sunset
     */
    public record Closing(boolean carPark, ZonedDateTime at, Long afterSunset) {
    }

    /**
     * To leave with somebody; never shown to anybody else.
     *
     * @param tell     who, and how
     * @param site     the wood
     * @param position of the car park, else of the site
     * @param base     the car park's name; null where none is given
     * @param arrive   when the visit begins
     * @param route    spots in the order visited, to look along; empty when no picture is taken at a spot
     * @param back     when the plan has one back
     * @param backBy   when word is due
     * @param actFrom  without word by then, ring, then raise the alarm
     */
    public record Message(String tell, String site, Position position, String base, ZonedDateTime arrive, List<String> route,
                          ZonedDateTime back, ZonedDateTime backBy, ZonedDateTime actFrom) {
    }

    /**
     * For a visit as planned.
     *
     * @param light on the darkest floor visited, over the whole date
     */
    public static Safety of(Trip trip, SunDay sun, List<LightAt> light, Outing outing) {
        ZonedDateTime back = outing.legs().isEmpty() ? outing.leave() : outing.legs().get(outing.legs().size() - 1).to();
        ZonedDateTime lastLight = new DayCurve(light).lastLight();
        String base = trip.site().parking() == null ? null : trip.site().parking().spot();
        VisitHours hours = VisitHours.of(trip, outing.arrive().toLocalDate(), sun);
        Message message = trip.contact() == null ? null : message(trip, hours, outing, base, back);
        Long margin = lastLight == null ? null : Duration.between(back, lastLight).toMinutes();
        return new Safety(back, outing.leaveLastSpotBy(), outing.lamp(), lastLight,
                margin, walkOut(trip, hours, light, outing),
                closing(trip.site(), outing.arrive(), sun.sunset()), message, remarks(message, back, hours.end(), margin));
    }

    private static List<Advice> remarks(Message message, ZonedDateTime back, ZonedDateTime end, Long margin) {
        List<Advice> remarks = new ArrayList<>();
        if (margin != null && margin < 0) {
            remarks.add(new VisitAdvice.BackInTheDark(-margin));
        }
        if (message != null && back.isAfter(message.backBy())) {
            remarks.add(new VisitAdvice.BackTooLate(back, message.backBy()));
        } else if (message != null && end.isAfter(message.backBy())) {
            remarks.add(new VisitAdvice.StayTooLate(end, message.backBy()));
        }
        return List.copyOf(remarks);
    }

    private static WalkOut walkOut(Trip trip, VisitHours hours, List<LightAt> light, Outing outing) {
        if (trip.site().parking() == null) {
            return null;
        }
        List<String> visited = new ArrayList<>(visited(outing));
        Ground ground = Ground.of(trip.site(), light, hours, visited);
        Walking walking = ground.walking();
        String base = trip.site().parking().spot();
        WalkOut farthest = null;
        int home = hours.home(trip.contact());
        for (String spot : visited) {
            int leaveBy = ground.ways().leaveBy(ground.spots().lastIndexOf(spot), 0, home);
            int minutes = home - leaveBy;
            boolean dark = ground.ways().night(leaveBy) || ground.ways().night(home - 1);
            long longest = minutes;
            for (Pace pace : walking.between(spot, base, dark) == null ? new Pace[0] : Pace.values()) {
                longest = Math.max(longest, walking.between(spot, base, dark, pace).toMinutes());
            }
            if (farthest == null || minutes > farthest.minutes()) {
                farthest = new WalkOut(spot, minutes, (int) longest, dark);
            }
        }
        return farthest;
    }

    /** The spots at which pictures are taken, in order. */
    private static Set<String> visited(Outing outing) {
        Set<String> visited = new LinkedHashSet<>();
        for (Leg leg : outing.legs()) {
            if (leg.what() == Leg.What.SHOOT) {
                visited.add(leg.spot());
            }
        }
        return visited;
    }

    private static Closing closing(Site site, ZonedDateTime day, ZonedDateTime sunset) {
        LocalTime gate = site.opening() == null ? null : site.opening().to();
        LocalTime park = site.parking() == null ? null : site.parking().closes();
        if (gate == null && park == null) {
            return null;
        }
        boolean carPark = gate == null || park != null && !park.isAfter(gate);
        ZonedDateTime at = day.toLocalDate().atTime(carPark ? park : gate).atZone(day.getZone());
        return new Closing(carPark, at, sunset == null ? null : Duration.between(sunset, at).toMinutes());
    }

    private static Message message(Trip trip, VisitHours hours, Outing outing, String base, ZonedDateTime back) {
        ZonedDateTime backBy = hours.wordDue(trip.contact());
        List<String> route = new ArrayList<>();
        for (String spot : visited(outing)) {
            if (spot != null) {
                route.add(spot);
            }
        }
        return new Message(trip.contact().tell(), trip.site().name(), trip.site().positionOf(trip.site().spot(base)), base, outing.arrive(),
                List.copyOf(route), back, backBy, backBy.plus(GRACE));
    }
}
