package understorey.pages;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import understorey.reason.Figure;
import understorey.reason.Reason;

/**
 * The words for reasons. Two files hold one line a kind, {@code focal-short = … {times} …}; a name in braces is
 * replaced by the figure of that name, worded.
 */
final class Sentences {

    /** What is said of a picture and of what takes it, and what is said of the day. */
    private static final List<String> FILES = List.of("sentences-pictures.txt", "sentences-day.txt");

    /** A sentence, and where it stands. */
    private record Line(String file, int number, String text) {
    }

    private final Map<String, Line> lines;

    private Sentences(Map<String, Line> lines) {
        this.lines = lines;
    }

    /** Those of the templates. */
    static Sentences of(Templates templates) {
        List<String> texts = new ArrayList<>();
        for (String file : FILES) {
            texts.add(templates.text(file));
        }
        return read(texts);
    }

    /** Those that the program comes with, without the template library, which would take a tenth of a second to load. */
    static Sentences builtIn() {
        List<String> texts = new ArrayList<>();
        for (String file : FILES) {
            try (InputStream in = Sentences.class.getResourceAsStream(Templates.RESOURCES + file)) {
                texts.add(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return read(texts);
    }

    /**
     * Reads lines of {@code kind = sentence}; empty lines and lines that begin with {@code #} say nothing.
     *
     * @param texts one a file, of the pictures and of the day; the latter may be left out
     */
    static Sentences read(List<String> texts) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (int i = 0; i < texts.size(); i++) {
            int number = 0;
            for (String line : texts.get(i).split("\n", -1)) {
                number++;
                int equals = line.indexOf('=');
                if (equals > 0 && !line.startsWith("#")) {
                    lines.put(line.substring(0, equals).strip(), new Line(FILES.get(i), number, line.substring(equals + 1).strip()));
                }
            }
        }
        return new Sentences(lines);
    }

    /** The name under which a kind stands in the file. */
    static String key(Reason.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    boolean knows(Reason.Kind kind) {
        return lines.containsKey(key(kind));
    }

    /**
     * The sentence for a reason, its first letter large; an f-number keeps its small f.
     *
     * @throws TemplateFault when the file has no such line, or one that shows a figure which the reason has not
     */
    String of(Reason reason) {
        String sentence = within(reason);
        return sentence.isEmpty() || sentence.startsWith("f/") ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    /** A sentence a reason, in their order. */
    List<String> of(List<Reason> reasons) {
        List<String> said = new ArrayList<>();
        for (Reason reason : reasons) {
            said.add(of(reason));
        }
        return said;
    }

    /** The sentence as it stands, to follow a colon. One pass over the line: a name of the author's that holds braces is shown as it is. */
    String within(Reason reason) {
        Line line = lines.get(key(reason.kind()));
        if (line == null) {
            throw new TemplateFault(FILES.get(0), 1, 1, "no line for '" + key(reason.kind()) + "', nor in " + FILES.get(1));
        }
        String text = line.text();
        StringBuilder sentence = new StringBuilder(2 * text.length());
        int done = 0;
        int open = text.indexOf('{');
        while (open >= 0) {
            int close = text.indexOf('}', open);
            if (isName(text, open + 1, close)) {
                Figure figure = reason.figures().get(text.substring(open + 1, close));
                if (figure == null) {
                    throw new TemplateFault(line.file(), line.number(), 1,
                            "'" + key(reason.kind()) + "' has no figure " + text.substring(open, close + 1));
                }
                sentence.append(text, done, open)
                        .append(figure.value() instanceof Reason inner ? within(inner) : Words.of(figure));
                done = close + 1;
            }
            open = text.indexOf('{', open + 1);
        }
        return sentence.append(text, done, text.length()).toString();
    }

    private static boolean isName(String text, int from, int to) {
        for (int i = from; i < to; i++) {
            if (text.charAt(i) < 'a' || text.charAt(i) > 'z') {
                return false;
            }
        }
        return from < to;
    }
}
