package understorey.pages.html;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.advice.Measure;
import understorey.brief.Brief;
import understorey.light.LightAt;
import understorey.pages.tables.Facts;
import understorey.pages.tables.LightColumns;
import understorey.pages.tables.Row;
import understorey.pages.tables.Table;
import understorey.pages.tables.TableView;
import understorey.pages.words.Sentences;
import understorey.pages.words.Words;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * Sun, moon and light in words.
 *
 * @param weather by the hour of the visit; without lines without a forecast
 * @param drops   of rain and dew on the flowers
 * @param table   every quarter of an hour of the visit
 */
public record LightView(List<Row> sun, List<Row> moon, TableView weather, List<String> drops, TableView table) {

    private static final Duration SHORT_VISIT = Duration.ofHours(3);
    private static final int QUARTER_MIN = 15;
    /** Height of forecast winds, m: the standard of the World Meteorological Organization. */
    private static final double WIND_M = 10;

    private static final String CAPTION = "Light on level ground at the site, EV at ISO\u00a0100, during the visit. Shadow: length ÷ height. "
            + "Sunlit: share of the ground in sun. K: clear sky. The whole day is in plan.json.";

    /** Less than any eye walks by: a metering guide ends at −6, a quarter moon. */
    private static final double LEAST_MOON_EV = -8;

    /**
     * The light of a day.
     *
     * @param horizon what the sun must clear
     * @param sunlit  when it does, by place
     */
    static LightView of(Brief brief, String horizon, String sunlit, Sentences sentences) {
        SunDay sun = brief.day().sun();
        List<Row> moon = new ArrayList<>(new Facts<>(LightColumns.MOON, brief.day().moon()).rows(sentences));
        moon.add(new Row("Moonlight", moonlight(brief.day().light(), sentences)));
        List<Row> rows = new ArrayList<>();
        if (brief.trip().stay().passesMidnight()) {
            Interval day = brief.day().hours().day();
            rows.add(new Row("Hours", sentences.clock().of(day.from()) + " to " + sentences.clock().on(day.to(), brief.date()) + "; each event is the first in them"));
        }
        rows.addAll(new Facts<>(LightColumns.SUN, sun).rows(sentences));
        rows.add(new Row("Sun above " + horizon, sunlit));
        return new LightView(rows, moon,
                new Table<>(LightColumns.FORECAST, brief.weather())
                        .view("Forecast (interpolated between its hours); wind at " + sentences.of(WIND_M, Measure.WHOLE_METRES), sentences),
                sentences.of(brief.day().drops().reasons()),
                table(visit(brief), horizon.equals("the skyline") ? "skyline" : "horizon").view(CAPTION, sentences));
    }

    private static Table<LightAt> table(List<LightAt> rows, String horizon) {
        boolean moonlit = rows.stream().map(LightAt::moonEv).anyMatch(ev -> ev != null && ev >= LEAST_MOON_EV);
        return new Table<>(moonlit ? LightColumns.moonlit(horizon) : LightColumns.day(horizon), rows);
    }

    /** The brightest moonlit hour of a night under a clear sky. */
    private static String moonlight(List<LightAt> day, Sentences sentences) {
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
                + " on the forest floor, brightest at " + sentences.clock().of(best.sun().time());
    }

    /** Every half hour of the visit, every quarter of a short one. */
    private static List<LightAt> visit(Brief brief) {
        ZonedDateTime from = brief.order().arrive().minusMinutes(14);
        ZonedDateTime to = brief.order().leave().plusMinutes(14);
        int step = Duration.between(from, to).compareTo(SHORT_VISIT) <= 0 ? QUARTER_MIN : 2 * QUARTER_MIN;
        return brief.day().light().stream().filter(row -> !row.time().isBefore(from) && !row.time().isAfter(to))
                .filter(row -> row.time().getMinute() % step == 0).toList();
    }
}
