package understorey.yaml.value;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Month;
import java.time.YearMonth;
import java.time.format.TextStyle;
import java.util.Locale;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import understorey.yaml.tree.Node;

/** Reads clock times and dates; a fault is passed on as its text and its fix. */
public final class Moment {

    private Moment() {
    }

    /** {@code HH:MM}; null after a fault. */
    public static @Nullable LocalTime clock(String text, String name, BiConsumer<String, String> refuse) {
        String t = text.strip();
        int hour = t.length() == 5 && t.charAt(2) == ':' ? digits(t, 0, 2) : -1;
        int minute = hour < 0 ? -1 : digits(t, 3, 5);
        if (hour < 0 || minute < 0 || hour > 23 || minute > 59) {
            boolean short4 = t.length() == 4 && t.charAt(1) == ':' && digits(t, 0, 1) >= 0 && digits(t, 2, 4) >= 0;
            refuse.accept(name + " must be a clock time from 00:00 to 23:59, not the text " + Node.quote(text),
                    short4 ? "write 0" + t : "hours and minutes, for example 05:30");
            return null;
        }
        return LocalTime.of(hour, minute);
    }

    /** {@code YYYY-MM-DD}; null after a fault. */
    public static @Nullable LocalDate date(String text, String name, BiConsumer<String, String> refuse) {
        String t = text.strip();
        boolean shaped = t.length() == 10 && t.charAt(4) == '-' && t.charAt(7) == '-';
        int year = shaped ? digits(t, 0, 4) : -1;
        int month = shaped ? digits(t, 5, 7) : -1;
        int day = shaped ? digits(t, 8, 10) : -1;
        if (year < 0 || month < 0 || day < 0) {
            refuse.accept(name + " must be a date, not the text " + Node.quote(text),
                    "year, month and day, for example 2027-05-08");
        } else if (year < 1900 || year > 2100) {
            refuse.accept(name + " must be in the years 1900 to 2100, not " + year, "check the year");
        } else if (month < 1 || month > 12) {
            refuse.accept("there is no day " + t, "the month comes second, from 01 to 12");
        } else if (!YearMonth.of(year, month).isValidDay(day)) {
            refuse.accept("there is no day " + t,
                    Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + year + " has "
                            + YearMonth.of(year, month).lengthOfMonth() + " days");
        } else {
            return LocalDate.of(year, month, day);
        }
        return null;
    }

    private static int digits(String text, int from, int to) {
        int value = 0;
        for (int i = from; i < to; i++) {
            char c = text.charAt(i);
            if (c < '0' || c > '9') {
                return -1;
            }
            value = value * 10 + c - '0';
        }
        return value;
    }
}
