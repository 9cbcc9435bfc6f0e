package understorey;

import java.util.List;
import understorey.plan.Body;
import understorey.plan.Filter;
import understorey.plan.Lens;
import understorey.plan.Sensor;

/** Gear that few tests need; every name is invented. */
public final class Glass {

    private Glass() {
    }

    /** One-inch sensor behind a lens of 8.8 mm; without a smallest stop it has one aperture. */
    public static Body compact(Double smallestStop) {
        Lens only = new Lens("only", null, new Sensor(13.2, 8.8), 8.8, 8.8, 1.8, 1.8, smallestStop, 0.05, null, null, 0,
                null);
        return new Body("Compact", null, 20, null, 125, 3200, 0, 20.0, 250, 300.0, List.of(only));
    }

    public static Filter neutralDensity(double threadMm, double lossStops) {
        return new Filter("ND " + lossStops, Filter.Kind.NEUTRAL_DENSITY, threadMm, lossStops, null, null, null, null, 30.0);
    }
}
