package understorey;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import understorey.plan.Position;

/** Places and days on which the sun behaves in each of the ways that a plan may meet; positions are round figures. */
public record Places(Position position, ZoneId zone, LocalDate date) {

    public static final Places MID_LATITUDE = at(52, -3.5, "Europe/London", "2027-05-08");
    public static final Places TROPICS = at(0, 37, "Africa/Nairobi", "2027-03-21");
    public static final Places POLAR_DAY = at(70, 26, "Europe/Oslo", "2027-06-20");
    public static final Places POLAR_NIGHT = at(70, 26, "Europe/Oslo", "2027-12-20");
    public static final Places SOUTHERN = at(-34.5, 116, "Australia/Perth", "2027-09-15");
    public static final Places NEAR_THE_DATE_LINE = at(-16.5, 179.9, "Pacific/Fiji", "2027-04-10");
    /** The clock jumps from 02:00 to 03:00. */
    public static final Places SHORT_DAY = at(55.5, 11, "Europe/Copenhagen", "2027-03-28");
    /** The clock falls back from 03:00 to 02:00. */
    public static final Places LONG_DAY = at(55.5, 11, "Europe/Copenhagen", "2027-10-31");
    /** The clock jumps from 00:00 to 01:00: the date has no midnight. */
    public static final Places NO_MIDNIGHT = at(-23.5, -46.5, "America/Sao_Paulo", "2018-11-04");

    public static final List<Places> ALL = List.of(MID_LATITUDE, TROPICS, POLAR_DAY, POLAR_NIGHT, SOUTHERN,
            NEAR_THE_DATE_LINE, SHORT_DAY, LONG_DAY, NO_MIDNIGHT);

    private static Places at(double latitude, double longitude, String zone, String date) {
        return new Places(new Position(latitude, longitude), ZoneId.of(zone), LocalDate.parse(date));
    }
}
