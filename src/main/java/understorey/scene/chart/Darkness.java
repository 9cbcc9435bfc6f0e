package understorey.scene.chart;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import understorey.light.LightAt;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * Night and civil twilight between the sun's crossings, in whatever order they fall on a date: far north in June
 * the sun sets after midnight, and a day may begin with a dusk.
 */
final class Darkness {

    /** Dark hours; {@code night} below civil twilight. */
    record Hours(Interval time, boolean night) {
    }

    private Darkness() {
    }

    /** The dark stretches from one time to another, in order. */
    static List<Hours> of(List<LightAt> light, SunDay sun, ZonedDateTime from, ZonedDateTime to) {
        List<ZonedDateTime> ends = new ArrayList<>(List.of(from, to));
        for (ZonedDateTime event : Arrays.asList(sun.civilDawn(), sun.sunrise(), sun.sunset(), sun.civilDusk())) {
            if (event != null && event.isAfter(from) && event.isBefore(to)) {
                ends.add(event);
            }
        }
        ends.sort(Comparator.naturalOrder());
        List<Hours> dark = new ArrayList<>();
        for (int i = 1; i < ends.size(); i++) {
            Interval time = new Interval(ends.get(i - 1), ends.get(i));
            double altitudeDeg = altitudeDeg(light, time.middle());
            if (altitudeDeg < SunDay.RISE_DEG) {
                dark.add(new Hours(time, altitudeDeg < SunDay.CIVIL_DEG));
            }
        }
        return dark;
    }

    /** True altitude of the sun between two rows of the table. */
    private static double altitudeDeg(List<LightAt> light, ZonedDateTime time) {
        LightAt before = light.get(0);
        for (LightAt row : light) {
            if (row.sun().time().isAfter(time)) {
                double share = (double) Duration.between(before.sun().time(), time).toSeconds()
                        / Duration.between(before.sun().time(), row.sun().time()).toSeconds();
                return before.sun().altitudeDeg() + share * (row.sun().altitudeDeg() - before.sun().altitudeDeg());
            }
            before = row;
        }
        return before.sun().altitudeDeg();
    }
}
