package understorey.pages.html;

import static understorey.pages.words.Words.ifKnown;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.order.Leg;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Words;
import understorey.plan.Parking;
import understorey.visit.HeadTorchHours;

/**
 * When and where to go.
 *
 * @param arriveBy early enough for the first picture; null where the arrival is not much too early
 * @param base    the car park's spot; null where none is known
 * @param torch   when the plan needs a head torch; null when it does not
 * @param leaveBy when to turn back at the latest
 * @param back    when the plan is back; null when no picture is taken
 */
public record GoView(String arrive, @Nullable String arriveBy, @Nullable String base, @Nullable String torch, String leaveBy,
        @Nullable String back, List<Stop> stops) {

    /**
     * A spot on the way.
     *
     * @param minutes walked to it; null without a walk
     */
    public record Stop(String spot, @Nullable String minutes, String pictures) {
    }

    static GoView of(Brief brief, ClockWords clock) {
        Parking parking = brief.trip().site().parking();
        boolean taken = !brief.order().shooting().isEmpty();
        boolean early = brief.order().arriveBy().isAfter(brief.order().arrive());
        return new GoView(clock.of(brief.order().arrive()), early ? clock.of(brief.order().arriveBy()) : null,
                ifKnown(parking, Parking::spot), torch(brief.day().headTorch(), brief.order().back(), clock),
                clock.of(brief.order().leaveLastSpotBy()), taken ? clock.of(brief.order().back()) : null, stops(brief));
    }

    private static @Nullable String torch(HeadTorchHours hours, ZonedDateTime back, ClockWords clock) {
        if (hours.allDay()) {
            return "on all the time";
        }
        if (hours.between() != null) {
            return "from " + clock.of(hours.from()) + " to " + clock.of(hours.until());
        }
        String in = hours.until() == null ? "" : "until " + clock.of(hours.until());
        String out = hours.from() == null || hours.from().isAfter(back) ? "" : "from " + clock.of(hours.from());
        return in.isEmpty() && out.isEmpty() ? null : in.isEmpty() ? out : out.isEmpty() ? in : in + " and " + out;
    }

    private static List<Stop> stops(Brief brief) {
        List<Stop> stops = new ArrayList<>();
        List<Integer> numbers = new ArrayList<>();
        String walked = null;
        Leg last = null;
        for (Leg leg : brief.order().legs()) {
            if (leg.what() == Leg.What.WALK) {
                stop(last, walked, numbers, brief, stops);
                walked = String.valueOf(leg.minutes());
            } else if (leg.what() == Leg.What.SHOOT) {
                numbers.add(brief.shot(leg.shot()).number());
                last = leg;
            }
        }
        stop(last, walked, numbers, brief, stops);
        return stops;
    }

    private static void stop(@Nullable Leg last, @Nullable String walked, List<Integer> numbers, Brief brief, List<Stop> stops) {
        if (last != null && !numbers.isEmpty()) {
            stops.add(new Stop(Words.place(brief.trip().site(), last.spot()), walked,
                    numbers.stream().map(String::valueOf).collect(Collectors.joining(",\u00a0"))));
            numbers.clear();
        }
    }
}
