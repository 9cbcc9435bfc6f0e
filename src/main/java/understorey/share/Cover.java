package understorey.share;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import understorey.plan.Site;

/**
 * Replaces the names of a sensitive site and its spots on a page. In free text each name is found as whole words, in
 * upper or lower case, with anything between its words (a line break, a hyphen, Markdown). Parts of a name, nicknames and
 * misspellings are not found: the author must leave them out.
 */
final class Cover {

    private static final String UNNAMED = "A wood";
    /** Latitude and longitude as people write them: two numbers in a row with two or more decimals. */
    private static final String POSITION = "[-−+]?\\d{1,2}[.,]\\d{2,}\\s*°?\\s*[NS]?\\s*[,;/ ]\\s*[-−+]?\\d{1,3}[.,]\\d{2,}(?:\\s*°?\\s*[EW])?";
    private static final String BETWEEN_WORDS = "[^\\p{L}\\p{N}]{1,5}";

    private final String siteName;
    private final Map<String, String> spots = new LinkedHashMap<>();
    private final List<String> replacements = new ArrayList<>();
    private final Pattern secrets;
    private final Pattern positions = Pattern.compile(POSITION);

    private Cover(Site site) {
        boolean named = site.publicName() != null && !site.publicName().isBlank();
        siteName = named ? site.publicName() : UNNAMED;
        for (int i = 0; i < site.spots().size(); i++) {
            spots.putIfAbsent(site.spots().get(i).name(), "Spot " + (i + 1));
        }
        Map<String, String> all = new LinkedHashMap<>();
        all.put(site.name(), siteName);
        if (site.slug() != null) {
            all.putIfAbsent(site.slug(), siteName);
        }
        spots.forEach(all::putIfAbsent);
        secrets = Pattern.compile(alternatives(all),
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE | Pattern.UNICODE_CHARACTER_CLASS);
    }

    static Cover of(Site site) {
        return new Cover(site);
    }

    /** One group per name, longest first, so that "Upper gate" is not taken for "gate". */
    private String alternatives(Map<String, String> all) {
        List<String> groups = new ArrayList<>();
        all.entrySet().stream()
                .sorted(Comparator.comparing(entry -> -entry.getKey().length()))
                .forEach(entry -> {
                    String words = words(entry.getKey());
                    if (!words.isEmpty()) {
                        groups.add("(" + words + ")");
                        replacements.add(entry.getValue());
                    }
                });
        // Without names, the pattern must match nothing, not everything.
        String any = groups.isEmpty() ? "(?!)" : String.join("|", groups);
        return "(?<![\\p{L}\\p{N}])(?:" + any + ")(?![\\p{L}\\p{N}])";
    }

    private static String words(String name) {
        return Pattern.compile("[^\\p{L}\\p{N}]+").splitAsStream(name)
                .filter(word -> !word.isEmpty())
                .map(Pattern::quote)
                .collect(Collectors.joining(BETWEEN_WORDS));
    }

    String siteName() {
        return siteName;
    }

    /** Name of the page, from the public name alone: lower-case letters, digits and hyphens. */
    String slug() {
        String plain = Normalizer.normalize(siteName, Normalizer.Form.NFD).replaceAll("\\p{M}+", "");
        String slug = plain.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
        return slug.isEmpty() ? "a-wood" : slug;
    }

    /** Replacement for the name of a spot; null for null. */
    String spot(String name) {
        return name == null ? null : spots.getOrDefault(name, text(name));
    }

    /** The text with every covered name replaced and every position left out; null for null. */
    String text(String text) {
        if (text == null) {
            return null;
        }
        Matcher found = secrets.matcher(positions.matcher(text).replaceAll("(position withheld)"));
        return found.replaceAll(match -> {
            int group = 1;
            while (match.group(group) == null) {
                group++;
            }
            return Matcher.quoteReplacement(replacements.get(group - 1));
        });
    }
}
