package understorey.reading.trip;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import understorey.plan.DayWishes;
import understorey.plan.When;
import understorey.yaml.Fields;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;
import understorey.yaml.value.Moment;
import understorey.yaml.value.Quantity;

/** Reads the date of a trip, or the dates to choose from with the wishes about them. */
final class DaysReader {

    /** Days are ranked one by one; more than a year of them is a mistake. */
    private static final int MOST_DAYS = 366;
    /** Largest difference from a usual spring, °C; a rule of thumb. */
    private static final double MOST_WARMTH_C = 6;
    private static final List<String> WEEKDAYS = List.of("mon", "tue", "wed", "thu", "fri", "sat", "sun");

    private DaysReader() {
    }

    /** Date or dates of a trip; null, with a finding, if it has neither. */
    static @Nullable When when(Fields trip) {
        LocalDate date = trip.date("date");
        Node dates = trip.take("dates");
        if (trip.has("date") && trip.has("dates")) {
            trip.findings().error(trip.atKey("dates"), "give 'date' or 'dates', not both", "delete one of them");
        } else if (!trip.has("date") && !trip.has("dates")) {
            trip.require("date");
        }
        if (dates == null) {
            return date == null ? null : new When.On(date);
        }
        boolean one = dates instanceof Node.Scalar day && Moment.date(day.text(), "'dates'", (fault, help) -> { }) != null;
        if (one || dates instanceof Node.Seq) {
            return oneOf(trip, dates.pos());
        }
        if (dates instanceof Node.Scalar) {
            trip.refuse("dates", "'dates' must be a list of dates, or 'from' and 'to', not " + dates.described(),
                    "for example {from: 2027-04-26, to: 2027-05-20}");
            return null;
        }
        Fields days = trip.block(dates, "'dates'", "'dates'");
        return days == null ? null : between(days);
    }

    private static @Nullable When between(Fields days) {
        days.require("from", "to");
        LocalDate from = days.date("from");
        LocalDate to = days.date("to");
        days.done();
        if (from == null || to == null) {
            return null;
        }
        if (to.isBefore(from)) {
            days.refuse("to", "'to' is before 'from'", "swap them");
            return null;
        }
        if (to.toEpochDay() - from.toEpochDay() >= MOST_DAYS) {
            days.refuse("to", "these dates span more than a year", "choose dates within one year");
        }
        return new When.Between(from, to);
    }

    private static @Nullable When oneOf(Fields trip, Pos pos) {
        TreeSet<LocalDate> days = new TreeSet<>();
        for (Node item : trip.items("dates")) {
            LocalDate day = trip.scalars().date(item, "each entry of 'dates'");
            if (day != null && !days.add(day)) {
                trip.findings().warning(item.pos(), day + " is listed twice", "delete one of them");
            }
        }
        if (days.isEmpty()) {
            trip.findings().error(pos, "'dates' is empty", "give a list of dates, or 'from' and 'to'");
            return null;
        }
        if (days.last().toEpochDay() - days.first().toEpochDay() >= MOST_DAYS) {
            trip.findings().error(pos, "these dates span more than a year", "choose dates within one year");
        }
        return new When.OneOf(List.copyOf(days));
    }

    static DayWishes wishes(Fields trip) {
        return new DayWishes(weekdays(trip), avoid(trip), spring(trip));
    }

    private static List<DayOfWeek> weekdays(Fields trip) {
        TreeSet<DayOfWeek> weekdays = new TreeSet<>();
        for (Node item : trip.items("weekdays")) {
            String text = trip.scalars().text(item, "each entry of 'weekdays'");
            String word = text == null ? "" : text.strip().toLowerCase(Locale.ROOT);
            DayOfWeek found = null;
            for (DayOfWeek day : DayOfWeek.values()) {
                String name = day.name().toLowerCase(Locale.ROOT);
                found = word.equals(name) || word.equals(name.substring(0, 3)) ? day : found;
            }
            if (found != null) {
                weekdays.add(found);
            } else if (text != null) {
                trip.findings().error(item.pos(), Node.quote(text) + " is not a weekday",
                        Suggestion.amongWords(WEEKDAYS, word, "use one of"));
            }
        }
        return List.copyOf(weekdays);
    }

    private static List<DayWishes.Stretch> avoid(Fields trip) {
        List<DayWishes.Stretch> avoid = new ArrayList<>();
        for (Node item : trip.items("avoid")) {
            if (item instanceof Node.Mapping block) {
                Fields days = new Fields(block, "this entry of 'avoid'", trip.findings()).require("from", "to");
                LocalDate from = days.date("from");
                LocalDate to = days.date("to");
                days.done();
                if (from != null && to != null && to.isBefore(from)) {
                    days.refuse("to", "'to' is before 'from'", "swap them");
                } else if (from != null && to != null) {
                    avoid.add(new DayWishes.Stretch(from, to));
                }
            } else {
                LocalDate day = trip.scalars().date(item, "each entry of 'avoid'");
                if (day != null) {
                    avoid.add(new DayWishes.Stretch(day, day));
                }
            }
        }
        return List.copyOf(avoid);
    }

    /** {@code warmer by 1.5 °C}, {@code cooler by 2 °F}, as a difference in °C. */
    private static @Nullable Double spring(Fields trip) {
        String text = trip.text("spring");
        if (text == null) {
            return null;
        }
        String[] words = text.strip().split("\\s+", 3);
        int sign = words.length < 3 || !words[1].equalsIgnoreCase("by") ? 0 : switch (words[0].toLowerCase(Locale.ROOT)) {
            case "warmer" -> 1;
            case "cooler", "colder" -> -1;
            default -> 0;
        };
        if (sign == 0) {
            trip.refuse("spring", "'spring' must be 'warmer by' or 'cooler by' and a temperature, not "
                    + Node.quote(text), "for example spring: warmer by 1.5 °C");
            return null;
        }
        Quantity read = Quantity.read(words[2], Dimension.TEMPERATURE);
        if (read.value() == null) {
            trip.refuse("spring", "'spring' " + read.fault(), read.help());
            return null;
        }
        boolean fahrenheit = words[2].endsWith("F");
        double difference = fahrenheit ? read.value() + 32 * 5.0 / 9 : read.value();
        if (difference < 0 || difference > MOST_WARMTH_C) {
            trip.refuse("spring", "'spring' must be 0 to 6 °C warmer or cooler", "for a cold spring, write cooler by 1.5 °C");
            return null;
        }
        return sign * difference;
    }
}
