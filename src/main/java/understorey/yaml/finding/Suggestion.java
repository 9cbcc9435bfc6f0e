package understorey.yaml.finding;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Finds the known name that a mistyped one is meant to be. */
public final class Suggestion {

    /** More names than this are not listed. */
    private static final int LISTED = 40;
    /** So many letters show which name was meant. */
    private static final int SEVERAL = 4;

    private Suggestion() {
    }

    /**
     * "did you mean 'closest'?" if a name is near; else the known names, sorted, after {@code intro};
     * null if there are none, or too many.
     */
    public static @Nullable String among(Collection<String> known, String written, String intro) {
        String nearest = nearest(known, written);
        if (nearest != null) {
            return "did you mean '" + nearest + "'?";
        }
        if (known.isEmpty() || known.size() > LISTED) {
            return null;
        }
        return intro + ": " + known.stream().sorted().collect(Collectors.joining(", "));
    }

    /** Like {@link #among}, for names that may be among other words, for example soft in "soft light". */
    public static @Nullable String amongWords(Collection<String> known, String written, String intro) {
        String meant = meant(known, written);
        return meant != null ? "did you mean '" + meant + "'?" : among(known, written, intro);
    }

    /** Fix for several names that were written as one text: the same names as a list. */
    public static String list(Collection<String> known, String written) {
        List<String> meant = Arrays.stream(written.split(",|;|/|\\+| and | or ")).map(part -> meant(known, part.strip()))
                .filter(Objects::nonNull).distinct().toList();
        return meant.isEmpty() ? "write a list in brackets, with one or more of: " + String.join(", ", known)
                : meant.size() == 1 ? "did you mean '" + meant.get(0) + "'?" : "write it as [" + String.join(", ", meant) + "]";
    }

    /** Longest name whose words were all written; else the nearest name; null if there is neither. */
    private static @Nullable String meant(Collection<String> known, String written) {
        List<String> words = List.of(written.toLowerCase(Locale.ROOT).split("[ -]+"));
        return known.stream().filter(name -> words.containsAll(List.of(name.split("[ -]+"))))
                .reduce((longest, name) -> name.length() > longest.length() ? name : longest).orElseGet(() -> nearest(known, written));
    }

    /**
     * The nearest name, if its distance is at most a third of what was written, or 1; of equals the first
     * that is as long as what was written, else the first.
     */
    public static @Nullable String nearest(Collection<String> known, String written) {
        int limit = Math.max(1, written.length() / 3);
        String nearest = null;
        for (String name : known) {
            if (Math.abs(name.length() - written.length()) > limit) {
                continue;
            }
            int distance = distance(name, written);
            boolean closer = nearest == null || distance < limit
                    || name.length() == written.length() && nearest.length() != written.length();
            if (distance <= limit && closer) {
                nearest = name;
                limit = distance;
            }
        }
        return nearest != null ? nearest : begunBy(known, written);
    }

    /** The only name that begins with what was written; null for less than several letters. */
    private static @Nullable String begunBy(Collection<String> known, String written) {
        List<String> begun = known.stream().filter(name -> name.startsWith(written)).toList();
        return written.length() >= SEVERAL && begun.size() == 1 ? begun.get(0) : null;
    }

    /**
     * Letters to put in, take out, change, or swap with their neighbour, case ignored: the optimal string
     * alignment distance (Damerau 1964 with the restriction that no part is edited twice).
     */
    public static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] above = new int[b.length() + 1];
        int[] here = new int[b.length() + 1];
        Arrays.setAll(above, j -> j);
        for (int i = 1; i <= a.length(); i++) {
            here[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = same(a.charAt(i - 1), b.charAt(j - 1)) ? 0 : 1;
                int least = Math.min(Math.min(here[j - 1], above[j]) + 1, above[j - 1] + change);
                if (i > 1 && j > 1 && same(a.charAt(i - 1), b.charAt(j - 2)) && same(a.charAt(i - 2), b.charAt(j - 1))) {
                    least = Math.min(least, before[j - 2] + 1);
                }
                here[j] = least;
            }
            int[] spare = before;
            before = above;
            above = here;
            here = spare;
        }
        return above[b.length()];
    }

    private static boolean same(char a, char b) {
        return Character.toLowerCase(a) == Character.toLowerCase(b);
    }
}
