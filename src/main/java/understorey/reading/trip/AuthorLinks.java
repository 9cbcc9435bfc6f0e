package understorey.reading.trip;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;
import understorey.advice.ProseLimit;
import understorey.yaml.finding.Findings;
import understorey.yaml.finding.Pos;
import understorey.yaml.tree.Node;

/**
 * The links in the author's Markdown: web addresses, and pages of the site. The page of a site that a trip describes
 * has no name to rely on, since other trips may take it, so no link leads there.
 */
public final class AuthorLinks {

    private static final Set<String> MARKDOWN = Set.of("story", "notes", "otherwise", "access", "cautions");
    private static final List<String> FILES = List.of("index.html", "field-sheet.html", "plan.md",
            "plan.json", "trip.ics", "spots.gpx");
    private static final List<String> SCHEMES = List.of("http", "https", "mailto", "tel");
    /** RFC 3986, 3.1. */
    private static final Pattern SCHEME = Pattern.compile("([A-Za-z][A-Za-z0-9+.-]*):.*", Pattern.DOTALL);
    private static final DataHolder OPTIONS = new MutableDataSet().set(Parser.SPACE_IN_LINK_URLS, true).toImmutable();
    /** Stands for the folder of a text that several pages show. */
    private static final String ANY = "-";

    private final Set<String> pages = new TreeSet<>(List.of("/index.html", "/subjects.html"));
    private final String example;

    /** Links among the pages of these files, by their names. */
    public AuthorLinks(List<String> trips, List<String> sites, List<String> bags) {
        for (String trip : trips) {
            FILES.forEach(file -> pages.add("/" + trip + "/" + file));
        }
        sites.forEach(site -> pages.add("/sites/" + site + ".html"));
        bags.forEach(bag -> pages.add("/gear/" + bag + ".html"));
        example = trips.isEmpty() ? "../index.html" : "../" + trips.get(0) + "/index.html";
    }

    /** Looks through a trip; its site's texts are shown on the page of the site too. */
    void trip(Node.Mapping trip, String name, Findings findings) {
        blocks(trip, name, findings);
    }

    /** Looks through a site. */
    public void site(Node.Mapping site, Findings findings) {
        blocks(site, ANY, findings);
    }

    private void blocks(@Nullable Node node, String folder, Findings findings) {
        if (node instanceof Node.Seq list) {
            list.items().forEach(item -> blocks(item, folder, findings));
        } else if (node instanceof Node.Mapping block) {
            for (Map.Entry<String, Node.Entry> entry : block.entries().entrySet()) {
                Node value = entry.getValue().value();
                if (MARKDOWN.contains(entry.getKey())) {
                    texts(value, folder, findings);
                } else {
                    blocks(value, entry.getKey().equals("site") ? ANY : folder, findings);
                }
            }
        }
    }

    private void texts(@Nullable Node node, String folder, Findings findings) {
        if (node instanceof Node.Seq list) {
            list.items().forEach(item -> texts(item, folder, findings));
        } else if (node instanceof Node.Scalar scalar && mayLink(scalar.text())) {
            for (String target : targets(scalar.text())) {
                check(target, folder, findings.source().find(target, scalar.pos()), findings);
            }
        }
    }

    /** Most texts have no links; a text that passes a limit is an error already. */
    private static boolean mayLink(String text) {
        return (text.contains("](") || text.contains("]:") || text.indexOf('<') >= 0) && ProseLimit.passed(text).isEmpty();
    }

    private static Set<String> targets(String markdown) {
        Document document = Parser.builder(OPTIONS).build().parse(markdown);
        return StreamSupport.stream(document.getDescendants().spliterator(), false).map(node -> target(node, document))
                .filter(Objects::nonNull).map(BasedSequence::unescape).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private static @Nullable BasedSequence target(com.vladsch.flexmark.util.ast.Node node, Document document) {
        if (node instanceof LinkRef link) {
            Reference reference = link.getReferenceNode(document);
            return reference == null ? null : reference.getUrl();
        }
        return node instanceof Link link ? link.getUrl() : node instanceof AutoLink link ? link.getUrl() : null;
    }

    private void check(String target, String folder, Pos place, Findings findings) {
        Matcher scheme = SCHEME.matcher(target);
        if (scheme.matches()) {
            if (!SCHEMES.contains(scheme.group(1).toLowerCase(Locale.ROOT))) {
                findings.warning(place, "a link that begins with '" + Node.clip(scheme.group(1)) + ":' is left out of the pages",
                        "links may begin with https:, http:, mailto: or tel:");
            }
        } else if (!leads(target, folder)) {
            findings.error(place, "the link " + Node.quote(target) + " leads to no page of this site",
                    target.startsWith("www.") ? "write https://" + Node.clip(target)
                            : "write a web address with https://, or a page of this site, for example " + example);
        }
    }

    /** Whether a relative link leads to a page; what is behind a question mark or a hash is looked at on the page. */
    private boolean leads(String target, String folder) {
        try {
            URI link = new URI(target);
            return link.getRawAuthority() == null && (link.getPath().isEmpty()
                    || pages.contains(new URI("/" + folder + "/").resolve(link).getPath()));
        } catch (URISyntaxException noAddress) {
            return false;
        }
    }
}
