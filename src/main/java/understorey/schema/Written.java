package understorey.schema;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Values and descriptions of the schema as an author reads them. */
final class Written {

    /** What YAML, or a reader of its older edition, would not take for this text. */
    private static final Pattern QUOTED = Pattern.compile(".*(: |, | #|:$|^[-*&!>|%@`'\"?#=~]|[\\[\\]{}\\\\\\p{Cntrl}]).*|\\d\\d:\\d\\d|\\s.*|.*\\s|(?i:null|)", Pattern.DOTALL);

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");

    private Written() {
    }

    /** The first example of a key; null if there is none. */
    static @Nullable String first(Map<String, Object> property) {
        return property.get("examples") instanceof List<?> examples ? value(examples.get(0)) : null;
    }

    /** A value in YAML's flow style, on one line. */
    static String value(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return map.entrySet().stream().map(entry -> entry.getKey() + ": " + value(entry.getValue())).collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof List<?> list) {
            return list.stream().map(Written::value).collect(Collectors.joining(", ", "[", "]"));
        }
        String text = String.valueOf(value);
        return QUOTED.matcher(text).matches() && !NUMBER.matcher(text).matches() ? '"' + escaped(text) + '"' : text;
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace("\"", "\\\"").replaceAll("\\p{Cntrl}", " ");
    }

    /** What a key is for, with what only the reader checks and with its other spelling. */
    static String about(Map<String, Object> property) {
        String text = String.valueOf(property.get("description"));
        Object limits = property.get("x-reader");
        return text + (limits == null ? "" : " (" + limits + ")")
                + (property.get("x-also") instanceof String also ? "; also `" + also + "`" : "");
    }

    /** What a key is for, and what holds where it is left out. */
    static String description(Map<String, Object> property) {
        Object leftOut = property.get("x-default");
        return about(property) + (leftOut == null ? "" : "; left out: " + leftOut);
    }
}
