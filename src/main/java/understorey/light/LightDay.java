package understorey.light;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import understorey.sky.Interval;
import understorey.sky.SunAt;

/** The moments of a day at one place, every five minutes from the first light to the last. */
public final class LightDay {

    private static final int STEPS = 3;
    /** Below this nothing is photographed that wishes for light. */
    private static final double DARK_DEG = -9;

    private final ToDoubleFunction<ZonedDateTime> okta;
    private final Mist mist;
    private final Drops drops;

    /**
     * A day's weather.
     *
     * @param okta cloud cover at a time, 0 to 8; not a number where nobody said, and such times are left out
     */
    public LightDay(ToDoubleFunction<ZonedDateTime> okta, Mist mist, Drops drops) {
        this.okta = okta;
        this.mist = mist;
        this.drops = drops;
    }

    /**
     * The moments.
     *
     * @param rows   every quarter of an hour; between them light is interpolated
     * @param sunlit stretches in which the sun clears the land: a fleck is there or not, to the minute
     */
    public List<Moment> over(List<LightAt> rows, List<Interval> sunlit) {
        List<Moment> day = new ArrayList<>();
        Moment from = at(rows.get(0));
        for (int i = 1; i < rows.size(); i++) {
            Moment to = at(rows.get(i));
            if (Math.max(from.sun().altitudeDeg(), to.sun().altitudeDeg()) > DARK_DEG && !Double.isNaN(from.okta())) {
                for (int step = 0; step < STEPS; step++) {
                    day.add(between(from, Double.isNaN(to.okta()) ? from : to, (double) step / STEPS,
                            SunAt.between(from.sun(), to.sun(), (double) step / STEPS), sunlit));
                }
            }
            from = to;
        }
        return day;
    }

    private Moment between(Moment from, Moment to, double share, SunAt sun, List<Interval> sunlit) {
        boolean clear = false;
        for (Interval stretch : sunlit) {
            clear |= stretch.contains(sun.time());
        }
        Moment first = clear && !from.clear() ? to : from;
        Moment last = clear && !to.clear() ? from : to;
        return new Moment(sun, clear, clear ? mix(first.fleckShare(), last.fleckShare(), share) : 0,
                mix(first.floorEv(), last.floorEv(), share),
                clear ? mix(first.contrastStops(), last.contrastStops(), share) : 0,
                mix(from.okta(), to.okta(), share), mist.at(sun.time()), drops.at(sun.time()));
    }

    private Moment at(LightAt row) {
        return at(row, okta.applyAsDouble(row.sun().time()));
    }

    private static double mix(double from, double to, double share) {
        return from * (1 - share) + to * share;
    }

    /** The moment of a light worked out for itself, under a cloud cover in okta. */
    public Moment at(LightAt light, double cloud) {
        ZonedDateTime time = light.sun().time();
        return new Moment(light.sun(), light.aboveSkyline(), light.fleckShare(), light.floorEv(cloud),
                light.contrastStops(cloud), cloud, mist.at(time), drops.at(time));
    }
}
