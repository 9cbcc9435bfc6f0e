package understorey.visit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;

/**
 * The spots of a visit and the walks between them.
 *
 * @param spots by index; a null name is the site itself. The first is the car park, where the walk begins and ends; without
 *              parking it is no place and all its walks take no time
 */
public record SpotWalks(Site site, Walking walking, List<@Nullable String> spots, TravelTimes times) {

    /** An untimed walk without positions, minutes: common practice, no source. */
    static final int UNKNOWN_WALK = 5;

    /** The walks between the spots of a trip's pictures. */
    static SpotWalks of(Trip trip, Hours hours, DayCurve light) {
        Site site = trip.site();
        List<@Nullable String> spots = new ArrayList<>();
        spots.add(site.parking() == null ? null : site.parking().spot());
        int first = site.parking() == null ? 1 : 0;
        for (Shot shot : trip.shots()) {
            if (!spots.subList(first, spots.size()).contains(shot.spot())) {
                spots.add(shot.spot());
            }
        }
        Walking walking = new Walking(site);
        return new SpotWalks(site, walking, spots, new TravelTimes(minutes(walking, spots, first, false),
                minutes(walking, spots, first, true), night(light, hours)));
    }

    private static int[][] minutes(Walking walking, List<@Nullable String> spots, int first, boolean dark) {
        int[][] minutes = new int[spots.size()][spots.size()];
        for (int a = first; a < minutes.length; a++) {
            for (int b = first; b < minutes.length; b++) {
                Duration known = walking.between(spots.get(a), spots.get(b), dark);
                minutes[a][b] = known == null ? UNKNOWN_WALK : (int) known.toMinutes();
            }
        }
        return minutes;
    }

    private static boolean[] night(DayCurve light, Hours hours) {
        boolean[] night = new boolean[(int) hours.day().length().toMinutes()];
        for (int minute = 0; minute < night.length; minute++) {
            night[minute] = light.dim(hours.at(minute));
        }
        return night;
    }

    /** Name of a spot, or of the site. */
    public String name(int spot) {
        String name = spots.get(spot);
        return name == null ? site.name() : name;
    }

    /** Index of a spot with pictures. */
    public int index(@Nullable String spot) {
        return spots.lastIndexOf(spot);
    }

    /** True if the time of a walk is a guess. */
    public boolean guessed(int from, int to) {
        return walking.between(spots.get(from), spots.get(to), false) == null;
    }
}
