package understorey.pages;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * The author's free text, CommonMark with tables, as HTML. Raw HTML is shown as text; a link leads somewhere
 * only if it is relative or http, https, mailto or tel; pictures are not fetched.
 */
final class Prose {

    /** Blocks in blocks, and marks in marks; what lies deeper is text. */
    private static final int DEEPEST = 50;
    /** Link references and tables can make a page of any size out of a short text, characters. */
    private static final int LONGEST = 500_000;

    /** CommonMark alone, and with tables: those are asked for seldom, and slow to start. */
    private Dialect plain;
    private Dialect tabular;

    private record Dialect(Parser parser, HtmlRenderer renderer) {

        static Dialect with(List<Extension> extensions) {
            return new Dialect(Parser.builder().extensions(extensions).maxOpenBlockParsers(DEEPEST)
                    .maxInlineNesting(DEEPEST).build(),
                    HtmlRenderer.builder().nodeRendererFactory(TableRows::new).extensions(extensions)
                            .escapeHtml(true).attributeProviderFactory(context -> new SafeLinks()).build());
        }
    }

    /**
     * Null for no text. A text that would grow beyond all bounds is shown as it was written. The parser is built when
     * there is a first text to read: it is slow to start.
     */
    String html(String markdown) {
        if (markdown == null || markdown.isBlank()) {
            return null;
        }
        String paragraph = unended(markdown);
        if (plain(paragraph)) {
            return asWritten(paragraph);
        }
        Dialect dialect = markdown.indexOf('|') < 0 ? plain() : tabular();
        Bounded html = new Bounded(LONGEST);
        try {
            Node document = dialect.parser().parse(markdown);
            lower(document);
            dialect.renderer().render(document, html);
        } catch (IllegalArgumentException tableTooLarge) {
            return asWritten(paragraph);
        }
        return html.full() ? asWritten(paragraph) : html.toString();
    }

    private static String asWritten(String paragraph) {
        return "<p>" + Svg.escape(paragraph) + "</p>\n";
    }

    /** The page has its own title and sections: what the author heads stands below them. */
    static void lower(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            if (child instanceof Heading heading) {
                heading.setLevel(Math.min(6, heading.getLevel() + 3));
            }
            lower(child);
        }
    }

    private Dialect plain() {
        plain = plain == null ? Dialect.with(List.of()) : plain;
        return plain;
    }

    private Dialect tabular() {
        tabular = tabular == null ? Dialect.with(List.of(TablesExtension.create())) : tabular;
        return tabular;
    }

    /** Without the spaces and line ends behind it; wider spaces are text. */
    private static String unended(String text) {
        int end = text.length();
        while (end > 0 && " \n\r".indexOf(text.charAt(end - 1)) >= 0) {
            end--;
        }
        return text.substring(0, end);
    }

    /** One paragraph without a mark of Markdown needs no parser. */
    static boolean plain(String paragraph) {
        if (paragraph.isEmpty() || !Character.isLetter(paragraph.charAt(0))) {
            return false;
        }
        for (int i = 0; i < paragraph.length(); i++) {
            char letter = paragraph.charAt(i);
            boolean softBreak = letter == '\n' && i + 1 < paragraph.length() && paragraph.charAt(i - 1) != ' '
                    && Character.isLetter(paragraph.charAt(i + 1));
            if (letter < ' ' && !softBreak || "\\`*_{}[]<>#|~&".indexOf(letter) >= 0) {
                return false;
            }
        }
        return true;
    }

    /** Keeps up to so many characters. */
    private static final class Bounded implements Appendable {

        private final int most;
        private final StringBuilder kept = new StringBuilder();
        private boolean full;

        Bounded(int most) {
            this.most = most;
        }

        boolean full() {
            return full;
        }

        @Override
        public Appendable append(CharSequence text) {
            return append(text, 0, text.length());
        }

        @Override
        public Appendable append(CharSequence text, int from, int to) {
            full |= kept.length() + to - from > most;
            if (!full) {
                kept.append(text, from, to);
            }
            return this;
        }

        @Override
        public Appendable append(char letter) {
            return append(String.valueOf(letter));
        }

        @Override
        public String toString() {
            return kept.toString();
        }
    }

    /** Takes the source off every picture, and the target off every link that is not plainly harmless. */
    private static final class SafeLinks implements AttributeProvider {

        @Override
        public void setAttributes(Node node, String tag, Map<String, String> attributes) {
            attributes.remove("src");
            if (attributes.containsKey("href") && !harmless(attributes.get("href"))) {
                attributes.remove("href");
            }
        }
    }

    static boolean harmless(String target) {
        for (int i = 0; i < target.length(); i++) {
            if (target.charAt(i) < ' ' || target.charAt(i) == '\\') {
                return false;
            }
        }
        if (target.strip().startsWith("//")) {
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
