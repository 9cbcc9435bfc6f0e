package understorey.reading;

import java.util.Locale;

/** The part of an address that stands for a name. */
final class Slug {

    private Slug() {
    }

    /** Letters and digits of the name in lower case, hyphens between; empty when it has neither. */
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

    /** True when the name can stand in an address and as a folder as it is. */
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
