package understorey.outing;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Set;
import understorey.advice.Advice;
import understorey.sky.Interval;

/**
 * The visit, minute by minute.
 *
 * @param leaveLastSpotBy the latest minute to turn back and still be off the site in time, and in time for the word due
 * @param lamp            when the way in and out want one
 * @param legs            in order of time, without gaps between the first and the last
 * @param remarks         what does not work out
 * @param assumed         the names, as in the plan's format, of what the author left out
 */
public record Outing(ZonedDateTime arrive, ZonedDateTime leave, ZonedDateTime leaveLastSpotBy, LampHours lamp, List<Leg> legs,
                     List<Advice> remarks, Set<String> assumed) {

    /** When the picture of that name is taken; null when the visit leaves no time for it. */
    public Interval timeOf(String shot) {
        for (Leg leg : legs) {
            if (leg.what() == Leg.What.SHOOT && leg.shot().equals(shot)) {
                return new Interval(leg.from(), leg.to());
            }
        }
        return null;
    }
}
