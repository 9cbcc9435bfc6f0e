package understorey.scene.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import understorey.order.RunningOrder;
import understorey.scene.Fact;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.visit.Day;
import understorey.visit.HeadTorchHours;
import understorey.visit.Place;

/** What happens during a visit: twilight, head torch, sunrise and sunset, the sun at each place, the time to turn back. */
final class VisitEvents {

    /** Two marks nearer than this would say the same. */
    private static final long APART_S = 180;

    private final Predicate<ZonedDateTime> shown;
    private final List<Event> events = new ArrayList<>();

    /** One of them. */
    record Event(ZonedDateTime time, Fact fact) {
    }

    private VisitEvents(Predicate<ZonedDateTime> shown) {
        this.shown = shown;
    }

    /** In order of time. */
    static List<Event> of(Day day, RunningOrder order, Predicate<ZonedDateTime> shown) {
        VisitEvents events = new VisitEvents(shown);
        SunDay sun = day.sun();
        HeadTorchHours torch = day.headTorch();
        day.places().forEach(place -> events.sun(place, day));
        events.add(torch.until(), Fact.HeadTorchOff::new);
        events.add(torch.from(), Fact.HeadTorchOn::new);
        events.add(sun.civilDawn(), Fact.CivilDawn::new);
        events.add(sun.civilDusk(), Fact.CivilDusk::new);
        events.add(sun.sunrise(), Fact.Sunrise::new);
        events.add(sun.sunset(), Fact.Sunset::new);
        events.add(order.leaveLastSpotBy(), Fact.LeaveLastSpotBy::new);
        return events.events.stream().sorted(Comparator.comparing(Event::time)).toList();
    }

    private void sun(Place place, Day day) {
        List<Place> places = day.places();
        String name = places.size() == 1 ? null : place.spots().isEmpty() ? day.trip().site().name() : String.join(", ", place.spots());
        for (Interval sunlit : place.sunlit()) {
            if (apart(sunlit.from(), day.sun().sunrise())) {
                add(sunlit.from(), time -> name == null ? new Fact.ClearsSkyline(time) : new Fact.SunReaches(name, time));
            }
            if (apart(sunlit.to(), day.sun().sunset())) {
                add(sunlit.to(), time -> name == null ? new Fact.GoesBehindSkyline(time) : new Fact.SunLeaves(name, time));
            }
        }
    }

    private void add(@Nullable ZonedDateTime time, Function<ZonedDateTime, Fact> fact) {
        if (time != null && shown.test(time)) {
            events.add(new Event(time, fact.apply(time)));
        }
    }

    private static boolean apart(ZonedDateTime a, @Nullable ZonedDateTime b) {
        return b == null || Math.abs(Duration.between(a, b).toSeconds()) > APART_S;
    }
}
