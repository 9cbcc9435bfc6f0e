package understorey.pages.json;

import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A tree of maps, lists, numbers, truths and texts as it is written: one space a level, line feeds, and no space between the items
 * of a list. What fits on a line is on one, and so is every list of figures, times and words, because a change in a column is then
 * a change of one line.
 */
final class JsonText {

    private static final int WIDTH = 200;
    /** Longer texts are sentences, and have a line each. */
    private static final int WORD = 40;

    private final StringBuilder text = new StringBuilder(1 << 16);

    private JsonText() {
    }

    static String of(@Nullable Object tree) {
        JsonText json = new JsonText();
        json.write(tree, 0, 0);
        return json.text.append('\n').toString();
    }

    /** On one line where it fits, else a line a member. */
    private void write(@Nullable Object tree, int depth, int column) {
        int start = text.length();
        boolean figures = tree instanceof List<?> list && list.stream().noneMatch(JsonText::needsLines);
        if (!onOneLine(tree, figures ? Integer.MAX_VALUE : start + WIDTH - column)) {
            text.setLength(start);
            if (tree instanceof Map<?, ?> map) {
                String separator = "{";
                for (Map.Entry<?, ?> member : map.entrySet()) {
                    newLine(separator, depth + 1);
                    String key = quoted(member.getKey()) + ": ";
                    text.append(key);
                    write(member.getValue(), depth + 1, depth + 1 + key.length());
                    separator = ",";
                }
                newLine("", depth);
                text.append('}');
            } else if (tree instanceof List<?> list) {
                items(list, depth);
            } else {
                onOneLine(tree, Integer.MAX_VALUE);
            }
        }
    }

    /** What needs a line of its own has one; what is short shares one with its neighbours. */
    private void items(List<?> list, int depth) {
        String separator = "[";
        boolean together = false;
        for (Object item : list) {
            boolean brief = !needsLines(item);
            if (together && brief) {
                text.append(",");
            } else {
                newLine(separator, depth + 1);
            }
            write(item, depth + 1, depth + 1);
            together = brief;
            separator = ",";
        }
        newLine("", depth);
        text.append(']');
    }

    private void newLine(String before, int depth) {
        text.append(before).append('\n').append(" ".repeat(depth));
    }

    /** False as soon as the text is longer than that. */
    private boolean onOneLine(@Nullable Object tree, int end) {
        if (tree instanceof Map<?, ?> map) {
            String separator = "{";
            for (Map.Entry<?, ?> member : map.entrySet()) {
                text.append(separator).append(quoted(member.getKey())).append(": ");
                if (!onOneLine(member.getValue(), end)) {
                    return false;
                }
                separator = ", ";
            }
            text.append(map.isEmpty() ? "{}" : "}");
        } else if (tree instanceof List<?> list) {
            String separator = "[";
            for (Object item : list) {
                text.append(separator);
                if (!onOneLine(item, end)) {
                    return false;
                }
                separator = ",";
            }
            text.append(list.isEmpty() ? "[]" : "]");
        } else if (tree instanceof BigDecimal number) {
            text.append(number.toPlainString());
        } else {
            text.append(tree instanceof String ? quoted(tree) : String.valueOf(tree));
        }
        return text.length() <= end;
    }

    private static boolean needsLines(@Nullable Object item) {
        return item instanceof String text && text.length() > WORD || item instanceof Map || item instanceof List;
    }

    private static String quoted(Object text) {
        return "\"" + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text.toString())) + "\"";
    }
}
