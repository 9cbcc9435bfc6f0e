package understorey.pages;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.brief.Brief;
import understorey.light.LightAt;
import understorey.sky.Interval;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;

/**
 * Sun, moon and light in words.
 *
 * @param riseAndSet sunrise and sunset in one line
 * @param sunlit stretches in which the sun clears the land, in one line; null when it does not
 * @param table  every quarter of an hour of the visit, every hour of the rest from dawn to dusk
 */
public record LightView(List<Row> sun, List<Row> moon, String riseAndSet, String sunlit, List<Line> table) {

    /** One row of the table; {@code visit} marks the quarter hours on site. */
    public record Line(String time, boolean visit, String bearing, String altitude, String shadow, String overLand,
                       String openSun, String openShade, String fleck, String fleckShare, String shade,
                       String broken, String overcast, String kelvin) {
    }

    static LightView of(Brief brief) {
        return new LightView(sun(brief.sun()), moon(brief.moon()),
                pair(brief.sun().sunrise(), brief.sun().sunset()), sunlit(brief.sunlit()), table(brief));
    }

    private static List<Row> sun(SunDay sun) {
        List<Row> rows = new ArrayList<>();
        if (sun.upAllDay()) {
            rows.add(new Row("Sun", "does not set on this day"));
        } else if (sun.downAllDay()) {
            rows.add(new Row("Sun", "does not rise on this day"));
        }
        rows.add(new Row("Astronomical dawn, dusk", pair(sun.astronomicalDawn(), sun.astronomicalDusk())));
        rows.add(new Row("Nautical dawn, dusk", pair(sun.nauticalDawn(), sun.nauticalDusk())));
        rows.add(new Row("Civil dawn, dusk", pair(sun.civilDawn(), sun.civilDusk())));
        rows.add(new Row("Deep twilight, morning", interval(sun.deepTwilightMorning())));
        rows.add(new Row("Low sun, morning", interval(sun.lowSunMorning())));
        rows.add(new Row("Sunrise, sunset", pair(sun.sunrise(), sun.sunset())));
        rows.add(new Row("Solar noon", Words.clock(sun.solarNoon()) + ", sun at "
                + Words.degrees(sun.noonAltitudeDeg())));
        rows.add(new Row("Low sun, evening", interval(sun.lowSunEvening())));
        rows.add(new Row("Deep twilight, evening", interval(sun.deepTwilightEvening())));
        return rows;
    }

    private static List<Row> moon(MoonDay moon) {
        String waxes = moon.phaseDeg() < 180 ? "waxing" : "waning";
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("Moonrise, moonset", moon.upAllDay() ? "up all day" : moon.downAllDay() ? "down all day"
                : pair(moon.rise(), moon.set())));
        rows.add(new Row("Moon", Words.percent(moon.illuminatedFraction()) + " lit, " + waxes));
        return rows;
    }

    private static String sunlit(List<Interval> sunlit) {
        List<String> stretches = sunlit.stream().map(LightView::interval).toList();
        if (stretches.size() == 1 && sunlit.get(0).length().toHours() >= 23) {
            return "all day";
        }
        return stretches.isEmpty() ? null : String.join(", ", stretches);
    }

    private static String interval(Interval interval) {
        return interval == null ? Words.NONE : Words.clock(interval.from()) + "–" + Words.clock(interval.to());
    }

    private static String pair(ZonedDateTime morning, ZonedDateTime evening) {
        return Words.clock(morning) + ", " + Words.clock(evening);
    }

    private static List<Line> table(Brief brief) {
        List<Line> lines = new ArrayList<>();
        ZonedDateTime from = brief.outing().arrive().minusMinutes(14);
        ZonedDateTime to = brief.outing().leave().plusMinutes(14);
        for (LightAt row : brief.light()) {
            ZonedDateTime time = row.sun().time();
            boolean visit = !time.isBefore(from) && !time.isAfter(to);
            if (visit || time.getMinute() == 0 && row.sun().altitudeDeg() > -6) {
                lines.add(line(row, visit));
            }
        }
        return lines;
    }

    private static Line line(LightAt row, boolean visit) {
        boolean up = row.sun().apparentAltitudeDeg() > 0;
        return new Line(Words.clock(row.sun().time()), visit,
                Words.bearing(row.sun().azimuthDeg()) + " " + Words.compass(row.sun().azimuthDeg()),
                Words.degrees(row.sun().altitudeDeg()),
                row.shadowPerHeight() == null || row.shadowPerHeight() > 99 ? Words.NONE
                        : Words.tenths(row.shadowPerHeight()),
                row.aboveSkyline() ? "clear" : up ? "hidden" : "down",
                Words.ev(row.open().sun()), Words.ev(row.open().shade()), Words.ev(row.floor().fleck()),
                row.aboveSkyline() ? Words.percent(row.fleckShare()) : Words.NONE, Words.ev(row.floor().shade()),
                Words.ev(row.floor().broken()), Words.ev(row.floor().overcast()),
                row.sun().altitudeDeg() > -6 ? String.valueOf(row.colourTemperatureK()) : Words.NONE);
    }
}
