package understorey.outing;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import understorey.kit.Intent;
import understorey.light.LightAt;
import understorey.plan.Site;
import understorey.plan.Trip;

/**
 * The places of a visit and the walks between them.
 *
 * @param spots by index, each once; a null name is the site itself. The first is where the walk begins and ends
 */
record Ground(Site site, Walking walking, List<String> spots, Ways ways) {

    /** What a walk takes that nobody timed and no positions give, minutes. */
    static final int UNKNOWN_WALK = 5;

    static Ground of(Trip trip, List<LightAt> light, VisitHours hours, List<Intent> intents) {
        List<String> spots = new ArrayList<>();
        if (trip.site().parking() != null) {
            spots.add(trip.site().parking().spot());
        }
        for (Intent intent : intents) {
            if (!spots.contains(intent.shot().spot())) {
                spots.add(intent.shot().spot());
            }
        }
        Walking walking = new Walking(trip.site());
        return new Ground(trip.site(), walking, spots, new Ways(minutes(walking, spots, false), minutes(walking, spots, true), night(light, hours)));
    }

    private static int[][] minutes(Walking walking, List<String> spots, boolean dark) {
        int[][] minutes = new int[spots.size()][spots.size()];
        for (int a = 0; a < minutes.length; a++) {
            for (int b = 0; b < minutes.length; b++) {
                Duration known = walking.between(spots.get(a), spots.get(b), dark);
                minutes[a][b] = known == null ? UNKNOWN_WALK : (int) known.toMinutes();
            }
        }
        return minutes;
    }

    private static boolean[] night(List<LightAt> light, VisitHours hours) {
        SunHeight sun = new SunHeight(light);
        boolean[] night = new boolean[(int) Duration.between(hours.start(), hours.start().plusDays(1)).toMinutes()];
        for (int minute = 0; minute < night.length; minute++) {
            night[minute] = sun.dark(hours.at(minute));
        }
        return night;
    }

    /** As the author calls it. */
    String name(int spot) {
        return spots.get(spot) == null ? site.name() : spots.get(spot);
    }

    int index(Intent intent) {
        return spots.indexOf(intent.shot().spot());
    }

    /** True when the walk's length is a guess. */
    boolean guessed(int from, int to) {
        return walking.between(spots.get(from), spots.get(to), false) == null;
    }
}
