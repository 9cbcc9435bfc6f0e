package understorey.reading.site;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import understorey.plan.Edge;
import understorey.plan.Position;
import understorey.plan.Site;
import understorey.plan.SkylinePoint;
import understorey.reading.files.Beside;
import understorey.reading.files.Slug;
import understorey.reading.subject.Countries;
import understorey.reading.subject.SubjectCatalogue;
import understorey.reading.subject.Subjects;
import understorey.yaml.Coordinate;
import understorey.yaml.Fields;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Suggestion;
import understorey.yaml.tree.Node;

/** Reads a site, from its own file or from inside a trip. */
public final class SiteReader {

    /** What browsers and servers take in an address (common practice, no source). */
    private static final int LONGEST_ADDRESS = 2000;

    private static final int MOST_SPOTS = 200;

    private final Fields f;
    private final Findings findings;

    private SiteReader(Fields fields) {
        this.f = fields;
        this.findings = fields.findings();
    }

    /**
     * Reads a site.
     *
     * @param slug   page name; null to make one from the site's name
     * @param beside folder of the CSV files that it names
     */
    public static SiteRead read(Node.Mapping node, @Nullable String slug, Beside beside, SubjectCatalogue catalogue,
                         Findings findings) {
        return new SiteReader(new Fields(node, "this site", findings)).site(slug, beside, catalogue);
    }

    private SiteRead site(@Nullable String slug, Beside beside, SubjectCatalogue catalogue) {
        int before = findings.errors();
        f.require("site", "latitude", "longitude", "time_zone");
        f.atMost(MOST_SPOTS, "spots", "season", "subjects", "cautions");
        String name = f.text("site");
        String publicName = f.text("public_name");
        Position position = position();
        Double elevation = PlaceReader.elevation(f);
        ZoneId zone = zone();
        List<SkylinePoint> skyline = PlaceReader.skyline(f);
        var canopy = PlaceReader.canopy(f);
        if (position != null && zone != null) {
            ZoneCheck.position(f, position, zone);
        }
        SpotReader spots = new SpotReader(f, position);
        var opening = spots.opening();
        var parking = spots.parking();
        Subjects subjects = new Subjects(catalogue, true);
        subjects.describe(f);
        var seasons = SeasonReader.all(f, subjects, beside);
        String access = f.prose("access");
        String reports = reports();
        Boolean sensitive = f.yesNo("sensitive");
        List<String> cautions = f.texts("cautions");
        String notes = f.prose("notes");
        List<Edge> edges = PlaceReader.edges(f);
        String country = country();
        f.done();
        String page = slug == null && name != null ? Slug.of(name) : slug;
        if (page != null && page.isEmpty()) {
            f.refuse("site", "the site name needs a letter or a digit", "use another name");
        }
        if (slug == null) {
            pageName("site", name);
        }
        pageName("public_name", publicName);
        Site site = findings.errors() > before || name == null || page == null || position == null || zone == null ? null
                : new Site(name, page, publicName, position, elevation, zone,
                skyline == null ? List.of() : skyline, canopy, spots.spots(), spots.walks(), opening, parking,
                seasons, new ArrayList<>(subjects.own().values()), access, reports, Boolean.TRUE.equals(sensitive),
                cautions, notes, edges == null ? List.of() : edges, country);
        if (site == null && spots.names().isEmpty()) {
            // The key of the spots may be misspelt.
            spots.names().doubt();
        }
        return new SiteRead(site, spots.names(), subjects);
    }

    /** A page is called by the name of its site. */
    private void pageName(String key, @Nullable String name) {
        if (name != null && Slug.of(name).length() > Slug.LONGEST) {
            f.refuse(key, "'" + key + "' is the name of a page and too long: " + name.codePointCount(0, name.length())
                    + " characters; a page's may have " + Slug.LONGEST, "give the site a shorter name");
        }
    }

    private @Nullable Position position() {
        Double latitude = Coordinate.latitude(f.scalars(), f.take("latitude"), "'latitude'",
                "check whether it is swapped with 'longitude'");
        Double longitude = Coordinate.longitude(f.scalars(), f.take("longitude"), "'longitude'", null);
        return latitude == null || longitude == null ? null : new Position(latitude, longitude);
    }

    private @Nullable ZoneId zone() {
        String name = f.text("time_zone");
        if (name == null) {
            return null;
        }
        Set<String> known = ZoneId.getAvailableZoneIds();
        if (known.contains(name)) {
            return ZoneId.of(name);
        }
        String nearest = Suggestion.nearest(new TreeSet<>(known), name);
        f.refuse("time_zone", "there is no time zone " + Node.quote(name),
                nearest != null ? "did you mean '" + nearest + "'?" : "a region and a city, for example Europe/London");
        return null;
    }

    /** Code of ISO 3166-1 alpha-2. */
    private @Nullable String country() {
        String text = f.text("country");
        if (text == null) {
            return null;
        }
        String code = text.strip().toUpperCase(Locale.ROOT);
        if (Countries.isCode(code)) {
            return code;
        }
        f.refuse("country", "there is no country code " + Node.quote(text), Countries.help(text.strip()));
        return null;
    }

    private @Nullable String reports() {
        String address = f.text("reports", LONGEST_ADDRESS);
        if (address != null && !(address.startsWith("https://") || address.startsWith("http://"))) {
            f.refuse("reports", "'reports' must be a web address, not the text " + Node.quote(address),
                    "begin it with https://");
        }
        return address;
    }
}
