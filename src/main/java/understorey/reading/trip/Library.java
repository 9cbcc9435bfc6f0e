package understorey.reading.trip;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Site;
import understorey.reading.files.Beside;
import understorey.reading.gear.BagReader;
import understorey.reading.site.SiteRead;
import understorey.reading.site.SiteReader;
import understorey.reading.subject.SubjectCatalogue;
import understorey.yaml.Fields;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;
import understorey.yaml.tree.TreeReader;

/** Sites and bags that trips can name, by file name. */
public final class Library {

    public static final String SITES = "sites/";
    public static final String BAGS = "gear/";
    /** Name of the built-in bag: one ordinary phone, hand-held. */
    private static final String PHONE = "phone";

    private final SubjectCatalogue catalogue;
    private final Map<String, SiteRead> sites = new TreeMap<>();
    /** A bag with errors is empty. */
    private final Map<String, Optional<Bag>> bags = new TreeMap<>();
    /** Sites described inside trips, by the name of their page. */
    private final Map<String, Site> inline = new TreeMap<>();
    /** The files that were named since {@link #noting}; {@link #SITES} alone for a site described in place. */
    private Set<String> named = new TreeSet<>();
    private @Nullable Bag phone;
    private AuthorLinks links = new AuthorLinks(List.of(), List.of(), List.of());

    public Library(SubjectCatalogue catalogue) {
        this.catalogue = catalogue;
    }

    public SubjectCatalogue catalogue() {
        return catalogue;
    }

    /** From now on puts each file that a trip names into a set. */
    public Library noting(Set<String> names) {
        named = names;
        return this;
    }

    /** What stands behind a name that was noted; null where nothing does, and for a site that a trip describes. */
    public @Nullable Object named(String name) {
        if (name.startsWith(SITES)) {
            return sites.get(name.substring(SITES.length()));
        }
        String bag = name.substring(BAGS.length());
        return bags.containsKey(bag) || !bag.equals(PHONE) ? bags.get(bag) : phone();
    }

    public void linking(AuthorLinks pages) {
        links = pages;
    }

    public AuthorLinks links() {
        return links;
    }

    public void add(String slug, SiteRead site) {
        sites.put(slug, site);
    }

    public void add(String slug, @Nullable Bag bag) {
        bags.put(slug, Optional.ofNullable(bag));
    }

    /**
     * Site under a key, by file name or described in place.
     *
     * @param trip the name of the trip's page
     */
    SiteRead site(Fields f, String key, Beside beside, String trip) {
        Node node = f.take(key);
        if (node instanceof Node.Mapping mapping) {
            named.add(SITES);
            return own(f, key, SiteReader.read(mapping, null, beside, catalogue, f.findings()), trip);
        }
        String name = f.scalars().pointer(node, "'" + key + "'");
        SiteRead known = name == null ? null : sites.get(name);
        if (name != null && known == null) {
            dangling(f, key, "site", name, sites, "sites");
        }
        named.add(SITES + name);
        return known == null ? SiteRead.unknown(catalogue) : known;
    }

    /** Bag under a key, by file name or described in place; null if it has errors or is unknown. */
    @Nullable Bag bag(Fields f, String key) {
        Node node = f.take(key);
        if (node instanceof Node.Mapping mapping) {
            return BagReader.read(mapping, null, f.findings());
        }
        String name = f.scalars().pointer(node, "'" + key + "'");
        if (name == null) {
            return null;
        }
        named.add(BAGS + name);
        Optional<Bag> known = bags.get(name);
        if (known != null) {
            return known.orElse(null);
        }
        if (name.equalsIgnoreCase(PHONE)) {
            return phone();
        }
        dangling(f, key, "bag", name, bags, "gear");
        return null;
    }

    private @Nullable Bag phone() {
        if (phone == null) {
            Findings findings = SubjectCatalogue.resource(PHONE + ".yaml");
            Node.Mapping node = TreeReader.read(findings);
            phone = node == null ? null : BagReader.read(node, null, findings);
        }
        return phone;
    }

    /** Each site has its own page: if another site has the page name already, the trip's name is added. */
    private SiteRead own(Fields f, String key, SiteRead read, String trip) {
        Site site = read.site();
        if (site == null) {
            return read;
        }
        for (String slug : List.of(site.slug(), site.slug() + "-" + trip)) {
            String other = other(slug, site);
            if (other == null) {
                inline.put(slug, site);
                return new SiteRead(site.withSlug(slug), read.spots(), read.subjects());
            }
            if (!slug.equals(site.slug())) {
                f.refuse(key, "the sites " + Node.quote(site.name()) + " and " + Node.quote(other)
                        + " would share the page sites/" + slug + ".html", "give one of the two another name");
            }
        }
        return read;
    }

    /** The name of another site whose page has that name, in capitals or not; null when there is none. */
    private @Nullable String other(String slug, Site site) {
        for (Map.Entry<String, SiteRead> taken : sites.entrySet()) {
            if (taken.getKey().equalsIgnoreCase(slug)) {
                Site there = taken.getValue().site();
                return there == null ? taken.getKey() : there.name();
            }
        }
        Site earlier = inline.get(slug);
        return earlier == null || earlier.equals(site) ? null : earlier.name();
    }

    private static void dangling(Fields f, String key, String kind, String name, Map<String, ?> known,
                                 String folder) {
        String bare = name.endsWith(".yaml") ? name.substring(0, name.length() - 5) : name;
        TreeSet<String> names = new TreeSet<>(known.keySet());
        if (kind.equals("bag")) {
            names.add(PHONE);
        }
        String help = known.containsKey(bare) ? "leave out '.yaml': " + bare
                : Suggestion.among(names, bare, "known names");
        f.refuse(key, "there is no " + kind + " " + Node.quote(name) + " in the folder '" + folder + "'",
                help != null ? help : "add the file " + folder + "/" + bare + ".yaml");
    }
}
