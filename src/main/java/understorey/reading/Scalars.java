package understorey.reading;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;

/**
 * Single values of a file. Each method takes a node (null for one that is absent) and its name in
 * sentences, such as {@code 'latitude'}; it answers null after a finding.
 */
final class Scalars {

    private final Findings findings;

    Scalars(Findings findings) {
        this.findings = findings;
    }

    String text(Node node, String name) {
        return written(node, name, "a text");
    }

    /** A name that stands for what could also be described in place. */
    String pointer(Node node, String name) {
        return written(node, name, "a name or a block of keys");
    }

    Double number(Node node, String name, double least, double most) {
        String text = written(node, name, "a number");
        if (text == null) {
            return null;
        }
        Double number = Numeral.of(text.strip());
        if (number == null) {
            String pointed = Numeral.withPoint(text.strip());
            return pointed != null ? refuse(node, name + " has a decimal comma", "write " + pointed)
                    : refuse(node, name + " must be a number, not the text " + Node.quote(text), null);
        }
        if (number < least || number > most) {
            return refuse(node, name + " must be from " + Numeral.show(least) + " to " + Numeral.show(most)
                    + ", not " + Numeral.show(number), null);
        }
        return number;
    }

    Integer whole(Node node, String name, int least, int most) {
        Double number = number(node, name, least, most);
        if (number != null && number != Math.rint(number)) {
            return refuse(node, name + " must be a whole number, not " + Numeral.show(number), null);
        }
        return number == null ? null : Integer.valueOf(number.intValue());
    }

    /** In the unit that the dimension is held in, as the limits are. */
    Double quantity(Node node, String name, Dimension dimension, double least, double most) {
        String text = written(node, name, dimension.described());
        if (text == null) {
            return null;
        }
        Double value = accept(node, name, Quantity.read(text, dimension));
        if (value != null && (value < least || value > most)) {
            return refuse(node, name + " must be from " + dimension.show(least) + " to " + dimension.show(most)
                    + ", not " + dimension.show(value), null);
        }
        return value;
    }

    /** Degrees, with or without their sign. */
    Double angle(Node node, String name, double least, double most) {
        String text = written(node, name, "an angle in degrees");
        if (text == null) {
            return null;
        }
        Double degrees = Bearing.degrees(text.strip());
        if (degrees == null) {
            return refuse(node, name + " must be an angle in degrees, not the text " + Node.quote(text), "such as 8");
        }
        if (degrees < least || degrees > most) {
            return refuse(node, name + " must be from " + Numeral.show(least) + " to " + Numeral.show(most)
                    + " degrees, not " + Numeral.show(degrees), null);
        }
        return degrees;
    }

    Double bearing(Node node, String name) {
        String text = written(node, name, "a bearing");
        return text == null ? null : accept(node, name, Bearing.read(text));
    }

    Span focal(Node node, String name) {
        String text = written(node, name, "a focal length");
        return text == null ? null : accept(node, name, Span.focal(text), 0.5, 3000, " mm");
    }

    Span aperture(Node node, String name) {
        String text = written(node, name, "an aperture");
        return text == null ? null : accept(node, name, Span.aperture(text), 0.5, 128, "");
    }

    <E extends Enum<E>> E word(Node node, String name, E[] constants) {
        String text = written(node, name, "a word");
        if (text == null) {
            return null;
        }
        E found = Words.find(constants, text.strip());
        return found != null ? found : refuse(node, name + " cannot be " + Node.quote(text),
                Suggestion.among(Words.of(constants), text.strip(), "one of"));
    }

    Boolean yesNo(Node node, String name) {
        String text = written(node, name, "yes or no");
        if (text == null) {
            return null;
        }
        boolean yes = text.equalsIgnoreCase("yes") || text.equalsIgnoreCase("true");
        boolean no = text.equalsIgnoreCase("no") || text.equalsIgnoreCase("false");
        return yes || no ? Boolean.valueOf(yes)
                : refuse(node, name + " must be yes or no, not the text " + Node.quote(text), null);
    }

    /** A clock time, {@code HH:MM}. */
    LocalTime clock(Node node, String name) {
        String text = written(node, name, "a clock time");
        if (text == null) {
            return null;
        }
        String t = text.strip();
        int hour = t.length() == 5 && t.charAt(2) == ':' ? digits(t, 0, 2) : -1;
        int minute = hour < 0 ? -1 : digits(t, 3, 5);
        if (hour < 0 || minute < 0 || hour > 23 || minute > 59) {
            boolean short4 = t.length() == 4 && t.charAt(1) == ':' && digits(t, 0, 1) >= 0 && digits(t, 2, 4) >= 0;
            return refuse(node, name + " must be a clock time from 00:00 to 23:59, not the text " + Node.quote(text),
                    short4 ? "write 0" + t : null);
        }
        return LocalTime.of(hour, minute);
    }

    /** A date in full, {@code YYYY-MM-DD}, in the years 1900 to 2100. */
    LocalDate date(Node node, String name) {
        String text = written(node, name, "a date");
        if (text == null) {
            return null;
        }
        String t = text.strip();
        boolean shaped = t.length() == 10 && t.charAt(4) == '-' && t.charAt(7) == '-';
        int year = shaped ? digits(t, 0, 4) : -1;
        int month = shaped ? digits(t, 5, 7) : -1;
        int day = shaped ? digits(t, 8, 10) : -1;
        if (year < 0 || month < 0 || day < 0) {
            return refuse(node, name + " must be a date, not the text " + Node.quote(text),
                    "year, month and day, such as 2027-05-08");
        }
        if (year < 1900 || year > 2100) {
            return refuse(node, name + " must be in the years 1900 to 2100, not " + year, null);
        }
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException e) {
            return refuse(node, name + " is a day that no calendar has: " + t, null);
        }
    }

    private String written(Node node, String name, String wanted) {
        if (node == null) {
            return null;
        }
        if (node instanceof Node.Scalar scalar && !scalar.empty()) {
            return scalar.text();
        }
        return refuse(node, name + " must be " + wanted + ", not " + node.described(), null);
    }

    private Double accept(Node node, String name, Quantity read) {
        return read.value() != null ? read.value() : refuse(node, name + " " + read.fault(), read.help());
    }

    private Span accept(Node node, String name, Span read, double least, double most, String unit) {
        if (read.fault() != null) {
            return refuse(node, name + " " + read.fault(), read.help());
        }
        if (read.from() < least || read.to() > most) {
            return refuse(node, name + " must be from " + Numeral.show(least) + unit + " to " + Numeral.show(most)
                    + unit, null);
        }
        return read;
    }

    private <T> T refuse(Node node, String text, String help) {
        findings.error(node.pos(), text, help);
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
