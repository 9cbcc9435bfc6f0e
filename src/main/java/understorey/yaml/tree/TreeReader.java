package understorey.yaml.tree;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;

/**
 * Reads YAML text as a tree of {@link Node}s. Every scalar stays the text that was written. Refused: anchors,
 * aliases, tags, a key given twice, a second document, more than 20 levels, more than 50 000 nodes.
 */
public final class TreeReader {

    public static final int DEEPEST = 20;
    public static final int MOST_NODES = 50_000;

    private static final YAMLFactory YAML = YAMLFactory.builder()
            .enable(YAMLParser.Feature.EMPTY_STRING_AS_NULL)
            // Without it no, on and yes are booleans.
            .enable(YAMLParser.Feature.PARSE_BOOLEAN_LIKE_WORDS_AS_STRINGS)
            .streamReadConstraints(StreamReadConstraints.builder().maxNestingDepth(100).build())
            .build();

    private final Findings findings;
    private final YAMLParser parser;
    private int nodes;

    private TreeReader(Findings findings, YAMLParser parser) {
        this.findings = findings;
        this.parser = parser;
    }

    /** Keys and values of the file; null, with a finding, if it cannot be read. */
    public static Node.@Nullable Mapping read(Findings findings) {
        if (!findings.source().isRead()) {
            return null;
        }
        try (YAMLParser parser = YAML.createParser(findings.source().text())) {
            return new TreeReader(findings, parser).document();
        } catch (TooMuch e) {
            findings.error(e.pos, e.text, "check brackets and indentation, or use several files");
        } catch (JsonProcessingException e) {
            SyntaxFault.report(e, findings);
        } catch (IOException e) {
            findings.error(Pos.FILE, "this file cannot be read", "check its permissions");
        }
        return null;
    }

    private Node.@Nullable Mapping document() throws IOException {
        JsonToken token = parser.nextToken();
        if (token == null || token == JsonToken.VALUE_NULL) {
            findings.error(Pos.FILE, "this file is empty", "write a plan into it, or delete it");
            return null;
        }
        Node root = node(1);
        if (parser.nextToken() != null) {
            findings.error(start(1), "a second YAML document begins on this line",
                    "put it into a file of its own: one file is one trip, site or bag");
            return null;
        }
        if (root != null && !(root instanceof Node.Mapping)) {
            findings.error(root.pos(), "this file must be lines of 'key: value', not " + root.described(),
                    "begin each line with a key and ': '");
        }
        return root instanceof Node.Mapping mapping ? mapping : null;
    }

    /** A value as a node; null for an alias, which has no value. */
    private @Nullable Node node(int depth) throws IOException {
        if (++nodes > MOST_NODES) {
            throw new TooMuch("this file has more than 50 000 values", start(1));
        }
        if (depth > DEEPEST) {
            throw new TooMuch("nested more than 20 levels deep", start(1));
        }
        refuseMarks();
        if (parser.isCurrentAlias()) {
            return null;
        }
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            return mapping(depth);
        }
        if (token == JsonToken.START_ARRAY) {
            return sequence(depth);
        }
        String text = parser.getText();
        boolean empty = token == JsonToken.VALUE_NULL || text == null || text.isBlank();
        return new Node.Scalar(text == null ? "" : text, empty, here());
    }

    private Node mapping(int depth) throws IOException {
        JsonLocation opened = parser.currentTokenLocation();
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        DuplicateKeys twice = new DuplicateKeys();
        Pos first = null;
        String last = null;
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            refuseMarks();
            String key = parser.currentName();
            Pos pos = here();
            first = first == null ? pos : first;
            String begun = last != null && cutByComma() ? last : null;
            parser.nextToken();
            Node.Entry entry = new Node.Entry(pos, node(depth + 1));
            if (begun != null && joined(entries, begun, entry, key)) {
                continue;
            }
            last = key;
            Node.Entry earlier = entries.putIfAbsent(key, entry);
            if (earlier != null) {
                twice.add(key, pos, earlier.key().line());
            }
        }
        boolean block = first != null && first.line() == opened.getLineNr() && first.column() == opened.getColumnNr();
        twice.report(findings, block && depth > 1);
        return new Node.Mapping(entries, first != null && block ? first : closed(opened));
    }

    /** True at a key in braces that follows a digit and a comma, for example the 5 in {@code {far: 1,5 m}}. */
    private boolean cutByComma() {
        long at = parser.currentTokenLocation().getCharOffset();
        return findings.source().character(at - 1) == ',' && digit(at - 2) && digit(at);
    }

    private boolean digit(long at) {
        int character = at < 0 ? 0 : findings.source().character(at);
        return character >= '0' && character <= '9';
    }

    /** Refuses a value that a decimal comma cut in two; false if no decimal comma cut it. */
    private boolean joined(Map<String, Node.Entry> entries, String last, Node.Entry rest, String key) {
        Node.Entry begun = entries.get(last);
        boolean empty = rest.value() instanceof Node.Scalar scalar && scalar.empty();
        if (!empty || begun == null || !(begun.value() instanceof Node.Scalar value)) {
            return false;
        }
        entries.put(last, new Node.Entry(begun.key(), null));
        Pos from = value.pos();
        findings.error(new Pos(from.line(), from.column(), from.line() == rest.key().line()
                ? rest.key().column() + rest.key().length() - from.column() : from.length()),
                "'" + Node.clip(last) + "' has a decimal comma", "write " + Node.clip(value.text() + "." + key));
        return true;
    }

    private Node sequence(int depth) throws IOException {
        JsonLocation opened = parser.currentTokenLocation();
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            Node item = node(depth + 1);
            if (item != null) {
                items.add(item);
            }
        }
        return new Node.Seq(items, closed(opened));
    }

    /** Refuses anchors, aliases and tags. They begin where their value does; plain text cannot begin with these characters. */
    private void refuseMarks() {
        JsonLocation at = parser.currentTokenLocation();
        int first = findings.source().character(at.getCharOffset());
        if (first == '&' || first == '*') {
            findings.error(here(), "anchors (&) and aliases (*) are not supported",
                    "write the value out, or put quotes around text that begins with & or *");
        } else if (first == '!') {
            findings.error(here(), "tags (!) are not supported", "put quotes around text that begins with !");
        }
    }

    /** Place of the current scalar or key, up to its end or the end of the line. */
    private Pos here() {
        JsonLocation from = parser.currentTokenLocation();
        JsonLocation to = parser.currentLocation();
        return between(from, to);
    }

    private Pos closed(JsonLocation opened) {
        JsonLocation end = parser.currentLocation();
        return end.getLineNr() == opened.getLineNr() ? between(opened, end)
                : new Pos(opened.getLineNr(), opened.getColumnNr(), 1);
    }

    private Pos between(JsonLocation from, JsonLocation to) {
        int length = to.getLineNr() == from.getLineNr() ? to.getColumnNr() - from.getColumnNr()
                : findings.source().lengthToEnd(from.getLineNr(), from.getColumnNr());
        return new Pos(from.getLineNr(), from.getColumnNr(), length);
    }

    private Pos start(int length) {
        JsonLocation at = parser.currentTokenLocation();
        return new Pos(at.getLineNr(), at.getColumnNr(), length);
    }

    /** Stops the reading of a file that is too large for a plan. */
    private static final class TooMuch extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final String text;
        private final transient Pos pos;

        TooMuch(String text, Pos pos) {
            super(text, null, false, false);
            this.text = text;
            this.pos = pos;
        }
    }
}
