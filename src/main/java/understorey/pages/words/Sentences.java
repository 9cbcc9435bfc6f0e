package understorey.pages.words;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.In;
import understorey.advice.Measure;
import understorey.plan.Display;
import understorey.scene.Fact;
import understorey.scene.Wording;

/**
 * The words for advice, for what drawings say and for figures in the units of the reader. Three files hold one line a record,
 * {@code focal-short = … {times} …}; a name in braces is replaced by the component of that name, worded.
 */
public final class Sentences implements Wording {

    /** What is said of a picture and of what takes it, of the day, and in drawings. */
    private static final List<String> FILES = List.of("sentences-pictures.txt", "sentences-day.txt", "sentences-drawings.txt");

    /** A sentence, and where it stands. */
    private record Line(String file, int number, String text) {
    }

    /** A record to be worded: the name of its sentence, and what the sentence may show. */
    private record Shape(String key, Map<String, Part> parts) {

        static Shape of(Class<?> type) {
            Map<String, Part> parts = new HashMap<>();
            for (RecordComponent component : type.getRecordComponents()) {
                In in = component.getAnnotation(In.class);
                parts.put(component.getName(), new Part(component.getAccessor(), in == null ? null : in.value()));
            }
            return new Shape(Sentences.key(type), parts);
        }
    }

    /**
     * A component of a record to be worded.
     *
     * @param measure null where its type says it all
     */
    private record Part(Method accessor, @Nullable Measure measure) {

        Object of(Object told) {
            try {
                return accessor.invoke(told);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
    }

    private static final ClassValue<Shape> SHAPES = new ClassValue<>() {
        @Override
        protected Shape computeValue(Class<?> type) {
            return Shape.of(type);
        }
    };

    /** A full stop before a small letter is an abbreviation's, and a question belongs to its answer. */
    private static final Pattern BETWEEN = Pattern.compile("(?<=[.!])\\s+(?=\\p{Lu})");
    private static final Pattern WITHIN = Pattern.compile("(?<=.)(?=[A-Z])");

    private final Map<String, Line> lines;
    private final Values values;

    private Sentences(Map<String, Line> lines, Values values) {
        this.lines = lines;
        this.values = values;
    }

    /** Those of the templates, whose texts are found by the names of their files. */
    public static Sentences of(UnaryOperator<String> templates, Display display) {
        return read(FILES.stream().map(templates).toList(), display);
    }

    /** Those that the program comes with, without the template library, which would take a tenth of a second to load. */
    public static Sentences builtIn() {
        return of(BuiltInTemplates::text, Display.USUAL);
    }

    /** The sentences of a text, in order; of an empty one itself. */
    public static List<String> split(String text) {
        return List.of(BETWEEN.split(text));
    }

    /**
     * Reads lines of {@code kind = sentence}; empty lines and lines that begin with {@code #} say nothing.
     *
     * @param texts one a file, of the pictures, of the day and of the drawings; the latter may be left out
     */
    static Sentences read(List<String> texts, Display display) {
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
        return new Sentences(lines, Values.of(display));
    }

    /** The same sentences for readers of other units or another clock. */
    public Sentences in(Display display) {
        return new Sentences(lines, Values.of(display));
    }

    /** The name of a fact without figures: {@code LOW_SUN} is {@code low-sun}. */
    static String key(Enum<?> word) {
        return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The name of a record in the file: {@code FocalShort} is {@code focal-short}. */
    static String key(Class<?> kind) {
        return WITHIN.matcher(kind.getSimpleName()).replaceAll("-").toLowerCase(Locale.ROOT);
    }

    /**
     * The sentence for a reason, its first letter large; an f-number keeps its small f.
     *
     * @throws TemplateFault when the file has no such line, or one that shows a figure which the reason has not
     */
    public String of(Advice reason) {
        String sentence = within(reason);
        return sentence.isEmpty() || sentence.startsWith("f/") ? sentence
                : sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    /** A sentence a reason, in their order. */
    public List<String> of(List<Advice> reasons) {
        return reasons.stream().map(this::of).toList();
    }

    /** The sentence as it stands, to follow a colon. */
    public String within(Advice reason) {
        return worded(reason);
    }

    /** The words of a drawing. */
    @Override
    public String of(Fact fact) {
        return worded(fact);
    }

    @Override
    public double scaleUnitM(double longestM) {
        return values.units().scaleUnitM(longestM);
    }

    /** A figure, a time or a name: a dash for none, a sentence for advice. */
    public String of(@Nullable Object value, Measure measure) {
        return value == null ? Words.NONE : value instanceof Advice advice ? of(advice) : values.of(value, measure);
    }

    /** The units that these sentences are in. */
    public Units units() {
        return values.units();
    }

    /** How these sentences tell the time. */
    public ClockWords clock() {
        return values.clock();
    }

    /** One pass over the line: a name of the author's that holds braces is shown as it is. */
    private String worded(Object told) {
        Shape shape = told instanceof Enum<?> word ? new Shape(key(word), Map.of()) : SHAPES.get(told.getClass());
        Line line = lines.get(shape.key());
        if (line == null) {
            throw told instanceof Fact ? new TemplateFault(FILES.get(2), 1, 1, "no line for '" + shape.key() + "'")
                    : new TemplateFault(FILES.get(0), 1, 1, "no line for '" + shape.key() + "', nor in " + FILES.get(1));
        }
        String text = line.text();
        StringBuilder sentence = new StringBuilder(2 * text.length());
        int done = 0;
        int open = text.indexOf('{');
        while (open >= 0) {
            int close = text.indexOf('}', open);
            if (isName(text, open + 1, close)) {
                Part part = shape.parts().get(text.substring(open + 1, close));
                if (part == null) {
                    throw new TemplateFault(line.file(), line.number(), 1,
                            "'" + shape.key() + "' has no figure " + text.substring(open, close + 1));
                }
                Object value = part.of(told);
                sentence.append(text, done, open).append(value instanceof Advice || value instanceof Fact ? worded(value)
                        : values.of(value, part.measure()));
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
