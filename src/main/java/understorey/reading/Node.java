package understorey.reading;

import java.util.List;
import java.util.Map;

/** A piece of a YAML file that knows where it stands. */
sealed interface Node {

    Pos pos();

    /** What it is, for a sentence such as "must be a list, not …". */
    String described();

    /**
     * A single value, as text.
     *
     * @param text  as written, without quotes
     * @param empty true when there is nothing, or only a word for nothing
     */
    record Scalar(String text, boolean empty, Pos pos) implements Node {

        @Override
        public String described() {
            return empty ? "nothing" : "the text " + quote(text);
        }
    }

    /** A list. */
    record Seq(List<Node> items, Pos pos) implements Node {

        @Override
        public String described() {
            return "a list";
        }
    }

    /** A block of keys, in file order; it stands where its first key does, or its opening brace. */
    record Mapping(Map<String, Entry> entries, Pos pos) implements Node {

        @Override
        public String described() {
            return "a block of keys";
        }
    }

    /** One key with its value, which is null where it was refused while reading. */
    record Entry(Pos key, Node value) {
    }

    /** The author's words between quotes, on one line and not too long. */
    static String quote(String words) {
        return '"' + clip(words) + '"';
    }

    /** As {@link #quote}, without the quotes. */
    static String clip(String words) {
        String line = words.strip();
        int end = line.indexOf('\n');
        boolean cut = end >= 0;
        line = cut ? line.substring(0, end) : line;
        if (line.codePointCount(0, line.length()) > 40) {
            line = line.substring(0, line.offsetByCodePoints(0, 40));
            cut = true;
        }
        return cut ? line + "…" : line;
    }
}
