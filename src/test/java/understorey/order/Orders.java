package understorey.order;

import static understorey.Samples.MAY_DAY;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import understorey.kit.Intent;
import understorey.plan.Shot;
import understorey.plan.Trip;
import understorey.visit.Day;

/** Running orders of made-up trips. */
public final class Orders {

    private Orders() {
    }

    /** Where light counts for nothing but day and night. */
    public static RunningOrder of(Trip trip, LocalDate date) {
        Day day = Day.of(trip, date);
        return RunningOrder.of(day, candidates(trip.shots(), shot -> Quality.daylight(day, shot)));
    }

    /** On the first of May. */
    static RunningOrder of(Trip trip, Function<Shot, Quality> light, String... mounted) {
        return RunningOrder.of(Day.of(trip, MAY_DAY), candidates(trip.shots(), light, mounted));
    }

    /** With the same on the support for all, unless it is given shot by shot. */
    static List<Candidate> candidates(List<Shot> shots, Function<Shot, Quality> light, String... mounted) {
        List<Candidate> candidates = new ArrayList<>();
        for (Intent intent : Intent.of(shots, null)) {
            candidates.add(new Candidate(intent.shot(), intent.duration(), intent.priority(),
                    mounted.length == 0 ? "" : mounted[candidates.size()], List.of(light.apply(intent.shot()))));
        }
        return candidates;
    }
}
