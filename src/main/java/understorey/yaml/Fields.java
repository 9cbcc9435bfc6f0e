package understorey.yaml;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.Quotes;
import understorey.yaml.tree.Spelling;
import understorey.yaml.value.Dimension;
import understorey.yaml.value.Span;
import understorey.yaml.value.Words;

/**
 * Keys and values of one record, for its reader. A value that is absent or faulty is null; {@link #done()} reports each
 * key that was not read.
 */
public final class Fields {

    private final Node.Mapping node;
    private final String what;
    private final Findings findings;
    private final Scalars scalars;
    private final TreeSet<String> asked = new TreeSet<>();
    /** Keys that are required and absent. */
    private final TreeSet<String> missing = new TreeSet<>();

    /**
     * @param what name of the record in sentences, for example "this lens"
     */
    public Fields(Node.Mapping node, String what, Findings findings) {
        this.node = node;
        this.what = what;
        this.findings = findings;
        this.scalars = new Scalars(findings);
    }

    /** Names required keys; {@link #done()} reports those that are missing. */
    public Fields require(String... keys) {
        for (String key : keys) {
            asked.add(key);
            if (!has(key)) {
                missing.add(key);
            }
        }
        return this;
    }

    public boolean has(String key) {
        return node.entry(key) != null;
    }

    /** Place of the value of a key; of the whole record if the key is absent. */
    public Pos at(String key) {
        Node.Entry entry = node.entry(key);
        return entry == null ? node.pos() : entry.value() == null ? entry.key() : entry.value().pos();
    }

    /** Place of the key itself; of the whole record if it is absent. */
    public Pos atKey(String key) {
        Node.Entry entry = node.entry(key);
        return entry == null ? node.pos() : entry.key();
    }

    public Pos pos() {
        return node.pos();
    }

    public Findings findings() {
        return findings;
    }

    /** An error at the value of a key. */
    public void refuse(String key, String text, @Nullable String help) {
        Node.Entry entry = node.entry(key);
        findings.error(at(key), text, entry == null || entry.value() == null ? help : Quotes.straightened(entry.value(), help));
    }

    /** Value of a key; null if it is absent, or if it is empty, which is reported. */
    public @Nullable Node take(String key) {
        asked.add(key);
        Node.Entry entry = node.entry(key);
        if (entry == null) {
            return null;
        }
        if (entry.value() instanceof Node.Scalar scalar && scalar.empty()) {
            String line = findings.source().line(entry.key().line());
            findings.error(entry.key(), "'" + key + "' has no value", line != null && line.contains(" #")
                    ? "what follows '#' is a comment: put quotes around the text" : "add a value, or delete the key");
            return null;
        }
        return entry.value();
    }

    /** Accepts a key whose value is not read. */
    public void ignore(String key) {
        asked.add(key);
    }

    public @Nullable String text(String key) {
        return scalars.text(take(key), named(key));
    }

    /** An address or a text of at most so many characters. */
    public @Nullable String text(String key, int longest) {
        return scalars.text(take(key), named(key), longest);
    }

    /** Free text: Markdown. */
    public @Nullable String prose(String key) {
        return scalars.prose(take(key), named(key));
    }

    public @Nullable Double number(String key, double least, double most) {
        return scalars.number(take(key), named(key), least, most);
    }

    public @Nullable Integer whole(String key, int least, int most) {
        return scalars.whole(take(key), named(key), least, most);
    }

    public @Nullable Double quantity(String key, Dimension dimension, double least, double most) {
        return scalars.quantity(take(key), named(key), dimension, least, most);
    }

    public @Nullable Double angle(String key, double least, double most) {
        return scalars.angle(take(key), named(key), least, most);
    }

    public @Nullable Double bearing(String key) {
        return scalars.bearing(take(key), named(key));
    }

    public @Nullable Span focal(String key) {
        return scalars.focal(take(key), named(key));
    }

    public @Nullable Span aperture(String key, double most) {
        return scalars.aperture(take(key), named(key), most);
    }

    public <E extends Enum<E>> @Nullable E word(String key, E[] constants) {
        return scalars.word(take(key), named(key), constants);
    }

    /** Words of the list under a key, or one of them, each once. */
    public <E extends Enum<E>> List<E> words(String key, E[] constants) {
        Node value = take(key);
        if (value instanceof Node.Scalar scalar && Words.find(constants, scalar.text().strip()) == null) {
            refuse(key, Node.quote(scalar.text()) + " is not a value of " + named(key),
                    Suggestion.list(Words.of(constants), scalar.text()));
            return List.of();
        }
        return items(key).stream().map(item -> scalars.word(item, named(key), constants)).filter(Objects::nonNull).distinct().toList();
    }

    public @Nullable Boolean yesNo(String key) {
        return scalars.yesNo(take(key), named(key));
    }

