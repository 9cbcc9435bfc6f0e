package understorey.pages.html;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.brief.Brief;
import understorey.pages.tables.Row;
import understorey.pages.words.ClockWords;
import understorey.pages.words.Words;
import understorey.visit.HeadTorchHours;
import understorey.visit.Safety;
import understorey.visit.WalkOut;

/** How to get back in time, in words. */
final class OutInTime {

    /** Longer before the last light no delay on the way matters: a rule of thumb, no source. */
    private static final long CLOSE_MINUTES = 120;

    private OutInTime() {
    }

    static List<Row> rows(Brief brief, ClockWords clock) {
        Safety safety = brief.safety();
        List<Row> rows = new ArrayList<>();
        boolean parking = brief.trip().site().parking() != null;
        rows.add(new Row(parking ? "Back" : "Last picture ends", clock.of(safety.back())));
        if (safety.daylightMargin() != null && safety.daylightMargin() < CLOSE_MINUTES) {
            long margin = safety.daylightMargin();
            rows.add(new Row("Last light", clock.of(safety.lastLight()) + ", " + (margin == 0 ? parking ? "as you get back" : "as the last picture ends"
                    : Words.minutes(Math.abs(margin)) + (margin < 0 ? " before " : " after ") + (parking ? "you are back" : "the last picture"))));
        }
        rows.add(new Row("Head torch", headTorch(brief.day().headTorch(), safety.back(), clock)));
        WalkOut out = safety.walkOut();
        if (out != null && out.minutes() > 0) {
            rows.add(new Row("Walk back", Words.minutes(out.minutes()) + " from " + Words.place(brief.trip().site(), out.spot())
                    + (out.longestMinutes() > out.minutes() ? ", " + Words.minutes(out.longestMinutes()) + " at the slowest published walking speed"
                    : "") + (out.dark() ? ", with a head torch" : "")));
        }
        if (safety.closing() != null) {
            Safety.Closing closing = safety.closing();
            Long after = closing.afterSunset();
            rows.add(new Row(closing.carPark() ? "Car park closes" : "Site closes", clock.of(closing.at())
                    + (after == null ? "" : ", " + Words.minutes(Math.abs(after)) + (after < 0 ? " before" : " after") + " sunset")));
        }
        return rows;
    }

    private static String headTorch(HeadTorchHours hours, ZonedDateTime back, ClockWords clock) {
        if (hours.allDay()) {
            return "needed for the whole visit";
        }
        if (hours.between() != null) {
            return "needed from " + clock.of(hours.from()) + " to " + clock.of(hours.until());
        }
        String in = hours.until() == null ? null : "needed until " + clock.of(hours.until()) + " (the first "
                + Words.minutes(hours.minutesIn()) + ")";
        String out = hours.from() == null ? null : hours.from().isAfter(back) ? "needed only if you are out after " + clock.of(hours.from())
                : "needed from " + clock.of(hours.from()) + " (the last " + Words.minutes(hours.minutesOut()) + ")";
        return in == null ? out == null ? "not needed" : out : out == null ? in : in + "; " + out;
    }
}
