package understorey.pages.html;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.brief.SpotLight;
import understorey.sky.Interval;
import understorey.sky.SunDay;
import understorey.visit.HeadTorchHours;
import understorey.visit.WeatherHour;

/** The times that matter during a visit, in order. */
final class VisitEvents {

    /** Something that happens at a time; events of one minute are one. */
    record Event(ZonedDateTime time, String name) {
    }

    /** Light that comes so shortly before the arrival is worth knowing on the way, minutes. */
    private static final int BEFORE_MIN = 20;
    /** The sun that reaches a spot this soon after sunrise comes with it, minutes. */
    private static final int WITH_SUNRISE_MIN = 3;
    private static final String SUN_AT = "sun at ";
    private static final String SUN_OFF = "sun off ";
    /** Cloud covers more than half of the sky, okta. */
    private static final double MOSTLY_CLOUDY_OKTA = 4.5;

    private final Brief brief;
    private final List<Event> events = new ArrayList<>();

    private VisitEvents(Brief brief) {
        this.brief = brief;
    }

    static List<Event> of(Brief brief) {
        VisitEvents visit = new VisitEvents(brief);
        visit.sun(brief.day().sun());
        visit.headTorch(brief.day().headTorch());
        for (SpotLight spot : brief.places()) {
            visit.sunlit(SpotView.name(brief, spot.place()), spot.place().sunlit(), brief.day().sun());
        }
        visit.weather(brief.weather());
        visit.add(brief.order().leaveLastSpotBy(), "leave the last spot");
        return visit.merged();
    }

    private void sun(SunDay sun) {
        add(sun.civilDawn(), "civil dawn");
        add(sun.sunrise(), "sunrise");
        add(sun.sunset(), "sunset");
        add(sun.civilDusk(), "civil dusk");
    }

    private void headTorch(HeadTorchHours hours) {
        add(hours.until(), "head torch off");
        add(hours.from(), "head torch on");
    }

    private void sunlit(String place, List<Interval> stretches, SunDay day) {
        for (Interval stretch : stretches) {
            if (!near(stretch.from(), day.sunrise())) {
                add(stretch.from(), SUN_AT + place);
            }
            if (!near(stretch.to(), day.sunset())) {
                add(stretch.to(), SUN_OFF + place);
            }
        }
    }

    private static boolean near(ZonedDateTime time, @Nullable ZonedDateTime event) {
        return event != null && !time.isBefore(event.minusMinutes(WITH_SUNRISE_MIN)) && !time.isAfter(event.plusMinutes(WITH_SUNRISE_MIN));
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
                    add(hour.time(), now ? "cloud" : "cloud clears");
                }
                cloudy = now;
            }
            if (hour.wet() && dry) {
                add(hour.time(), "rain possible");
                dry = false;
            }
        }
    }

    private void add(@Nullable ZonedDateTime time, String name) {
        if (time != null && !time.isBefore(brief.order().arrive().minusMinutes(BEFORE_MIN)) && !time.isAfter(brief.order().leave())) {
            events.add(new Event(time, name));
        }
    }

    private List<Event> merged() {
        events.sort(Comparator.comparing(Event::time));
        List<Event> merged = new ArrayList<>();
        for (Event event : events) {
            Event last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && last.time().plusMinutes(1).isAfter(event.time())) {
                merged.set(merged.size() - 1, new Event(last.time(), joined(last.name(), event.name())));
            } else {
                merged.add(event);
            }
        }
        return merged;
    }

    /** What happens is said once for several spots. */
    private static String joined(String name, String other) {
        String said = name.startsWith(SUN_AT) ? SUN_AT : name.startsWith(SUN_OFF) ? SUN_OFF : "";
        return name + ", " + (other.startsWith(said) ? other.substring(said.length()) : other);
    }
}
