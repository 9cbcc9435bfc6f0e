package understorey.sky;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;

/**
 * Events of the sun at a place on a local date, or from one noon to the next. An event is the first of its kind within that
 * day, {@code null} if it has none: an event of the evening before or of the night after never replaces it. Rise and set assume a flat sea-level horizon and keep within a minute of published tables
 * between 60° S and 60° N.
 *
 * <p>Low sun and deep twilight are spans between two altitudes of the centre, without refraction (common
 * practice, no source). A span belongs to the date on which its daylight end falls; where the sun does not reach
 * the upper altitude it runs to (or from) the day's peak, where it does not sink to the lower one from (or to)
 * the night's low, which may lie on the date beside. Within a degree of the poles, where the sun circles at one
 * height, spans may be missing and events some minutes off.
 *
 * @param sunrise              centre 50′ below the horizon, rising
 * @param sunset               centre 50′ below the horizon, sinking
 * @param solarNoon            upper transit; null only if the zone is so far from its meridian that none falls on the date
 * @param noonAltitudeDeg      true altitude of the centre at the transit nearest the middle of the date; negative in polar night
 * @param civilDawn            centre at −6°
 * @param civilDusk            centre at −6°
 * @param nauticalDawn         centre at −12°
 * @param nauticalDusk         centre at −12°
 * @param astronomicalDawn     centre at −18°
 * @param astronomicalDusk     centre at −18°
 * @param lowSunMorning        centre from −4° to +6°
 * @param lowSunEvening        centre from +6° to −4°
 * @param deepTwilightMorning  centre from −6° to −4°
 * @param deepTwilightEvening  centre from −4° to −6°
 * @param upAllDay             neither rise nor set, and the sun up
 * @param downAllDay           neither rise nor set, and the sun down
 */
public record SunDay(@Nullable ZonedDateTime sunrise, @Nullable ZonedDateTime sunset, @Nullable ZonedDateTime solarNoon, double noonAltitudeDeg,
        @Nullable ZonedDateTime civilDawn, @Nullable ZonedDateTime civilDusk, @Nullable ZonedDateTime nauticalDawn, @Nullable ZonedDateTime nauticalDusk,
        @Nullable ZonedDateTime astronomicalDawn, @Nullable ZonedDateTime astronomicalDusk,
        @Nullable Interval lowSunMorning, @Nullable Interval lowSunEvening, @Nullable Interval deepTwilightMorning, @Nullable Interval deepTwilightEvening,
        boolean upAllDay, boolean downAllDay) {

    /** Centre of the sun when its upper edge touches a flat horizon: 34′ of refraction and 16′ of radius. */
    public static final double RISE_DEG = -50.0 / 60;
    /** Centre of the sun at the ends of civil twilight. */
    public static final double CIVIL_DEG = -6;
    private static final double NAUTICAL_DEG = -12;
    private static final double ASTRONOMICAL_DEG = -18;
    private static final double LOW_SUN_TOP_DEG = 6;
    private static final double LOW_SUN_FOOT_DEG = -4;
    private static final boolean UP = true;
    private static final boolean DOWN = false;

    /** The sun at a place over a day, which may begin at noon. Solar noon is that of the date on which it begins. */
    public static SunDay of(Position place, Interval day) {
        SunArc arc = new SunArc(place, day);
        LocalDate date = day.from().toLocalDate();
        SunAt noon = arc.transit(Interval.day(date, day.from().getZone()).middle());
        ZonedDateTime sunrise = arc.passes(RISE_DEG, UP);
        ZonedDateTime sunset = arc.passes(RISE_DEG, DOWN);
        return new SunDay(sunrise, sunset,
                noon.time().toLocalDate().equals(date) ? noon.time() : null, noon.altitudeDeg(),
                arc.passes(CIVIL_DEG, UP), arc.passes(CIVIL_DEG, DOWN),
                arc.passes(NAUTICAL_DEG, UP), arc.passes(NAUTICAL_DEG, DOWN),
                arc.passes(ASTRONOMICAL_DEG, UP), arc.passes(ASTRONOMICAL_DEG, DOWN),
                arc.passage(LOW_SUN_FOOT_DEG, LOW_SUN_TOP_DEG, UP), arc.passage(LOW_SUN_FOOT_DEG, LOW_SUN_TOP_DEG, DOWN),
                arc.passage(CIVIL_DEG, LOW_SUN_FOOT_DEG, UP), arc.passage(CIVIL_DEG, LOW_SUN_FOOT_DEG, DOWN),
                arc.keeps(true, RISE_DEG), arc.keeps(false, RISE_DEG));
    }
}
