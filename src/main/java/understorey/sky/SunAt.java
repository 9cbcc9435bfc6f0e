package understorey.sky;

import java.time.Duration;
import java.time.ZonedDateTime;
import org.shredzone.commons.suncalc.SunPosition;
import understorey.plan.Position;

/**
 * Position of the sun at an instant.
 *
 * @param time        the instant
 * @param azimuthDeg  bearing of the sun from true north, clockwise, 0 to 360
 * @param altitudeDeg true altitude of the centre, as if there were no air; negative below the horizon
 */
public record SunAt(ZonedDateTime time, double azimuthDeg, double altitudeDeg) {

    /** Position of the sun from a place, within about 0.02° from 1900 to 2100. */
    public static SunAt of(Position place, ZonedDateTime time) {
        SunPosition sun = SunPosition.compute().on(time).at(place.latitude(), place.longitude()).execute();
        return new SunAt(time, sun.getAzimuth(), sun.getTrueAltitude());
    }

    /**
     * Apparent altitude of the centre, lifted by refraction: 29′ above a true altitude of zero, 5′ at 10°, under 1′
     * above 45°.
     */
    public double apparentAltitudeDeg() {
        return altitudeDeg + Refraction.liftDeg(altitudeDeg);
    }

    /**
     * Position between two others, at a share of 0 to 1 of the way: linear in altitude and, the shorter way round, in
     * azimuth. Within 0.05° over 15 minutes, except for a sun near the zenith.
     */
    public static SunAt between(SunAt from, SunAt to, double share) {
        long millis = Math.round(share * Duration.between(from.time, to.time).toMillis());
        double azimuth = from.azimuthDeg + share * Skyline.turned(to.azimuthDeg - from.azimuthDeg);
        return new SunAt(from.time.plusNanos(millis * 1_000_000), (azimuth + 360) % 360,
                from.altitudeDeg + share * (to.altitudeDeg - from.altitudeDeg));
    }
}
