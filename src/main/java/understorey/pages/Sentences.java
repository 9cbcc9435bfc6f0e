package understorey.pages;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import understorey.reason.Figure;
import understorey.reason.Reason;

/**
 * The words for reasons. A file holds one line a kind, {@code focal-short = … {times} …}; a name in braces is
 * replaced by the figure of that name, worded.
 */
final class Sentences {

    private final Map<String, String> patterns;

    private Sentences(Map<String, String> patterns) {
        this.patterns = patterns;
    }

    /** Reads lines of {@code kind = sentence}; empty lines and lines that begin with {@code #} say nothing. */
    static Sentences read(String text) {
        Map<String, String> patterns = new LinkedHashMap<>();
        for (String line : text.split("\n")) {
            int equals = line.indexOf('=');
            if (equals > 0 && !line.startsWith("#")) {
                patterns.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
            }
        }
        return new Sentences(patterns);
    }

    /** The name under which a kind stands in the file. */
    static String key(Reason.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    boolean knows(Reason.Kind kind) {
        return patterns.containsKey(key(kind));
    }

    /** The sentence for a reason, its first letter large; an f-number keeps its small f. */
    String of(Reason reason) {
        String sentence = within(reason);
        return sentence.startsWith("f/") ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private String within(Reason reason) {
        String sentence = patterns.get(key(reason.kind()));
        if (sentence == null) {
            throw new IllegalStateException("sentences.txt has no line for '" + key(reason.kind()) + "'");
        }
        for (Map.Entry<String, Figure> figure : reason.figures().entrySet()) {
            String words = figure.getValue().value() instanceof Reason inner ? within(inner)
                    : Words.of(figure.getValue());
            sentence = sentence.replace("{" + figure.getKey() + "}", words);
        }
        return sentence;
    }
}
