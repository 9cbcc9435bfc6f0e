package understorey.visit;

import java.time.Duration;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Trip;

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
public record Safety(ZonedDateTime back, ZonedDateTime leaveLastSpotBy, ZonedDateTime lastLight, Long daylightMargin,
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
     * @param back            when one is back where the walk began
     * @param leaveLastSpotBy when to turn back at the latest
     * @param visited         the spots at which pictures are taken, in order; null is the site itself
     */
    public static Safety of(Day day, ZonedDateTime back, ZonedDateTime leaveLastSpotBy, List<String> visited) {
        Trip trip = day.trip();
        Set<String> spots = new LinkedHashSet<>(visited);
        ZonedDateTime lastLight = day.darkest().lastLight();
        Message message = trip.contact() == null ? null : message(day, spots, back);
        Long margin = lastLight == null ? null : Duration.between(back, lastLight).toMinutes();
        return new Safety(back, leaveLastSpotBy, lastLight, margin, walkOut(day, spots),
                closing(trip.site(), day.hours().arrive(), day.sun().sunset()), message,
                remarks(message, back, day.hours().end(), margin));
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

    private static WalkOut walkOut(Day day, Set<String> spots) {
        if (day.trip().site().parking() == null) {
            return null;
        }
        SpotWalks walks = day.walks();
        String base = day.trip().site().parking().spot();
        WalkOut farthest = null;
        int home = day.hours().home(day.trip().contact());
        for (String spot : spots) {
            int leaveBy = walks.times().leaveBy(walks.index(spot), 0, home);
            int minutes = home - leaveBy;
            boolean dark = walks.times().night(leaveBy) || walks.times().night(home - 1);
            long longest = minutes;
            for (Pace pace : walks.walking().between(spot, base, dark) == null ? new Pace[0] : Pace.values()) {
                longest = Math.max(longest, walks.walking().between(spot, base, dark, pace).toMinutes());
            }
            if (farthest == null || minutes > farthest.minutes()) {
                farthest = new WalkOut(spot, minutes, (int) longest, dark);
            }
        }
        return farthest;
    }

    private static Closing closing(Site site, ZonedDateTime day, ZonedDateTime sunset) {
        LocalTime gate = site.opening() == null ? null : site.opening().to();
        LocalTime park = site.parking() == null ? null : site.parking().closes();
        if (gate == null && park == null) {
            return null;
        }
        boolean carPark = gate == null || park != null && !park.isAfter(gate);
        ZonedDateTime at = day.toLocalDate().atTime(carPark ? park : gate).atZone(day.getZone());
        return new Closing(carPark, at, sunset == null ? null : Math.round(Duration.between(sunset, at).toSeconds() / 60.0));
    }

    private static Message message(Day day, Set<String> spots, ZonedDateTime back) {
        Site site = day.trip().site();
        String base = site.parking() == null ? null : site.parking().spot();
        ZonedDateTime backBy = day.hours().wordDue(day.trip().contact());
        return new Message(day.trip().contact().tell(), site.name(), site.positionOf(site.spot(base)), base, day.hours().arrive(),
                spots.stream().filter(Objects::nonNull).toList(), back, backBy, backBy.plus(GRACE));
    }
}
