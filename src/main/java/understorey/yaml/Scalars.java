package understorey.yaml;

import java.time.LocalDate;
import java.time.LocalTime;

/**
 * Reads single values. Each method takes a node, null if it is absent, and its name in sentences, for example
 * {@code 'latitude'}; it returns null after a finding.
 */
public final class Scalars {

    private static final int LONGEST_NAME = 200;

    private final Findings findings;

    public Scalars(Findings findings) {
        this.findings = findings;
    }

    /** A name, or a few words. */
    public String text(Node node, String name) {
        return text(node, name, LONGEST_NAME);
    }

    /** Text of at most so many characters. */
    public String text(Node node, String name, int longest) {
        String text = written(node, name, "text");
        return text == null || text.codePointCount(0, text.length()) <= longest ? text
                : refuse(node, name + " is longer than " + longest + " characters", "shorten it, and put the rest into notes");
    }

    /** Markdown of any sensible length. */
    public String prose(Node node, String name) {
        String text = written(node, name, "text");
        String fault = text == null ? null : ProseSize.fault(text);
        return fault == null ? text : refuse(node, name + " " + fault, "keep what the trip needs, and leave out the rest");
    }

    /** Name of something that could also be described in place. */
    public String pointer(Node node, String name) {
        return written(node, name, "a name or keys and values");
    }

    public Double number(Node node, String name, double least, double most) {
        return number(node, name, least, most, null);
    }

    /**
     * A number between two limits.
     *
     * @param help fix for a number outside the limits; null if there is none
     */
    public Double number(Node node, String name, double least, double most, String help) {
        String text = written(node, name, "a number");
        if (text == null) {
            return null;
        }
        Double number = Numeral.of(text.strip());
        if (number == null) {
            String pointed = Numeral.withPoint(text.strip());
            return pointed != null ? refuse(node, name + " has a decimal comma", "write " + pointed)
                    : refuse(node, name + " must be a number, not the text " + Node.quote(text), Numeral.help(text.strip()));
        }
        if (number < least || number > most) {
            return refuse(node, name + " must be from " + Numeral.show(least) + " to " + Numeral.show(most)
                    + ", not " + Node.clip(text), help);
        }
        return number;
    }

    public Integer whole(Node node, String name, int least, int most) {
        Double number = number(node, name, least, most);
        if (number != null && number != Math.rint(number)) {
            return refuse(node, name + " must be a whole number, not " + Numeral.show(number),
                    "write " + Numeral.show(Math.rint(number)));
        }
        return number == null ? null : Integer.valueOf(number.intValue());
    }

    /** A quantity in the base unit of its dimension; the limits have the same unit. */
    public Double quantity(Node node, String name, Dimension dimension, double least, double most) {
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

    /** Degrees, with or without the degree sign. */
    public Double angle(Node node, String name, double least, double most) {
        String text = written(node, name, "an angle in degrees");
        if (text == null) {
            return null;
        }
        Double degrees = Bearing.degrees(text.strip());
        if (degrees == null) {
            return refuse(node, name + " must be an angle in degrees, not the text " + Node.quote(text),
                    Numeral.withPoint(text) != null ? "write " + Numeral.withPoint(text.strip()) : "for example 8");
        }
        if (degrees < least || degrees > most) {
            return refuse(node, name + " must be from " + Numeral.show(least) + " to " + Numeral.show(most)
                    + " degrees, not " + Numeral.show(degrees), null);
        }
        return degrees;
    }

    public Double bearing(Node node, String name) {
        String text = written(node, name, "a bearing");
        return text == null ? null : accept(node, name, Bearing.read(text));
    }

    public Span focal(Node node, String name) {
        String text = written(node, name, "a focal length");
        return text == null ? null : accept(node, name, Span.focal(text), 0.5, 3000, "", " mm");
    }

    /**
     * One f-number or two.
     *
     * @param most the largest f-number allowed
     */
    public Span aperture(Node node, String name, double most) {
        String text = written(node, name, "an aperture");
        return text == null ? null : accept(node, name, Span.aperture(text), 0.5, most, "f/", "");
    }

    public <E extends Enum<E>> E word(Node node, String name, E[] constants) {
        String text = written(node, name, "a word");
        if (text == null) {
            return null;
        }
        E found = Words.find(constants, text.strip());
        return found != null ? found : refuse(node, Node.quote(text) + " is not a value of " + name,
                Suggestion.amongWords(Words.of(constants), text.strip(), "use one of"));
    }

    public Boolean yesNo(Node node, String name) {
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
    public LocalTime clock(Node node, String name) {
        String text = written(node, name, "a clock time");
        return text == null ? null : Moment.clock(text, name, (fault, help) -> refuse(node, fault, help));
    }

    /** A date in full, {@code YYYY-MM-DD}, in the years 1900 to 2100. */
    public LocalDate date(Node node, String name) {
        String text = written(node, name, "a date");
        return text == null ? null : Moment.date(text, name, (fault, help) -> refuse(node, fault, help));
    }

    private String written(Node node, String name, String wanted) {
        if (node == null) {
            return null;
        }
        if (node instanceof Node.Scalar scalar && !scalar.empty()) {
            return scalar.text();
        }
        return refuse(node, name + " must be " + wanted + ", not " + node.described(), unbracketed(node));
    }

    private static String unbracketed(Node node) {
        boolean one = node instanceof Node.Seq list && list.items().size() == 1
                && list.items().get(0) instanceof Node.Scalar scalar && !scalar.empty();
        return one ? "write it without brackets or dash: " + Node.clip(((Node.Scalar) ((Node.Seq) node).items().get(0)).text())
                : "write one value, without keys or brackets";
    }

    private Double accept(Node node, String name, Quantity read) {
        return read.value() != null ? read.value() : refuse(node, name + " " + read.fault(), read.help());
    }

    private Span accept(Node node, String name, Span read, double least, double most, String before, String after) {
        if (read.fault() != null) {
            return refuse(node, name + " " + read.fault(), read.help());
        }
        if (read.from() < least || read.to() > most) {
            return refuse(node, name + " must be from " + before + Numeral.show(least) + after + " to " + before
                    + Numeral.show(most) + after, null);
        }
        return read;
    }

    /** An error at a node; null, for the caller to hand on. */
    public <T> T refuse(Node node, String text, String help) {
        findings.error(node.pos(), text, Quotes.straightened(node, help));
        return null;
    }
}
