package understorey.reading;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Supplier;
import understorey.yaml.finding.Findings;
import understorey.yaml.tree.Locator;

/** Where the values of each file are written, by the file's name without its ending. */
public final class Locators {

    final Map<String, Supplier<Findings>> trips = new HashMap<>();
    final Map<String, Supplier<Findings>> sites = new HashMap<>();
    final Map<String, Supplier<Findings>> bags = new HashMap<>();

    /** Where values stand follows from the files: two readings of the same ones are alike. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Locators locators && trips.keySet().equals(locators.trips.keySet())
                && sites.keySet().equals(locators.sites.keySet()) && bags.keySet().equals(locators.bags.keySet());
    }

    @Override
    public int hashCode() {
        return trips.keySet().hashCode();
    }

    /** In a trip, and on into the site and the bags that it names. */
    public Locator trip(String slug) {
        return new Locator(file(trips, slug), sites, bags);
    }

    /** In the file of a site. */
    public Locator site(String slug) {
        return new Locator(file(sites, slug), sites, bags);
    }

    private static Supplier<Findings> file(Map<String, Supplier<Findings>> files, String slug) {
        Supplier<Findings> file = files.get(slug);
        if (file == null) {
            throw new IllegalArgumentException("not a file that was read: " + slug);
        }
        return file;
    }
}