    public @Nullable LocalTime clock(String key) {
        return scalars.clock(take(key), named(key));
    }

    public @Nullable LocalDate date(String key) {
        return scalars.date(take(key), named(key));
    }

    public Scalars scalars() {
        return scalars;
    }

    /** A node as keys and values; null, with a finding, if it is something else. */
    public @Nullable Fields block(@Nullable Node value, String name, String called) {
        if (value instanceof Node.Mapping mapping) {
            return new Fields(mapping, called, findings);
        }
        if (value != null) {
            findings.error(value.pos(), name + " must be keys and values, not " + value.described(),
                    "write it as {key: value}, or as indented lines of 'key: value'");
        }
        return null;
    }

    /** What a reader makes of the keys and values under a key, all of which it must read; null if there are none. */
    public <T> @Nullable T in(String key, Function<Fields, @Nullable T> reader) {
        return in(key, named(key), reader);
    }

    /** What a reader makes of the keys and values under a key, all of which it must read; null if there are none. */
    public <T> @Nullable T in(String key, String called, Function<Fields, @Nullable T> reader) {
        Fields block = block(take(key), named(key), called);
        if (block == null) {
            return null;
        }
        T read = reader.apply(block);
        block.done();
        return read;
    }

    /** Values of the list under a key, or the one value there; empty if it is absent. */
    public List<Node> items(String key) {
        Node value = take(key);
        return value instanceof Node.Seq list ? list.items() : value == null ? List.of() : List.of(value);
    }

    /** Entries of the list under a key, or the one entry there, each with keys and values. */
    public List<Fields> blocks(String key, String called) {
        Node value = take(key);
        if (value != null && !(value instanceof Node.Seq) && !isEntry(value)) {
            findings.error(value.pos(), named(key) + " must be a list, not " + value.described(), "begin each entry with '- '");
            return List.of();
        }
        return items(key).stream().map(item -> block(item, "each entry of " + named(key), called)).filter(Objects::nonNull).toList();
    }

    /** Whether keys and values describe one entry. Blocks under names are several, whose dashes are missing. */
    private static boolean isEntry(Node value) {
        return value instanceof Node.Mapping block
                && block.entries().values().stream().anyMatch(entry -> entry.value() instanceof Node.Scalar);
    }

    /** What a reader makes of each entry of the list under a key; entries that it cannot use are left out. */
    public <T> List<T> each(String key, String called, Function<Fields, @Nullable T> reader) {
        return blocks(key, called).stream().map(reader).filter(Objects::nonNull).toList();
    }

    /** Refuses a list of more entries than can be planned in a minute. */
    public void atMost(int most, String... keys) {
        for (String key : keys) {
            Node.Entry entry = node.entry(key);
            if (entry != null && entry.value() instanceof Node.Seq list && list.items().size() > most) {
                findings.error(entry.key(), named(key) + " has " + list.items().size() + " entries; at most " + most
                        + " are allowed", "split it into several plans");
            }
        }
    }

    /** How many of three keys are there; a second one is refused. */
    public long oneOf(String one, String other, String third) {
        List<String> given = Stream.of(one, other, third).filter(this::has).toList();
        if (given.size() > 1) {
            findings.error(atKey(given.get(1)), "give only one of " + named(one) + ", " + named(other) + " and " + named(third),
                    "delete the others");
        }
        return given.size();
    }

    /** Free texts of the list under a key: Markdown each. */
    public List<String> texts(String key) {
        return items(key).stream().map(item -> scalars.prose(item, "each entry of " + named(key))).filter(Objects::nonNull).toList();
    }

    /** Reports each key that was not read, and each required key that is missing. */
    public void done() {
        for (var entry : node.entries().entrySet()) {
            String key = entry.getKey();
            String spelt = Spelling.british(key);
            if (!key.equals(spelt) && node.entries().containsKey(spelt)) {
                findings.error(entry.getValue().key(), "'" + key + "' is given twice: it is the same as '" + spelt + "'", "delete one of them");
            } else if (!asked.contains(spelt)) {
                String help = Suggestion.among(asked, key, "known keys");
                if (key.length() > 0 && Character.isDigit(key.charAt(0))) {
                    help = "write decimals with a point, because a comma ends a value";
                }
                findings.error(entry.getValue().key(), "unknown key '" + Node.clip(key) + "' in " + what, help);
                // A misspelt key is not reported as missing as well.
                String meant = Suggestion.nearest(asked, key);
                if (meant != null) {
                    missing.remove(meant);
                }
            }
        }
        missing.forEach(key -> findings.error(node.pos(), "'" + key + "' is missing in " + what, Examples.of(key, what)));
    }

    private static String named(String key) {
        return "'" + key + "'";
    }
}
