package understorey.visit;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.plan.Contact;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.Trip;

/**
 * What gets the photographer out of the wood in time: last light, walk out, closing time, check-in.
 *
 * @param back           when the plan is back where the walk began
 * @param lastLight      when the path becomes too dark without a head torch; null if it does not on that date, or is dark
 *                       all day
 * @param daylightMargin minutes from {@code back} to the last light, negative after it; null without a last light
 * @param walkOut        from the farthest spot visited; null without pictures, and without parking
 * @param closing        the first gate to shut; null if none does
 * @param message        for the contact; null without one
 * @param remarks        times that do not fit together
 */
public record Safety(ZonedDateTime back, ZonedDateTime leaveLastSpotBy, @Nullable ZonedDateTime lastLight,
                     @Nullable Long daylightMargin, @Nullable WalkOut walkOut, @Nullable Closing closing,
                     @Nullable Message message, List<Advice> remarks) {

    /** How long the contact waits after the check-in time: common practice, no source. */
    private static final Duration GRACE = Duration.ofMinutes(30);

    /**
     * A gate that shuts.
     *
     * @param carPark     the gate of the car park; else of the site
     * @param afterSunset minutes from sunset to closing, negative if it closes by day; null without a sunset
     */
    public record Closing(boolean carPark, ZonedDateTime at, @Nullable Long afterSunset) {
    }

    /**
     * Message to leave with the contact; never shown to anyone else.
     *
     * @param tell     who, and how
     * @param site     the wood
     * @param position of the car park, else of the site
     * @param base     name of the car park; null without one
     * @param arrive   when the visit begins
     * @param route    spots in the order visited; empty if no picture is taken at a spot
     * @param back     when the plan is back
     * @param backBy   check-in time
     * @param actFrom  time to ring, then to raise the alarm, without a check-in
     */
    public record Message(String tell, String site, Position position, @Nullable String base, ZonedDateTime arrive,
                          List<String> route, ZonedDateTime back, ZonedDateTime backBy, ZonedDateTime actFrom) {
    }

    /**
     * The safety of a visit as planned.
     *
     * @param back            when the walk is back where it began
     * @param leaveLastSpotBy when to turn back at the latest
     * @param visited         the spots at which pictures are taken, in order; null is the site itself
     */
    public static Safety of(Day day, ZonedDateTime back, ZonedDateTime leaveLastSpotBy,
                            List<@Nullable String> visited) {
        Trip trip = day.trip();
        Set<@Nullable String> spots = new LinkedHashSet<>(visited);
        ZonedDateTime lastLight = lastLight(day);
        Message message = trip.contact() == null ? null : message(day, trip.contact(), spots, back);
        Long margin = lastLight == null ? null : Duration.between(back, lastLight).toMinutes();
        return new Safety(back, leaveLastSpotBy, lastLight, margin, walkOut(day, spots),
                closing(Gates.of(trip.site(), day.hours().visit()), day.sun().sunset()), message,
                remarks(message, back, day.hours().end(), margin));
    }

    private static List<Advice> remarks(@Nullable Message message, ZonedDateTime back, ZonedDateTime end, @Nullable Long margin) {
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

    private static @Nullable WalkOut walkOut(Day day, Set<@Nullable String> spots) {
        Parking parking = day.trip().site().parking();
        if (parking == null) {
            return null;
        }
        SpotWalks walks = day.walks();
        WalkOut farthest = null;
        int home = day.hours().home(day.trip().contact());
        for (String spot : spots) {
            int leaveBy = walks.times().leaveBy(walks.index(spot), 0, home);
            int minutes = home - leaveBy;
            boolean dark = walks.times().night(leaveBy) || walks.times().night(home - 1);
            long longest = minutes;
            for (Pace pace : Pace.values()) {
                Duration walk = walks.walking().between(spot, parking.spot(), dark, pace);
                longest = walk == null ? longest : Math.max(longest, walk.toMinutes());
            }
            if (farthest == null || minutes > farthest.minutes()) {
                farthest = new WalkOut(spot, minutes, (int) longest, dark);
            }
        }
        return farthest;
    }

    /** Of the day; of a visit past midnight before its end, if it begins in the light. */
    private static @Nullable ZonedDateTime lastLight(Day day) {
        Hours hours = day.hours();
        boolean night = hours.leave().toLocalDate().isAfter(day.date());
        ZonedDateTime end = night ? hours.leave() : day.light().get(day.light().size() - 1).time();
        ZonedDateTime last = day.darkest().lastLight(end);
        return last == null || last.equals(end) || night && !last.isAfter(hours.arrive()) ? null : last;
    }

    private static @Nullable Closing closing(Gates gates, @Nullable ZonedDateTime sunset) {
        ZonedDateTime at = gates.shut();
        return at == null ? null : new Closing(gates.carParkFirst(), at,
                sunset == null ? null : Math.round(Duration.between(sunset, at).toSeconds() / 60.0));
    }

    private static Message message(Day day, Contact contact, Set<@Nullable String> spots, ZonedDateTime back) {
        Site site = day.trip().site();
        String base = site.parking() == null ? null : site.parking().spot();
        ZonedDateTime backBy = day.hours().checkInDue(contact);
        return new Message(contact.tell(), site.name(), site.positionOf(site.spot(base)), base, day.hours().arrive(),
                spots.stream().filter(Objects::nonNull).toList(), back, backBy, backBy.plus(GRACE));
    }
}
