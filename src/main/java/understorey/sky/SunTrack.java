package understorey.sky;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.plan.Position;

/** Positions of the sun over a day, by even steps. */
public final class SunTrack {

    private SunTrack() {
    }

    /**
     * Positions from the first instant of a stretch to its end, the end excluded. Steps are even in elapsed time: a
     * day of clock change has 92 or 100 quarters of an hour, and the clock reading jumps between two of them.
     */
    public static List<SunAt> of(Position place, Interval day, Duration step) {
        if (step.isZero() || step.isNegative()) {
            throw new IllegalArgumentException("not a step: " + step);
        }
        List<SunAt> track = new ArrayList<>();
        for (ZonedDateTime t = day.from(); t.isBefore(day.to()); t = t.plus(step)) {
            track.add(SunAt.of(place, t));
        }
        return List.copyOf(track);
    }
}
