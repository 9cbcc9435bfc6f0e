package understorey.reading.files;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Map;

/** The part of an address, and of a file's name, that stands for a name: ASCII in any locale and on any disk. */
public final class Slug {

    /** So many that a name with a trip's added, and an ending, fits the 255 bytes of a file's name. */
    public static final int LONGEST = 100;

    /** Letters that are no letter with a mark, as they are commonly written without their own key. */
    private static final Map<Integer, String> LETTERS = Map.ofEntries(Map.entry((int) 'ø', "o"), Map.entry((int) 'ł', "l"),
            Map.entry((int) 'ß', "ss"), Map.entry((int) 'æ', "ae"), Map.entry((int) 'œ', "oe"), Map.entry((int) 'đ', "d"),
            Map.entry((int) 'ð', "d"), Map.entry((int) 'þ', "th"), Map.entry((int) 'ı', "i"), Map.entry((int) 'ħ', "h"),
            Map.entry((int) 'ŋ', "n"));

    private Slug() {
    }

    /**
     * Letters and digits of a name in lower case, with hyphens between. A name in another script than Latin becomes a
     * number, the same in every run. A name with neither letter nor digit becomes empty.
     */
    public static String of(String name) {
        String latin = latin(name);
        boolean foreign = latin.isEmpty() && name.codePoints().anyMatch(Character::isLetterOrDigit);
        return foreign ? "name-" + Integer.toHexString(name.hashCode()) : latin;
    }

    /** As {@link #of}, but empty for a name in another script. */
    static String latin(String name) {
        StringBuilder slug = new StringBuilder();
        String lower = Normalizer.normalize(name.toLowerCase(Locale.ROOT), Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        for (int i = 0; i < lower.length(); i += Character.charCount(lower.codePointAt(i))) {
            int c = lower.codePointAt(i);
            if (ascii(c)) {
                slug.appendCodePoint(c);
            } else if (LETTERS.containsKey(c)) {
                slug.append(LETTERS.get(c));
            } else if (separates(c) && slug.length() > 0 && slug.charAt(slug.length() - 1) != '-') {
                slug.append('-');
            }
        }
        if (slug.length() > 0 && slug.charAt(slug.length() - 1) == '-') {
            slug.setLength(slug.length() - 1);
        }
        return slug.toString();
    }

    private static boolean ascii(int c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9';
    }

    private static boolean separates(int c) {
        return !Character.isLetterOrDigit(c) && Character.getType(c) != Character.NON_SPACING_MARK && c != '\'' && c != '’';
    }

    /** True if the name can be used in an address and as a folder without a change. */
    static boolean isOne(String name) {
        return !name.isEmpty() && name.chars().allMatch(c -> ascii(c) || c == '-' || c == '_');
    }
}
