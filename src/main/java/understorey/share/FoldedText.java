package understorey.share;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Splits a text into words, and folds what does not change a name: case, accents, look-alike letters of other alphabets,
 * figures instead of letters.
 */
final class FoldedText {

    /** Greek and Cyrillic letters, each with the Latin letter of the same index that it looks like. */
    private static final String LOOK_ALIKE = "авеікмнорстухүјѕһԁԛԝґьαβεικνορτυχγηωσςμ";
    private static final String LATIN = "abeikmhopctyxyjshdqwrbabeikvoptuxynwssm";
    private static final String FIGURES = "0134578@$!|";
    private static final String LETTERS = "oleastbasil";
    /** Letters written in two ways: with an accent, or as two letters. */
    private static final String[][] DOUBLED = {{"ä", "ae"}, {"ö", "oe"}, {"ü", "ue"}, {"å", "aa"}, {"ø", "oe"}, {"æ", "ae"}};
    private static final String[][] SINGLE = {{"æ", "ae"}, {"œ", "oe"}, {"ø", "o"}, {"ß", "ss"}, {"ł", "l"}, {"đ", "d"},
        {"ð", "d"}, {"þ", "th"}, {"ı", "i"}, {"ħ", "h"}, {"ŋ", "n"}};

    private FoldedText() {
    }

    /** Words without accents. */
    static List<String> words(String text) {
        return split(text);
    }

    /** Words of a text, for each way to write its accents. */
    static Set<List<String>> readings(String text) {
        Set<List<String>> readings = new LinkedHashSet<>();
        readings.add(split(text));
        readings.add(split(doubled(text)));
        readings.add(split(text.replaceAll("\\p{N}+", " ")));
        return readings;
    }

    /** A name as one word, for each way to write its accents. */
    static Set<String> joined(String name) {
        Set<String> joined = new LinkedHashSet<>();
        for (List<String> words : readings(name)) {
            joined.add(String.join("", words));
        }
        joined.remove("");
        return joined;
    }

    private static String doubled(String text) {
        String doubled = Normalizer.normalize(text, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
        for (String[] pair : DOUBLED) {
            doubled = doubled.replace(pair[0], pair[1]);
        }
        return doubled;
    }

    /** Runs of letters and figures, split at a capital within a word. */
    private static List<String> split(String text) {
        String parted = text.replaceAll("(?<=\\p{Ll})(?=\\p{Lu}\\p{Ll})", " ").replaceAll("(?<=\\p{L})['’ʼ](?=\\p{L})", "");
        String small = Normalizer.normalize(parted, Normalizer.Form.NFKD).replaceAll("\\p{M}+", "").toLowerCase(Locale.ROOT);
        for (String[] pair : SINGLE) {
            small = small.replace(pair[0], pair[1]);
        }
        List<String> words = new ArrayList<>();
        for (String word : small.split("[^\\p{L}\\p{N}@$!|]+")) {
            String folded = folded(word);
            if (!folded.isEmpty()) {
                words.add(folded);
            }
        }
        return words;
    }

    private static String folded(String word) {
        boolean letters = word.codePoints().filter(Character::isLetter).count() >= 3;
        StringBuilder folded = new StringBuilder();
        for (int i = 0; i < word.length(); i++) {
            char letter = word.charAt(i);
            int like = LOOK_ALIKE.indexOf(letter);
            int figure = letters ? FIGURES.indexOf(letter) : -1;
            if (like >= 0) {
                folded.append(LATIN.charAt(like));
            } else if (figure >= 0) {
                folded.append(LETTERS.charAt(figure));
            } else if (Character.isLetterOrDigit(letter) || Character.isSurrogate(letter)) {
                folded.append(letter);
            }
        }
        return folded.toString();
    }
}
