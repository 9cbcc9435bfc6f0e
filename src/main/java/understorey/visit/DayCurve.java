package understorey.visit;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.sky.SunDay;

/**
 * Altitude of the sun and light on the ground at any time of a day, linear between rows at even steps. With rows every 15
 * minutes the sun is within 0.03° up to 45° above or below the horizon, and coarser nearer to zenith or nadir. Before the
 * first row and after the last, both keep their values.
 */
public final class DayCurve {

    /** 3.4 lux: Seidelmann's table at −6°; the AMS Glossary of Meteorology has 2 to 3.5 lux there. */
    private static final double DIM_EV = 0.45;

    private final List<LightAt> light;
    private final double stepSeconds;

    public DayCurve(List<LightAt> light) {
        this.light = light;
        this.stepSeconds = Duration.between(light.get(0).time(), light.get(1).time()).toSeconds();
    }

    /** Altitude of the sun's centre, degrees. */
    public double altitudeDeg(ZonedDateTime time) {
        return LightTable.place(light, time).mix(row -> light.get(row).sun().altitudeDeg());
    }

    public boolean up(ZonedDateTime time) {
        return altitudeDeg(time) >= SunDay.RISE_DEG;
    }

    /**
     * Whether a head torch is needed: the ground under an overcast sky is darker than open ground at the end of civil
     * twilight, sun at −6°, when outdoor work needs a light. Under leaves that is earlier in the evening than in the open.
     */
    public boolean dim(ZonedDateTime time) {
        return LightTable.place(light, time).mix(this::floorEv) < DIM_EV;
    }

    /** First time from {@code then} on without a head torch; null if there is none. */
    public @Nullable ZonedDateTime firstLight(ZonedDateTime then) {
        if (!dim(then)) {
            return then;
        }
        for (int i = 1; i < light.size(); i++) {
            if (floorEv(i) >= DIM_EV && light.get(i).sun().time().isAfter(then)) {
                return crossing(i - 1);
            }
        }
        return null;
    }

    /** Last time up to {@code then} without a head torch; null if there is none. */
    public @Nullable ZonedDateTime lastLight(ZonedDateTime then) {
        if (!dim(then)) {
            return then;
        }
        for (int i = light.size() - 2; i >= 0; i--) {
            if (floorEv(i) >= DIM_EV && !light.get(i).sun().time().isAfter(then)) {
                return crossing(i);
            }
        }
        return null;
    }

    /** When the light after {@code then}, or at it, first ends; null if it lasts. */
    @Nullable ZonedDateTime firstDusk(ZonedDateTime then) {
        for (int i = 0; i < light.size() - 1; i++) {
            if (light.get(i + 1).time().isAfter(then) && floorEv(i) >= DIM_EV && floorEv(i + 1) < DIM_EV && crossing(i).isAfter(then)) {
                return crossing(i);
            }
        }
        return null;
    }

    private ZonedDateTime crossing(int row) {
        double share = (DIM_EV - floorEv(row)) / (floorEv(row + 1) - floorEv(row));
        return light.get(row).sun().time().plusSeconds(Math.round(share * stepSeconds));
    }

    private double floorEv(int row) {
        return light.get(row).floor().overcast();
    }
}
