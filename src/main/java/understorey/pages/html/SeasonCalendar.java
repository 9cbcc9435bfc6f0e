package understorey.pages.html;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import understorey.pages.words.Words;
import understorey.season.RankedDay;

/** Days on a sheet of weeks. */
final class SeasonCalendar {

    private static final String[] PLACES = {"best", "2nd", "3rd"};

    private SeasonCalendar() {
    }

    /** The weeks that hold any of the days; none without days. */
    static List<SeasonView.Week> weeks(List<RankedDay> days) {
        List<SeasonView.Week> weeks = new ArrayList<>();
        Map<LocalDate, RankedDay> byDate = new HashMap<>();
        for (RankedDay day : days) {
            byDate.put(day.date(), day);
        }
        LocalDate written = null;
        LocalDate monday = days.isEmpty() ? null
                : days.get(0).date().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        while (monday != null && !monday.isAfter(days.get(days.size() - 1).date())) {
            List<SeasonView.Cell> cells = new ArrayList<>();
            boolean any = false;
            for (int i = 0; i < 7; i++) {
                RankedDay day = byDate.get(monday.plusDays(i));
                boolean named = day != null && (written == null || written.getMonth() != day.date().getMonth());
                cells.add(day == null ? new SeasonView.Cell("", null, null, false, false) : cell(day, named));
                written = day == null ? written : day.date();
                any |= day != null;
            }
            if (any) {
                weeks.add(new SeasonView.Week(cells));
            }
            monday = monday.plusWeeks(1);
        }
        return weeks;
    }

    private static SeasonView.Cell cell(RankedDay day, boolean named) {
        String number = day.date().getDayOfMonth() + (named ? " " + Words.name(day.date().getMonth()).substring(0, 3) : "");
        boolean none = !day.wanted() || day.hopeless();
        String note = none && day.rank() > 1 ? null : day.hours() == null ? "closed"
                : day.rank() <= PLACES.length ? PLACES[day.rank() - 1] : null;
        return new SeasonView.Cell(day.wanted() ? number : "(" + number + ")", day.flower() == null ? null
                : Words.percentInCell(day.flower()), note, day.rank() == 1, !day.wanted());
    }
}
