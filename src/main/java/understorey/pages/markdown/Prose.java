package understorey.pages.markdown;

import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.AttributeProvider;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.IndependentAttributeProviderFactory;
import com.vladsch.flexmark.html.renderer.AttributablePart;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.html.MutableAttributes;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import understorey.advice.ProseLimit;
import understorey.pages.words.Xml;

/**
 * The author's free text, CommonMark with tables, as HTML. Raw HTML is shown as text; a link leads somewhere
 * only if it is relative or http, https, mailto or tel; pictures are not fetched.
 */
public final class Prose {

    private static final DataHolder OPTIONS = new MutableDataSet()
            .set(Parser.EXTENSIONS, List.of(TablesExtension.create()))
            .set(Parser.SPACE_IN_LINK_URLS, true)
            .set(TablesExtension.COLUMN_SPANS, false)
            .set(TablesExtension.APPEND_MISSING_COLUMNS, true)
            .set(TablesExtension.DISCARD_EXTRA_COLUMNS, true)
            .set(TablesExtension.HEADER_SEPARATOR_COLUMN_MATCH, true)
            .set(HtmlRenderer.ESCAPE_HTML, true)
            .set(HtmlRenderer.OBFUSCATE_EMAIL, false)
            .toImmutable();
    private static final List<String> SCHEMES = List.of("http", "https", "mailto", "tel");

    private final Parser parser = parser();
    private final HtmlRenderer renderer = HtmlRenderer.builder(OPTIONS).attributeProviderFactory(new SafeLinks()).build();

    static Parser parser() {
        return Parser.builder(OPTIONS).build();
    }

    /** Null for no text. A text that passes a limit is shown as it was written. */
    public @Nullable String html(@Nullable String markdown) {
        if (markdown == null || markdown.isBlank()) {
            return null;
        }
        if (ProseLimit.passed(markdown).isPresent()) {
            return "<p>" + Xml.escape(markdown.stripTrailing()) + "</p>\n";
        }
        Document document = parser.parse(markdown);
        for (Node node : document.getDescendants()) {
            if (node instanceof Heading heading) {
                heading.setLevel(lower(heading));
            }
        }
        return renderer.render(document);
    }

    /** The page has its own title and sections: what the author heads is below them. */
    static int lower(Heading heading) {
        return Math.min(6, heading.getLevel() + 3);
    }

    /** Takes the source off every picture, and the target off every link that is not plainly harmless. */
    private static final class SafeLinks extends IndependentAttributeProviderFactory implements AttributeProvider {

        @Override
        public AttributeProvider apply(LinkResolverContext context) {
            return this;
        }

        @Override
        public void setAttributes(Node node, AttributablePart part, MutableAttributes attributes) {
            attributes.remove("src");
            if (attributes.contains("href") && !harmless(attributes.getValue("href"))) {
                attributes.remove("href");
            }
        }
    }

    static boolean harmless(String target) {
        if (target.chars().anyMatch(letter -> letter < ' ' || letter == '\\') || target.strip().startsWith("//")) {
            return false;
        }
        String first = target.split("[/?#]", 2)[0];
        int colon = first.indexOf(':');
        return colon < 0 || SCHEMES.contains(first.substring(0, colon).toLowerCase(Locale.ROOT));
    }
}
