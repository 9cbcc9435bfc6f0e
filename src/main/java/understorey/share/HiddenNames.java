package understorey.share;

import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import understorey.plan.Site;
import understorey.plan.Spot;

/**
 * The names that public pages of a sensitive site hide, and texts that come near them: accents, plurals, joined or parted
 * words, look-alike letters and, from six letters on, one typing error. In a name of several words, each word counts that
 * is not a kind of landscape. In texts that are withheld, such as the access, words with a capital count.
 */
final class HiddenNames {

    private static final int TELLING = 4;
    private static final int LONG = 6;
    private static final int VERY_LONG = 10;
    private static final Pattern PROPER = Pattern.compile("(?<=[\\p{L}\\d,;:()'\"-] ?)\\p{Lu}[\\p{L}'’-]{3,}");
    private static final List<String> PLURALS = List.of("s", "es", "en", "n", "er", "e", "ne", "erne");

    private final Set<String> whole = new LinkedHashSet<>();
    private final Set<String> kinds = new HashSet<>();
    private final Set<String> reviewed = new HashSet<>();

    private HiddenNames() {
    }

    static HiddenNames of(Site site, List<String> reviewed) {
        HiddenNames names = new HiddenNames();
        names.add(site.name());
        names.add(site.slug());
        names.mentioned(site.access());
        names.mentioned(site.notes());
        for (Spot spot : site.spots()) {
            names.add(spot.name());
            names.mentioned(spot.notes());
        }
        if (site.reports() != null) {
            names.host(site.reports());
        }
        for (String word : reviewed) {
            names.reviewed.addAll(FoldedText.joined(word));
        }
        return names;
    }

    private void add(String name) {
        List<String> words = FoldedText.words(name);
        for (String joined : FoldedText.joined(name)) {
            if (joined.codePoints().filter(Character::isLetter).count() >= 1 && joined.length() >= 2) {
                whole.add(joined);
                if (words.size() == 1 && Landscape.isKind(joined)) {
                    kinds.add(joined);
                }
            }
        }
        for (String word : words.size() > 1 ? words : List.<String>of()) {
            if (word.length() >= TELLING && !Landscape.isKind(word)) {
                whole.add(word);
            }
        }
    }

    /** Adds the proper names of a text: words with a capital within a sentence. */
    private void mentioned(@Nullable String text) {
        Matcher proper = PROPER.matcher(text == null ? "" : text);
        while (proper.find()) {
            String word = FoldedText.words(proper.group()).get(0);
            if (word.length() >= TELLING && !Landscape.isKind(word)) {
                whole.add(word);
            }
        }
    }

    private void host(String address) {
        try {
            String host = URI.create(address).getHost();
            if (host != null) {
                whole.add(host.toLowerCase(Locale.ROOT).replaceAll("^www\\.", "").replaceAll("[^a-z0-9]", ""));
            }
        } catch (IllegalArgumentException odd) {
            whole.addAll(FoldedText.joined(address));
        }
    }

    /** The words of a text that come near a hidden name and are not reviewed. */
    Set<String> in(String text) {
        Set<String> found = new TreeSet<>();
        for (List<String> words : FoldedText.readings(text)) {
            for (String name : whole) {
                find(words, name, found);
            }
        }
        return found;
    }

    private void find(List<String> words, String name, Set<String> found) {
        int longest = name.length() + (name.length() >= LONG ? 3 : 2);
        for (int from = 0; from < words.size(); from++) {
            StringBuilder run = new StringBuilder();
            List<String> shown = new ArrayList<>();
            for (int to = from; to < words.size() && (to == from || run.length() + words.get(to).length() <= longest); to++) {
                run.append(words.get(to));
                shown.add(words.get(to));
                String joined = run.toString();
                if (near(joined, name, to == from ? 0 : joined.length() - words.get(to).length())) {
                    if (!passed(joined)) {
                        found.add(String.join(" ", shown));
                    }
                    break;
                }
            }
        }
    }

    private boolean passed(String run) {
        return reviewed.contains(run) || PLURALS.stream().anyMatch(end -> run.endsWith(end)
                && reviewed.contains(run.substring(0, run.length() - end.length())));
    }

    /**
     * Whether words run together come near a name.
     *
     * @param before letters before the last of several words; 0 for one word alone
     */
    private boolean near(String run, String name, int before) {
        if (run.equals(name) || plural(run, name) || plural(name, run)) {
            return true;
        }
        if (name.length() >= TELLING + 1 && (before == 0 ? run.contains(name)
                : name.length() >= LONG && run.startsWith(name) && before < name.length())) {
            return true;
        }
        if (name.codePoints().anyMatch(Character::isIdeographic)) {
            return run.contains(name);
        }
        int slips = name.length() >= VERY_LONG ? 2 : name.length() >= LONG && !kinds.contains(name) ? 1 : 0;
        return slips > 0 && Math.abs(run.length() - name.length()) <= slips && run.charAt(0) == name.charAt(0)
                && Slips.between(run, name) <= slips
                || slips > 0 && run.length() == name.length() && Slips.between(run, name) <= 1;
    }

    private static boolean plural(String longer, String shorter) {
        return shorter.length() >= 3 && longer.length() > shorter.length() && longer.startsWith(shorter)
                && PLURALS.contains(longer.substring(shorter.length()))
                || longer.endsWith("ies") && shorter.equals(longer.substring(0, longer.length() - 3) + "y");
    }
}
