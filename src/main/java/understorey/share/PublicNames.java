package understorey.share;

import java.text.Normalizer;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.plan.Site;

/** Names on a page that replace those of a sensitive site and its spots. */
final class PublicNames {

    private static final String UNNAMED = "A wood";

    private final String siteName;
    private final Map<String, String> spots = new LinkedHashMap<>();

    private PublicNames(Site site) {
        String publicName = site.publicName();
        siteName = publicName == null || publicName.isBlank() ? UNNAMED : publicName;
        for (int i = 0; i < site.spots().size(); i++) {
            spots.putIfAbsent(site.spots().get(i).name(), "Spot " + (i + 1));
        }
    }

    static PublicNames of(Site site) {
        return new PublicNames(site);
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

    /** Replacement for the name of a spot; null for the site itself. */
    @Nullable String spot(@Nullable String name) {
        return name == null ? null : spots.get(name);
    }
}
