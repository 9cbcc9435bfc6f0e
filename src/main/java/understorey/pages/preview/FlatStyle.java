package understorey.pages.preview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A style sheet as a rasteriser understands it: without variables, media, and elements around a class. The first value of a
 * variable counts, which is the one for light paper.
 */
final class FlatStyle {

    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/");
    private static final Pattern MEDIA = Pattern.compile("(?s)@[^{;]+\\{(?:[^{}]*\\{[^{}]*\\})*[^{}]*\\}");
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
    private static final Pattern VARIABLE = Pattern.compile("(--[\\w-]+):\\s*([^;}]+)");
    private static final Pattern USE = Pattern.compile("var\\((--[\\w-]+)(?:,[^)]*)?\\)");

    private final Map<String, String> variables = new HashMap<>();
    private final String rules;

    FlatStyle(String css) {
        String plain = MEDIA.matcher(COMMENT.matcher(css).replaceAll("")).replaceAll("");
        VARIABLE.matcher(plain).results().forEach(found -> variables.putIfAbsent(found.group(1), found.group(2).strip()));
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
                flat.append(String.join(",", selectors)).append('{').append(filled(rule.group(2))).append("}\n");
            }
        }
        rules = flat.toString();
    }

    String rules() {
        return rules;
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

    private String filled(String declarations) {
        return USE.matcher(declarations).replaceAll(use -> Matcher.quoteReplacement(value(use.group(1))));
    }
}
