package understorey.reading;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.TreeSet;

/**
 * A block of keys being taken apart by the reader of one record. A value that is absent or faulty comes
 * out as null; {@link #done()} reports each key that nobody asked for.
 */
final class Fields {

    private final Node.Mapping node;
    private final String what;
    private final Findings findings;
    private final Scalars scalars;
    private final TreeSet<String> asked = new TreeSet<>();
    /** Owed and not there. */
    private final TreeSet<String> missing = new TreeSet<>();

    /**
     * @param what the block in sentences, such as "this lens"
     */
    Fields(Node.Mapping node, String what, Findings findings) {
        this.node = node;
        this.what = what;
        this.findings = findings;
        this.scalars = new Scalars(findings);
    }

    /** Keys that this block owes; {@link #done()} reports those that are missing. */
    Fields require(String... keys) {
        for (String key : keys) {
            asked.add(key);
            if (!has(key)) {
                missing.add(key);
            }
        }
        return this;
    }

    boolean has(String key) {
        return node.entries().containsKey(key);
    }

    /** Where the value of a key stands; the block itself when the key is absent. */
    Pos at(String key) {
        Node.Entry entry = node.entries().get(key);
        return entry == null ? node.pos() : entry.value() == null ? entry.key() : entry.value().pos();
    }

    /** Where the key itself stands; the block when it is absent. */
    Pos atKey(String key) {
        Node.Entry entry = node.entries().get(key);
        return entry == null ? node.pos() : entry.key();
    }

    Pos pos() {
        return node.pos();
    }

    Findings findings() {
        return findings;
    }

    /** An error at the value of a key. */
    void refuse(String key, String text, String help) {
        Node.Entry entry = node.entries().get(key);
        findings.error(at(key), text, entry == null ? help : Quotes.straightened(entry.value(), help));
    }

    /** The value of a key; null when it is absent, or empty, which is reported at the key. */
    Node take(String key) {
        asked.add(key);
        Node.Entry entry = node.entries().get(key);
        if (entry == null) {
            return null;
        }
        if (entry.value() instanceof Node.Scalar scalar && scalar.empty()) {
            findings.error(entry.key(), "'" + key + "' has no value", "give it one, or leave the key out");
            return null;
        }
        return entry.value();
    }

    String text(String key) {
        return scalars.text(take(key), named(key));
    }

    /** An address or a text of at most so many characters. */
    String text(String key, int longest) {
        return scalars.text(take(key), named(key), longest);
    }

    /** Free text: Markdown. */
    String prose(String key) {
        return scalars.prose(take(key), named(key));
    }

    Double number(String key, double least, double most) {
        return scalars.number(take(key), named(key), least, most);
    }

    Integer whole(String key, int least, int most) {
        return scalars.whole(take(key), named(key), least, most);
    }

    Double quantity(String key, Dimension dimension, double least, double most) {
        return scalars.quantity(take(key), named(key), dimension, least, most);
    }

    Double angle(String key, double least, double most) {
        return scalars.angle(take(key), named(key), least, most);
    }

    Double bearing(String key) {
        return scalars.bearing(take(key), named(key));
    }

    Span focal(String key) {
        return scalars.focal(take(key), named(key));
    }

    Span aperture(String key, double most) {
        return scalars.aperture(take(key), named(key), most);
    }

    <E extends Enum<E>> E word(String key, E[] constants) {
        return scalars.word(take(key), named(key), constants);
    }

    /** The words of the list under a key, each once. */
    <E extends Enum<E>> List<E> words(String key, E[] constants) {
        Node value = take(key);
        String help = value instanceof Node.Scalar scalar
                ? Suggestion.list(Words.of(constants), scalar.text()) : null;
        LinkedHashSet<E> words = new LinkedHashSet<>();
        for (Node item : items(key, value, help)) {
            E word = scalars.word(item, "an entry of " + named(key), constants);
            if (word != null) {
                words.add(word);
            }
        }
        return List.copyOf(words);
    }

    Boolean yesNo(String key) {
        return scalars.yesNo(take(key), named(key));
    }

    LocalTime clock(String key) {
        return scalars.clock(take(key), named(key));
    }

    LocalDate date(String key) {
        return scalars.date(take(key), named(key));
    }

    Scalars scalars() {
        return scalars;
    }

    /** The block under a key, called by that key; null when it is absent or no block. */
    Fields block(String key) {
        return block(key, named(key));
    }

    /** The block under a key; null when it is absent or no block. */
    Fields block(String key, String called) {
        return block(take(key), named(key), called);
    }

    /** A node as a block; null, with a finding, when it is none. */
    Fields block(Node value, String name, String called) {
        if (value instanceof Node.Mapping mapping) {
            return new Fields(mapping, called, findings);
        }
        if (value != null) {
            findings.error(value.pos(), name + " must be a block of keys, not " + value.described(), null);
        }
        return null;
    }

    /** The values of the list under a key; none when it is absent or no list. */
    List<Node> items(String key) {
        Node value = take(key);
        return items(key, value, value instanceof Node.Scalar scalar ? "write it as [" + Node.clip(scalar.text()) + "]"
                : null);
    }

    private List<Node> items(String key, Node value, String help) {
        if (value instanceof Node.Seq list) {
            return list.items();
        }
        if (value != null) {
            findings.error(value.pos(), named(key) + " must be a list, not " + value.described(), help);
        }
        return List.of();
    }

    /** The blocks of the list under a key. */
    List<Fields> blocks(String key, String called) {
        List<Fields> blocks = new ArrayList<>();
        for (Node item : items(key, take(key), "begin each entry with '- '")) {
            Fields block = block(item, "an entry of " + named(key), called);
            if (block != null) {
                blocks.add(block);
            }
        }
        return blocks;
    }

    /** Refuses a list of more entries than a plan can be made for in a minute. */
    void atMost(int most, String... keys) {
        for (String key : keys) {
            Node.Entry entry = node.entries().get(key);
            if (entry != null && entry.value() instanceof Node.Seq list && list.items().size() > most) {
                findings.error(entry.key(), named(key) + " has " + list.items().size() + " entries, and at most " + most
                        + " can be planned", "make several plans of it");
            }
        }
    }

    /** The free texts of the list under a key: Markdown each. */
    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (Node item : items(key)) {
            String text = scalars.prose(item, "an entry of " + named(key));
            if (text != null) {
                texts.add(text);
            }
        }
        return List.copyOf(texts);
    }

    /** Reports each key that nobody asked for, and each that is owed and missing. */
    void done() {
        for (var entry : node.entries().entrySet()) {
            String key = entry.getKey();
            if (!asked.contains(key)) {
                String help = Suggestion.among(asked, key, "known keys");
                if (key.length() > 0 && Character.isDigit(key.charAt(0))) {
                    help = "a comma ends the value before it; write decimals with a point";
                }
                findings.error(entry.getValue().key(), "unknown key '" + Node.clip(key) + "' in " + what, help);
                // A key that is only misspelt is not missing as well.
                String meant = Suggestion.nearest(asked, key);
                if (meant != null) {
                    missing.remove(meant);
                }
            }
        }
        for (String key : missing) {
            findings.error(node.pos(), "'" + key + "' is missing in " + what, Examples.of(key, what));
        }
    }

    private static String named(String key) {
        return "'" + key + "'";
    }
}
