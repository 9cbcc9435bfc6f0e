package understorey.pages.preview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A style sheet as a rasteriser understands it: without variables, media, and elements around a class. The first value of a
 * variable counts, which is the one for light paper, unless the palette of the sketch has its own.
 */
final class FlatStyle {

    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/");
    private static final Pattern MEDIA = Pattern.compile("(?s)@[^{;]+\\{(?:[^{}]*\\{[^{}]*\\})*[^{}]*\\}");
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
    private static final Pattern VARIABLE = Pattern.compile("(--[\\w-]+):\\s*([^;}]+)");
    private static final int MOST_NESTED = 3;
    private static final Pattern USE = Pattern.compile("var\\((--[\\w-]+)(?:,[^)]*)?\\)");

    /** The palette that a sketch is painted by, and what it adds for its subject. */
    private static final Pattern PALETTE = Pattern.compile("<g class=\"([\\w-]+)\" style=\"(--[^\"]+)\"");

    private final String plain;
    private final Map<String, String> variables = new HashMap<>();

    FlatStyle(String css) {
        plain = MEDIA.matcher(COMMENT.matcher(css).replaceAll("")).replaceAll("");
        add(plain, variables);
    }

    private static void add(String declarations, Map<String, String> variables) {
        VARIABLE.matcher(declarations).results().forEach(found -> variables.putIfAbsent(found.group(1), found.group(2).strip()));
    }

    /** The rules for a sketch, given as inline element. */
    String rules(String svg) {
        Map<String, String> painted = new HashMap<>();
        Matcher palette = PALETTE.matcher(svg);
        if (palette.find()) {
            add(palette.group(2), painted);
            RULE.matcher(plain).results().filter(rule -> rule.group(1).strip().equals("svg ." + palette.group(1)))
                    .findFirst().ifPresent(rule -> add(rule.group(2), painted));
        }
        variables.forEach(painted::putIfAbsent);
        StringBuilder flat = new StringBuilder();
        Matcher rule = RULE.matcher(plain);
        while (rule.find()) {
            List<String> selectors = new ArrayList<>();
            for (String selector : rule.group(1).split(",")) {
                String own = own(selector.strip());
                if (own.startsWith(".") && own.indexOf(':') < 0) {
                    selectors.add(own);
                }
            }
            if (!selectors.isEmpty()) {
                flat.append(String.join(",", selectors)).append('{').append(filled(rule.group(2), painted)).append("}\n");
            }
        }
        return flat.toString();
    }

    /** The value of a variable, such as a colour. */
    String value(String variable) {
        return variables.getOrDefault(variable, "");
    }

    /** The class at the end of a selector; for all that an element holds, that element. */
    private static String own(String selector) {
        String named = selector.endsWith(" *") ? selector.substring(0, selector.length() - 2) : selector;
        String last = named.substring(named.lastIndexOf(' ') + 1);
        return last.indexOf('.') < 0 ? last : last.substring(last.indexOf('.'));
    }

    /** A variable may stand for another one. */
    private static String filled(String declarations, Map<String, String> variables) {
        String filled = declarations;
        for (int depth = 0; depth < MOST_NESTED; depth++) {
            filled = USE.matcher(filled).replaceAll(use -> Matcher.quoteReplacement(variables.getOrDefault(use.group(1), "")));
        }
        return filled;
    }
}
