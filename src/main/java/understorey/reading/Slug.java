package understorey.reading;

import java.util.Locale;

/** Turns names into parts of an address. */
final class Slug {

    private Slug() {
    }

    /** Letters and digits of a name in lower case, with hyphens between; empty if it has neither. */
    static String of(String name) {
        StringBuilder slug = new StringBuilder();
        String lower = name.toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i += Character.charCount(lower.codePointAt(i))) {
            int c = lower.codePointAt(i);
            if (Character.isLetterOrDigit(c)) {
                slug.appendCodePoint(c);
            } else if (slug.length() > 0 && slug.charAt(slug.length() - 1) != '-' && c != '\'' && c != '’') {
                slug.append('-');
            }
        }
        if (slug.length() > 0 && slug.charAt(slug.length() - 1) == '-') {
            slug.setLength(slug.length() - 1);
        }
        return slug.toString();
    }

    /** True if the name can be used in an address and as a folder without a change. */
    static boolean isOne(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (!Character.isLetterOrDigit(c) && c != '-' && c != '_') {
                return false;
            }
        }
        return !name.isEmpty();
    }
}
