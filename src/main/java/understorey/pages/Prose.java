package understorey.pages;

import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.AttributeProvider;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.IndependentAttributeProviderFactory;
import com.vladsch.flexmark.html.renderer.AttributablePart;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.html.MutableAttributes;
import java.util.List;
import java.util.Locale;

/**
 * The author's free text, CommonMark with tables, as HTML. Raw HTML is shown as text; a link leads somewhere
 * only if it is relative or http, https, mailto or tel; pictures are not fetched.
 */
final class Prose {

    private Parser parser;
    private HtmlRenderer renderer;

    /** Null for no text. The parser is built when there is a first text to read: it is slow to start. */
    String html(String markdown) {
        if (markdown == null || markdown.isBlank()) {
            return null;
        }
        if (plain(markdown)) {
            return "<p>" + Svg.escape(markdown.strip()) + "</p>\n";
        }
        open();
        return renderer.render(parser.parse(markdown));
    }

    /** Builds the parser; slow, about a tenth of a second on a cold start. */
    void open() {
        if (parser == null) {
            MutableDataSet options = new MutableDataSet();
            options.set(Parser.EXTENSIONS, List.of(TablesExtension.create()));
            options.set(HtmlRenderer.ESCAPE_HTML, true);
            parser = Parser.builder(options).build();
            renderer = HtmlRenderer.builder(options).attributeProviderFactory(new SafeLinks()).build();
        }
    }

    /** One paragraph without a mark of Markdown needs no parser. */
    private static boolean plain(String text) {
        String line = text.strip();
        if (line.isEmpty() || !Character.isLetter(line.charAt(0))) {
            return false;
        }
        for (int i = 0; i < line.length(); i++) {
            if ("\n\r\\`*_{}[]<>#|~&!@:".indexOf(line.charAt(i)) >= 0) {
                return false;
            }
        }
        return true;
    }

    /** Takes href and src off whatever is not plainly harmless. */
    private static final class SafeLinks extends IndependentAttributeProviderFactory implements AttributeProvider {

        @Override
        public AttributeProvider apply(LinkResolverContext context) {
            return this;
        }

        @Override
        public void setAttributes(Node node, AttributablePart part, MutableAttributes attributes) {
            if (node instanceof Image) {
                attributes.remove("src");
            }
            for (String name : List.of("href", "src")) {
                String target = attributes.getValue(name);
                if (attributes.contains(name) && !harmless(target)) {
                    attributes.remove(name);
                }
            }
        }
    }

    static boolean harmless(String target) {
        for (int i = 0; i < target.length(); i++) {
            if (target.charAt(i) < ' ' || target.charAt(i) == '\\') {
                return false;
            }
        }
        if (target.startsWith("//")) {
            return false;
        }
        int colon = target.indexOf(':');
        int end = firstOf(target, "/?#");
        if (colon < 0 || end >= 0 && end < colon) {
            return true;
        }
        return List.of("http", "https", "mailto", "tel").contains(target.substring(0, colon).toLowerCase(Locale.ROOT));
    }

    private static int firstOf(String text, String marks) {
        for (int i = 0; i < text.length(); i++) {
            if (marks.indexOf(text.charAt(i)) >= 0) {
                return i;
            }
        }
        return -1;
    }
}
