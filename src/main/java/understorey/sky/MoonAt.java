package understorey.sky;

import java.time.ZonedDateTime;
import org.shredzone.commons.suncalc.MoonIllumination;
import org.shredzone.commons.suncalc.MoonPosition;
import understorey.plan.Position;

/**
 * Where the moon stands at an instant, and how far it is lit.
 *
 * @param azimuthDeg    bearing from true north, clockwise, 0 to 360
 * @param altitudeDeg   at which its centre is seen, lifted by the air; negative below the horizon
 * @param phaseAngleDeg between sun and earth as the moon sees them: 0 full, 180 new
 * @param distanceKm    between the centres of earth and moon
 */
public record MoonAt(ZonedDateTime time, double azimuthDeg, double altitudeDeg, double phaseAngleDeg, double distanceKm) {

    private static final double EARTH_RADIUS_KM = 6378.14;

    /** The moon seen from a place; right to about 0.1° in position and 1° in phase. */
    public static MoonAt of(Position place, ZonedDateTime time) {
        MoonPosition moon = MoonPosition.compute().on(time).at(place.latitude(), place.longitude()).execute();
        double phase = MoonIllumination.compute().on(time).execute().getPhase();
        return new MoonAt(time, moon.getAzimuth(), seenDeg(moon), Math.abs(phase), moon.getDistance());
    }

    /** The library sees from the centre of the earth; from its surface the moon stands lower, by up to its parallax. */
    private static double seenDeg(MoonPosition moon) {
        double altitude = Math.toRadians(moon.getAltitude());
        return moon.getAltitude() - parallaxDeg(moon.getDistance()) * Math.cos(altitude);
    }

    private static double parallaxDeg(double distanceKm) {
        return Math.toDegrees(Math.asin(EARTH_RADIUS_KM / distanceKm));
    }

    /** Angle at which the moon sees the radius of the earth, about 0.95°: Meeus, 2nd ed., ch. 47. */
    public double parallaxDeg() {
        return parallaxDeg(distanceKm);
    }
}
