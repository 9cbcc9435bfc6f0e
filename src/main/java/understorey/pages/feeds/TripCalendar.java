package understorey.pages.feeds;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Figures;
import understorey.pages.words.LegWords;
import understorey.pages.words.Words;
import understorey.plan.Contact;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;

/**
 * {@code trip.ics}: the visit and each picture that has a time, as events of an iCalendar (RFC 5545). Times are
 * UTC, so that no description of a time zone is needed; those in the text are local. Place and position are there
 * only when the audience may have them exactly.
 */
public final class TripCalendar {

    private static final DateTimeFormatter UTC = DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT);

    private final Brief brief;
    private final Trip trip;
    private final Site site;
    private final ClockWords clock;
    private final CalendarLines lines = new CalendarLines();

    private TripCalendar(Brief brief) {
        this.brief = brief;
        this.clock = new ClockWords(brief.trip().display().clock());
        this.trip = brief.trip();
        this.site = trip.site();
    }

    public static String of(Brief brief) {
        return new TripCalendar(brief).calendar();
    }

    private String calendar() {
        lines.line("BEGIN", "VCALENDAR").line("VERSION", "2.0").line("PRODID", "-//Understorey//EN");
        RunningOrder order = brief.order();
        begin("visit", order.arrive(), order.leave());
        lines.text("SUMMARY", trip.title());
        place(site.name(), site.position());
        lines.text("DESCRIPTION", String.join("\n", visit()));
        lines.line("END", "VEVENT");
        for (TimedShot shot : brief.timed()) {
            Interval time = shot.time();
            if (time != null) {
                picture(shot, time);
            }
        }
        return lines.line("END", "VCALENDAR").toString();
    }

    private void picture(TimedShot shot, Interval time) {
        String spot = shot.intent().shot().spot();
        begin("picture-" + shot.number(), time.from(), time.to());
        lines.text("SUMMARY", shot.number() + " " + shot.intent().shot().name());
        place(spot == null ? site.name() : spot + ", " + site.name(), site.positionOf(site.spot(spot)));
        lines.text("DESCRIPTION", settings(shot));
        lines.line("END", "VEVENT");
    }

    /** The stamp is the day of the plan, not of the build: the same plan makes the same bytes. */
    private void begin(String what, ZonedDateTime from, ZonedDateTime to) {
        lines.line("BEGIN", "VEVENT")
                .text("UID", trip.slug() + "-" + brief.date() + "-" + what + "@understorey")
                .line("DTSTAMP", UTC.format(brief.date().atStartOfDay(ZoneOffset.UTC)))
                .line("DTSTART", utc(from));
        if (to.isAfter(from)) {
            lines.line("DTEND", utc(to));
        }
    }

    private void place(String name, Position position) {
        if (trip.precision() == Share.Precision.EXACT) {
            lines.text("LOCATION", name).line("GEO", Figures.positionDeg(position.latitude()).toPlainString() + ";"
                    + Figures.positionDeg(position.longitude()).toPlainString());
        }
    }

    private List<String> visit() {
        List<String> text = new ArrayList<>();
        text.add(site.name() + "; times are local, " + site.zone().getId() + ".");
        for (Leg leg : brief.order().legs()) {
            text.add(clock.of(leg.from()) + " to " + clock.of(leg.to()) + " " + LegWords.of(leg, brief));
        }
        text.add("Leave the last spot by " + clock.of(brief.order().leaveLastSpotBy()) + ".");
        Contact contact = trip.contact();
        if (contact != null && trip.audience() != Share.Audience.PUBLIC) {
            text.add("Check in" + (contact.tell() == null ? "" : " with your contact (" + contact.tell() + ")")
                    + (contact.backBy() == null ? "." : " by " + clock.on(brief.day().hours().checkInDue(contact), brief.date()) + "."));
        }
        return text;
    }

    private static @Nullable String settings(TimedShot shot) {
        LensFit fit = shot.fit().best();
        if (fit == null) {
            return null;
        }
        Settings settings = shot.settings();
        if (settings == null) {
            return null;
        }
        return fit.camera().lens().name() + " on " + fit.camera().body().name() + " at "
                + Words.millimetres(fit.focalMm()) + "; " + Words.fNumber(settings.fNumber()) + ", "
                + Words.shutter(settings.shutterS()) + ", ISO " + settings.iso();
    }

    private static String utc(ZonedDateTime time) {
        return UTC.format(Figures.second(time).withZoneSameInstant(ZoneOffset.UTC));
    }
}
