package understorey.outing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import understorey.kit.Intent;
import understorey.light.LightAt;
import understorey.plan.Site;

/**
 * The places of a visit and the walks between them.
 *
 * @param spots by index; a null name is the site itself. The first is where the walk begins and ends: the car park; where
 *              none is given, nowhere in particular and no way from anywhere
 */
record Ground(Site site, Walking walking, List<String> spots, Ways ways) {

    /** What a walk takes that nobody timed and no positions give, minutes: common practice, no source. */
    static final int UNKNOWN_WALK = 5;

    /**
     * For some pictures.
     *
     * @param light on the darkest floor visited, over the whole date
     * @param names of the spots visited; null is the site itself
     */
    static Ground of(Site site, List<LightAt> light, VisitHours hours, List<String> names) {
        List<String> spots = new ArrayList<>();
        spots.add(site.parking() == null ? null : site.parking().spot());
        int first = site.parking() == null ? 1 : 0;
        for (String name : names) {
            if (!spots.subList(first, spots.size()).contains(name)) {
                spots.add(name);
            }
        }
        Walking walking = new Walking(site);
        return new Ground(site, walking, spots, new Ways(minutes(walking, spots, first, false), minutes(walking, spots, first, true),
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

    private static boolean[] night(List<LightAt> light, VisitHours hours) {
        DayCurve curve = new DayCurve(light);
        boolean[] night = new boolean[(int) Duration.between(hours.start(), hours.start().plusDays(1)).toMinutes()];
        for (int minute = 0; minute < night.length; minute++) {
            night[minute] = curve.dim(hours.at(minute));
        }
        return night;
    }

    /** As the author calls it. */
    String name(int spot) {
        return spots.get(spot) == null ? site.name() : spots.get(spot);
    }

    int index(Intent intent) {
        return spots.lastIndexOf(intent.shot().spot());
    }

    /** True when the walk's length is a guess. */
    boolean guessed(int from, int to) {
        return walking.between(spots.get(from), spots.get(to), false) == null;
    }
}
