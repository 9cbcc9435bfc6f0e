package understorey.light;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import understorey.plan.Canopy;
import understorey.plan.Position;
import understorey.sky.Skyline;
import understorey.sky.SunTrack;

/** The light over a whole local day. */
public final class LightTable {

    private static final Duration STEP = Duration.ofMinutes(15);

    private LightTable() {
    }

    /** Light every 15 minutes from the date's first instant to its end, the end excluded: 92, 96 or 100 rows. */
    public static List<LightAt> of(Position place, LocalDate date, ZoneId zone, Skyline skyline, Canopy canopy) {
        return SunTrack.of(place, date, zone, STEP).stream()
                .map(sun -> LightAt.of(sun, skyline, canopy, date)).toList();
    }
}
