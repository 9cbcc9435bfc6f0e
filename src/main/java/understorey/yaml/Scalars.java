package understorey.yaml;

import java.time.LocalDate;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.Quotes;
import understorey.yaml.value.Bearing;
import understorey.yaml.value.Dimension;
import understorey.yaml.value.Moment;
import understorey.yaml.value.Numeral;
import understorey.yaml.value.ProseSize;
import understorey.yaml.value.Quantity;
import understorey.yaml.value.Span;
import understorey.yaml.value.Words;

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
    public @Nullable String text(@Nullable Node node, String name) {
        return text(node, name, LONGEST_NAME);
    }

    /** Text of at most so many characters. */
    public @Nullable String text(@Nullable Node node, String name, int longest) {
        Node.Scalar given = written(node, name, "text");
        return given == null ? null : given.text().codePointCount(0, given.text().length()) <= longest ? given.text()
                : refuse(given, name + " is longer than " + longest + " characters", "shorten it, and put the rest into notes");
    }

    /** Markdown of any sensible length. */
    public @Nullable String prose(@Nullable Node node, String name) {
        Node.Scalar given = written(node, name, "text");
        String fault = given == null ? null : ProseSize.fault(given.text());
        return given == null ? null : fault == null ? given.text() : refuse(given, name + " " + fault, "keep what the trip needs, and leave out the rest");
    }

    /** Name of something that could also be described in place. */
    public @Nullable String pointer(@Nullable Node node, String name) {
        Node.Scalar given = written(node, name, "a name or keys and values");
        return given == null ? null : given.text();
    }

    public @Nullable Double number(@Nullable Node node, String name, double least, double most) {
        return number(node, name, least, most, null);
    }

    /**
     * A number between two limits.
     *
     * @param help fix for a number outside the limits; null if there is none
     */
    public @Nullable Double number(@Nullable Node node, String name, double least, double most, @Nullable String help) {
        Node.Scalar given = written(node, name, "a number");
        if (given == null) {
            return null;
        }
        String text = given.text();
        Double number = Numeral.of(text.strip());
        if (number == null) {
            String pointed = Numeral.withPoint(text.strip());
            return pointed != null ? refuse(given, name + " has a decimal comma", "write " + pointed)
                    : refuse(given, name + " must be a number, not the text " + Node.quote(text), Numeral.help(text.strip()));
        }
        if (number < least || number > most) {
            return refuse(given, name + " must be from " + Numeral.show(least) + " to " + Numeral.show(most)
                    + ", not " + Node.clip(text), help);
        }
        return number;
    }

    public @Nullable Integer whole(@Nullable Node node, String name, int least, int most) {
        Double number = number(node, name, least, most);
        if (node != null && number != null && number != Math.rint(number)) {
            return refuse(node, name + " must be a whole number, not " + Numeral.show(number),
                    "write " + Numeral.show(Math.rint(number)));
        }
        return number == null ? null : Integer.valueOf(number.intValue());
    }

    /** A quantity in the base unit of its dimension; the limits have the same unit. */
    public @Nullable Double quantity(@Nullable Node node, String name, Dimension dimension, double least, double most) {
        Node.Scalar given = written(node, name, dimension.described());
        if (given == null) {
            return null;
        }
        String text = given.text();
        Double value = accept(given, name, Quantity.read(text, dimension));
        if (value != null && (value < least || value > most)) {
            return refuse(given, name + " must be from " + dimension.show(least) + " to " + dimension.show(most)
                    + ", not " + dimension.show(value), null);
        }
        return value;
    }

    /** Degrees, with or without the degree sign. */
    public @Nullable Double angle(@Nullable Node node, String name, double least, double most) {
        Node.Scalar given = written(node, name, "an angle in degrees");
        if (given == null) {
            return null;
        }
        String text = given.text();
        Double degrees = Bearing.degrees(text.strip());
        if (degrees == null) {
            return refuse(given, name + " must be an angle in degrees, not the text " + Node.quote(text),
                    Numeral.withPoint(text) != null ? "write " + Numeral.withPoint(text.strip()) : "for example 8");
        }
        if (degrees < least || degrees > most) {
            return refuse(given, name + " must be from " + Numeral.show(least) + " to " + Numeral.show(most)
                    + " degrees, not " + Numeral.show(degrees), null);
        }
        return degrees;
    }

    public @Nullable Double bearing(@Nullable Node node, String name) {
        Node.Scalar given = written(node, name, "a bearing");
        return given == null ? null : accept(given, name, Bearing.read(given.text()));
    }

    public @Nullable Span focal(@Nullable Node node, String name) {
        Node.Scalar given = written(node, name, "a focal length");
        return given == null ? null : accept(given, name, Span.focal(given.text()), 0.5, 3000, "", " mm");
    }

    /**
     * One f-number or two.
     *
     * @param most the largest f-number allowed
     */
    public @Nullable Span aperture(@Nullable Node node, String name, double most) {
        Node.Scalar given = written(node, name, "an aperture");
        return given == null ? null : accept(given, name, Span.aperture(given.text()), 0.5, most, "f/", "");
    }

    public <E extends Enum<E>> @Nullable E word(@Nullable Node node, String name, E[] constants) {
        Node.Scalar given = written(node, name, "a word");
        if (given == null) {
            return null;
        }
        String text = given.text();
        E found = Words.find(constants, text.strip());
        return found != null ? found : refuse(given, Node.quote(text) + " is not a value of " + name,
                Suggestion.amongWords(Words.of(constants), text.strip(), "use one of"));
    }

    public @Nullable Boolean yesNo(@Nullable Node node, String name) {
        Node.Scalar given = written(node, name, "yes or no");
        if (given == null) {
            return null;
        }
        String text = given.text();
        boolean yes = text.equalsIgnoreCase("yes") || text.equalsIgnoreCase("true");
        boolean no = text.equalsIgnoreCase("no") || text.equalsIgnoreCase("false");
        return yes || no ? Boolean.valueOf(yes)
                : refuse(given, name + " must be yes or no, not the text " + Node.quote(text), null);
    }

    /** A clock time, {@code HH:MM}. */
    public @Nullable LocalTime clock(@Nullable Node node, String name) {
        Node.Scalar given = written(node, name, "a clock time");
        return given == null ? null : Moment.clock(given.text(), name, (fault, help) -> refuse(given, fault, help));
    }

    /** A date in full, {@code YYYY-MM-DD}, in the years 1900 to 2100. */
    public @Nullable LocalDate date(@Nullable Node node, String name) {
        Node.Scalar given = written(node, name, "a date");
        return given == null ? null : Moment.date(given.text(), name, (fault, help) -> refuse(given, fault, help));
    }

    private Node.@Nullable Scalar written(@Nullable Node node, String name, String wanted) {
        if (node == null) {
            return null;
        }
        if (node instanceof Node.Scalar scalar && !scalar.empty()) {
            return scalar;
        }
        return refuse(node, name + " must be " + wanted + ", not " + node.described(), unbracketed(node));
    }

    private static String unbracketed(Node node) {
        boolean one = node instanceof Node.Seq list && list.items().size() == 1
                && list.items().get(0) instanceof Node.Scalar scalar && !scalar.empty();
        return one ? "write it without brackets or dash: " + Node.clip(((Node.Scalar) ((Node.Seq) node).items().get(0)).text())
                : "write one value, without keys or brackets";
    }

    private @Nullable Double accept(Node node, String name, Quantity read) {
        return read.value() != null ? read.value() : refuse(node, name + " " + read.fault(), read.help());
    }

    private @Nullable Span accept(Node node, String name, Span read, double least, double most, String before, String after) {
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
    public <T> @Nullable T refuse(Node node, String text, @Nullable String help) {
        findings.error(node.pos(), text, Quotes.straightened(node, help));
        return null;
    }
}
