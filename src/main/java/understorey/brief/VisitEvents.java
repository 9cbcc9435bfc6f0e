package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.order.RunningOrder;
import understorey.scene.Fact;
import understorey.scene.Fact.Word;
import understorey.scene.chart.VisitFigure;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.visit.Day;
import understorey.visit.Place;
import understorey.visit.WeatherHour;

/** The times that matter during a visit: twilight, head torch, sun, moon, cloud and rain, the time to turn back. */
final class VisitEvents {

    /** Light that comes so shortly before the arrival is worth knowing on the way. */
    private static final int BEFORE_MIN = 30;
    /** The sun that reaches a spot this soon after sunrise comes with it. */
    private static final long WITH_SUNRISE_S = 180;
    private static final int HALF_MINUTE_S = 30;
    /** Cloud covers more than half of the sky. */
    private static final double MOSTLY_CLOUDY_OKTA = 4.5;

    private final Day day;
    private final RunningOrder order;
    private final List<VisitFigure.Event> events = new ArrayList<>();

    private VisitEvents(Day day, RunningOrder order) {
        this.day = day;
        this.order = order;
    }

    /** In order of time; events of one minute are one. */
    static List<VisitFigure.Event> of(Day day, RunningOrder order, List<WeatherHour> weather) {
        VisitEvents visit = new VisitEvents(day, order);
        SunDay sun = day.sun();
        visit.add(sun.civilDawn(), Word.CIVIL_DAWN);
        visit.add(day.headTorch().until(), Word.HEAD_TORCH_OFF);
        visit.add(sun.sunrise(), Word.SUNRISE);
        visit.add(sun.sunset(), Word.SUNSET);
        visit.add(day.headTorch().from(), Word.HEAD_TORCH_ON);
        visit.add(sun.civilDusk(), Word.CIVIL_DUSK);
        visit.moon(day.moon().rise(), Word.MOONRISE);
        visit.moon(day.moon().set(), Word.MOONSET);
        visit.sunlit(Interval::from, sun.sunrise(), Word.SUN_ABOVE_SKYLINE, Fact.SunAt::new);
        visit.sunlit(Interval::to, sun.sunset(), Word.SUN_BEHIND_SKYLINE, Fact.SunOff::new);
        visit.weather(weather);
        visit.add(order.leaveLastSpotBy(), Word.LEAVE_LAST_SPOT);
        return visit.merged();
    }

    /** Civil twilight is brighter than any moon. */
    private void moon(@Nullable ZonedDateTime time, Word what) {
        if (time != null && day.darkest().altitudeDeg(time) < SunDay.CIVIL_DEG) {
            add(time, what);
        }
    }

    /** The sun at each place with a skyline, those together that have the same minute. */
    private void sunlit(Function<Interval, ZonedDateTime> end, @Nullable ZonedDateTime with, Fact everywhere, Function<String, Fact> there) {
        Map<ZonedDateTime, String> places = new TreeMap<>();
        for (Place place : day.places().stream().filter(place -> !place.levelHorizon()).toList()) {
            String name = place.name(day.trip().site());
            for (Interval sunlit : place.sunlit()) {
                ZonedDateTime time = end.apply(sunlit);
                if (with == null || Math.abs(Duration.between(time, with).toSeconds()) > WITH_SUNRISE_S) {
                    places.merge(time.plusSeconds(HALF_MINUTE_S).truncatedTo(ChronoUnit.MINUTES), name, (one, other) -> one + ", " + other);
                }
            }
        }
        places.forEach((time, names) -> add(time, day.places().size() == 1 ? everywhere : there.apply(names)));
    }

    /** The first hour of rain, and each hour in which cloud comes or goes. */
    private void weather(List<WeatherHour> hours) {
        Boolean cloudy = null;
        boolean dry = true;
        for (WeatherHour hour : hours) {
            Double okta = hour.weather().okta();
            if (okta != null) {
                boolean now = okta >= MOSTLY_CLOUDY_OKTA;
                if (cloudy != null && cloudy != now) {
                    add(hour.time(), now ? Word.CLOUD_COMES : Word.CLOUD_CLEARS);
                }
                cloudy = now;
            }
            if (hour.wet() && dry) {
                add(hour.time(), Word.RAIN_POSSIBLE);
                dry = false;
            }
        }
    }

    private void add(@Nullable ZonedDateTime time, Fact what) {
        if (time != null && !time.isBefore(order.arrive().minusMinutes(BEFORE_MIN)) && !time.isAfter(order.leave())) {
            events.add(new VisitFigure.Event(time, what));
        }
    }

    private List<VisitFigure.Event> merged() {
        events.sort(Comparator.comparing(VisitFigure.Event::time));
        List<VisitFigure.Event> merged = new ArrayList<>();
        for (VisitFigure.Event event : events) {
            VisitFigure.Event last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && last.time().plusMinutes(1).isAfter(event.time())) {
                merged.set(merged.size() - 1, new VisitFigure.Event(last.time(), new Fact.Item(last.what(), event.what())));
            } else {
                merged.add(event);
            }
        }
        return List.copyOf(merged);
    }
}
