package understorey.pages.html;

import static understorey.pages.words.Words.orDash;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.light.LightAt;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;

/**
 * Sun, moon and light in words.
 *
 * @param riseAndSet sunrise and sunset in one line
 * @param weather by the hour of the visit; empty without a forecast
 * @param drops   of rain and dew on the flowers
 * @param table  every quarter of an hour of the visit
 */
public record LightView(List<Row> sun, List<Row> moon, String riseAndSet, List<WeatherView.Line> weather,
                        List<String> drops, List<Line> table) {

    /** One row of the table. */
    public record Line(String time, String bearing, String altitude, String shadow, String overLand,
                       String openSun, String openShade, String fleck, String fleckShare, String shade,
                       String broken, String overcast, String kelvin) {
    }

    /** Less than any eye walks by: a metering guide ends at −6, a quarter moon. */
    private static final double LEAST_MOON_EV = -8;

    /**
     * The light of a day.
     *
     * @param sunlit when the sun is above the skyline, by place
     */
    static LightView of(Brief brief, Row sunlit, Sentences sentences) {
        return new LightView(sun(brief.day().sun(), sunlit), moon(brief), pair(brief.day().sun().sunrise(), brief.day().sun().sunset()),
                WeatherView.lines(brief), sentences.of(brief.day().drops().reasons()), table(brief));
    }

    private static List<Row> sun(SunDay sun, Row sunlit) {
        List<Row> rows = new ArrayList<>();
        if (sun.upAllDay()) {
            rows.add(new Row("Sun", "does not set on this day"));
        } else if (sun.downAllDay()) {
            rows.add(new Row("Sun", "does not rise on this day"));
        }
        rows.add(new Row("Astronomical dawn, dusk", pair(sun.astronomicalDawn(), sun.astronomicalDusk())));
        rows.add(new Row("Nautical dawn, dusk", pair(sun.nauticalDawn(), sun.nauticalDusk())));
        rows.add(new Row("Civil dawn, dusk", pair(sun.civilDawn(), sun.civilDusk())));
        rows.add(new Row("Deep twilight (blue hour), morning", orDash(sun.deepTwilightMorning(), Dates::span)));
        rows.add(new Row("Low sun (golden hour), morning", orDash(sun.lowSunMorning(), Dates::span)));
        rows.add(new Row("Sunrise, sunset (level horizon)", pair(sun.sunrise(), sun.sunset())));
        rows.add(sunlit);
        rows.add(new Row("Solar noon", Dates.clock(sun.solarNoon()) + ", sun at "
                + Words.degrees(sun.noonAltitudeDeg())));
        rows.add(new Row("Low sun (golden hour), evening", orDash(sun.lowSunEvening(), Dates::span)));
        rows.add(new Row("Deep twilight (blue hour), evening", orDash(sun.deepTwilightEvening(), Dates::span)));
        return rows;
    }

    private static List<Row> moon(Brief brief) {
        MoonDay moon = brief.day().moon();
        String waxes = moon.phaseDeg() < 180 ? "waxing" : "waning";
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("Moonrise, moonset", moon.upAllDay() ? "up all day" : moon.downAllDay() ? "down all day"
                : pair(moon.rise(), moon.set())));
        rows.add(new Row("Moon", Words.percent(moon.illuminatedFraction()) + " lit, " + waxes));
        rows.add(new Row("Moonlight", moonlight(brief.day().light())));
        return rows;
    }

    /** The brightest moonlit hour of a night under a clear sky. */
    private static String moonlight(List<LightAt> day) {
        LightAt best = null;
        double most = LEAST_MOON_EV;
        for (LightAt row : day) {
            Double ev = row.moonEv();
            if (ev != null && (best == null ? ev >= most : ev > most)) {
                best = row;
                most = ev;
            }
        }
        return best == null ? "too weak to matter" : "EV " + Words.ev(most) + " on open ground and " + Words.ev(best.moonFloorEv())
                + " on the forest floor, brightest at " + Dates.clock(best.sun().time());
    }

    private static String pair(@Nullable ZonedDateTime morning, @Nullable ZonedDateTime evening) {
        return Dates.clock(morning) + ", " + Dates.clock(evening);
    }

    /** From the quarter of an hour before arriving to the one after leaving. */
    private static List<Line> table(Brief brief) {
        ZonedDateTime from = brief.order().arrive().minusMinutes(14);
        ZonedDateTime to = brief.order().leave().plusMinutes(14);
        return brief.day().light().stream().filter(row -> !row.time().isBefore(from) && !row.time().isAfter(to)).map(LightView::line).toList();
    }

    private static Line line(LightAt row) {
        boolean up = row.sun().apparentAltitudeDeg() > 0;
        return new Line(Dates.clock(row.time()),
                Words.bearing(row.sun().azimuthDeg()) + " " + Words.compass(row.sun().azimuthDeg()),
                Words.degrees(row.sun().altitudeDeg()),
                row.shadowPerHeight() == null || row.shadowPerHeight() > 99 ? Words.NONE
                        : Words.tenths(row.shadowPerHeight()),
                row.aboveSkyline() ? "above" : up ? "behind" : "set",
                Words.ev(row.open().sun()), Words.ev(row.open().shade()), Words.ev(row.floor().fleck()),
                row.aboveSkyline() ? Words.percent(row.fleckShare()) : Words.NONE, Words.ev(row.floor().shade()),
                Words.ev(row.floor().broken()), Words.ev(row.floor().overcast()),
                row.sun().altitudeDeg() > -6 ? String.valueOf(row.colourTemperatureK()) : Words.NONE);
    }
}
