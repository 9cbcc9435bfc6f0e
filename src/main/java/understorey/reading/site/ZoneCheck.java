package understorey.reading.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;
import understorey.plan.Stay;
import understorey.plan.When;
import understorey.yaml.Fields;
import understorey.yaml.value.Numeral;

/** Checks that a time zone matches a place, and that a clock time exists on a day. */
public final class ZoneCheck {

    /**
     * Hours between a zone's standard time and the mean time of its longitude: 3.2 h where one zone spans
     * a continent (the west of Asia/Shanghai, 73.5° E, its longitude from memory); more is a slip.
     */
    private static final double MOST_HOURS = 4;

    /** Hours by which the other way round must match the zone better: a rule of thumb. No wood of a zone's far end comes near it. */
    private static final double CLEARLY_HOURS = 1.5;
    /** No wood grows nearer to a pole. */
    private static final double LAST_WOOD_DEG = 73;

    /** Standard offsets hardly ever change, so any recent day is good enough. */
    private static final Instant SOME_DAY = Instant.parse("2025-01-01T00:00:00Z");

    private ZoneCheck() {
    }

    /** Warns of a zone whose standard time cannot be that of a place, or would be with latitude and longitude swapped. */
    static void position(Fields site, Position at, ZoneId zone) {
        double longitude = at.longitude();
        double hours = hoursOff(longitude, zone);
        if (Math.abs(longitude) <= LAST_WOOD_DEG && hours - hoursOff(at.latitude(), zone) >= CLEARLY_HOURS) {
            site.findings().warning(site.at("latitude"), "latitude and longitude seem to be swapped: the other way round they match time zone "
                    + zone.getId(), "swap them, or check the time zone");
        } else if (hours > MOST_HOURS) {
            site.findings().warning(site.at("time_zone"), "time zone " + zone.getId()
                    + " does not match longitude " + Numeral.show(longitude), "check the time zone, and the sign of the longitude");
        }
    }

    private static double hoursOff(double longitude, ZoneId zone) {
        double hours = zone.getRules().getStandardOffset(SOME_DAY).getTotalSeconds() / 3600.0 - longitude / 15;
        // 24 hours apart is the same time of day.
        return Math.abs(Math.IEEEremainder(hours, 24));
    }

    /** Refuses a trip on a day that the site's calendar left out. */
    public static void date(Fields trip, @Nullable When when, SiteRead site) {
        if (site.site() == null || when == null) {
            return;
        }
        for (LocalDate date : when.days()) {
            if (!site.site().has(date)) {
                trip.refuse(trip.has("date") ? "date" : "dates", "there is no " + date + " in " + site.site().zone().getId()
                        + ": the calendar there left it out", "choose the day before or after");
                return;
            }
        }
    }

    /** Refuses a clock time of a visit that the change to summer time skips on its day; null is ignored. */
    public static void clock(Fields f, String key, @Nullable LocalTime time, @Nullable When when, Stay stay, SiteRead site) {
        if (time == null || site.site() == null || !(when instanceof When.On on)) {
            return;
        }
        LocalDateTime at = stay.at(on.date(), time);
        ZoneOffsetTransition change = site.site().zone().getRules().getTransition(at);
        if (change != null && change.isGap()) {
            f.refuse(key, "there is no " + time + " on " + at.toLocalDate() + ": the clocks go forward from "
                    + change.getDateTimeBefore().toLocalTime() + " to " + change.getDateTimeAfter().toLocalTime(),
                    "write " + change.getDateTimeAfter().toLocalTime() + " or later");
        }
    }
}
