package understorey.visit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;

/**
 * The places of a visit and the walks between them.
 *
 * @param spots by index; a null name is the site itself. The first is where the walk begins and ends: the car park; where
 *              none is given, nowhere in particular and no way from anywhere
 */
public record SpotWalks(Site site, Walking walking, List<String> spots, TravelTimes times) {

    /** What a walk takes that nobody timed and no positions give, minutes: common practice, no source. */
    static final int UNKNOWN_WALK = 5;

    /** Between the spots of a trip's pictures. */
    static SpotWalks of(Trip trip, Hours hours, DayCurve light) {
        Site site = trip.site();
        List<String> spots = new ArrayList<>();
        spots.add(site.parking() == null ? null : site.parking().spot());
        int first = site.parking() == null ? 1 : 0;
        for (Shot shot : trip.shots()) {
            if (!spots.subList(first, spots.size()).contains(shot.spot())) {
                spots.add(shot.spot());
            }
        }
        Walking walking = new Walking(site);
        return new SpotWalks(site, walking, spots, new TravelTimes(minutes(walking, spots, first, false), minutes(walking, spots, first, true),
                night(light, hours)));
    }

    private static int[][] minutes(Walking walking, List<String> spots, int first, boolean dark) {
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
        boolean[] night = new boolean[(int) Duration.between(hours.start(), hours.start().plusDays(1)).toMinutes()];
        for (int minute = 0; minute < night.length; minute++) {
            night[minute] = light.dim(hours.at(minute));
        }
        return night;
    }

    /** As the author calls it. */
    public String name(int spot) {
        return spots.get(spot) == null ? site.name() : spots.get(spot);
    }

    /** The index of a spot that is not only the car park. */
    public int index(String spot) {
        return spots.lastIndexOf(spot);
    }

    /** True when the walk's length is a guess. */
    public boolean guessed(int from, int to) {
        return walking.between(spots.get(from), spots.get(to), false) == null;
    }
}
