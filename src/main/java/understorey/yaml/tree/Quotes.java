package understorey.yaml.tree;

import org.jspecify.annotations.Nullable;

/** Curly quotes, which a word processor puts around values and YAML reads as letters. */
public final class Quotes {

    private static final String CURLY = "\u2018\u2019\u201a\u201c\u201d\u201e\u00ab\u00bb";

    private Quotes() {
    }

    /** Fix for a value in curly quotes; the given fix for any other value. */
    public static @Nullable String straightened(Node node, @Nullable String help) {
        if (node instanceof Node.Scalar scalar) {
            String text = scalar.text().strip();
            int last = text.length() - 1;
            if (last > 0 && CURLY.indexOf(text.charAt(0)) >= 0 && CURLY.indexOf(text.charAt(last)) >= 0) {
                return "use straight quotes: " + Node.quote(text.substring(1, last));
            }
        }
        return help;
    }
}
