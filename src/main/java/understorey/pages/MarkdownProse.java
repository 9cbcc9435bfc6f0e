package understorey.pages;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Block;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.LinkReferenceDefinition;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.markdown.MarkdownRenderer;

/**
 * The author's free text for the Markdown twin: as on the page, raw HTML is text, pictures are not fetched, a link leads
 * somewhere only if it is harmless, and headings stand below the twin's own. Templates call it as {@code prose(text)}
 * and {@code link(address)}.
 */
final class MarkdownProse implements TemplateMethodModelEx {

    private static final List<TablesExtension> TABLES = List.of((TablesExtension) TablesExtension.create());

    private Parser parser;
    private MarkdownRenderer renderer;

    @Override
    @SuppressWarnings("rawtypes")
    public Object exec(List arguments) throws TemplateModelException {
        String text = String.valueOf(arguments.get(0)).strip();
        return MarkdownFormat.INSTANCE.fromMarkup(of(text));
    }

    /** An address in angle brackets; as text where it is not harmless. */
    static String link(String address) {
        boolean whole = Prose.harmless(address) && address.matches("(?i)(?:https?|mailto|tel):[^\\s<>\\p{Cc}]+");
        return whole ? "<" + address + ">" : MarkdownFormat.escape(address);
    }

    synchronized String of(String text) {
        if (Prose.plain(text)) {
            return text;
        }
        if (parser == null) {
            parser = Parser.builder().extensions(TABLES).build();
            renderer = MarkdownRenderer.builder().extensions(TABLES).build();
        }
        Node document = parser.parse(text);
        boolean plain = text.indexOf('<') < 0 && text.indexOf('&') < 0 && text.indexOf('[') < 0;
        if (plain && all(document, node -> !(node instanceof Heading))) {
            return text;
        }
        Prose.lower(document);
        for (Node node : all(document)) {
            tame(node);
        }
        String written = renderer.render(document).strip();
        // What a renderer might let slip is not let through: then all of it is text.
        return all(parser.parse(written), node -> !risky(node)) ? written : MarkdownFormat.escape(text);
    }

    private static boolean all(Node document, Predicate<Node> allowed) {
        return all(document).stream().allMatch(allowed);
    }

    private static boolean risky(Node node) {
        return node instanceof HtmlInline || node instanceof HtmlBlock || node instanceof Image
                || node instanceof Link link && !Prose.harmless(link.getDestination());
    }

    private static List<Node> all(Node document) {
        List<Node> nodes = new ArrayList<>();
        document.accept(new AbstractVisitor() {
            @Override
            protected void visitChildren(Node parent) {
                nodes.add(parent);
                super.visitChildren(parent);
            }

            @Override
            public void visit(HtmlInline html) {
                nodes.add(html);
            }

            @Override
            public void visit(HtmlBlock html) {
                nodes.add(html);
            }

            @Override
            public void visit(LinkReferenceDefinition definition) {
                nodes.add(definition);
            }
        });
        return nodes;
    }

    private static void tame(Node node) {
        if (node instanceof HtmlInline html) {
            replace(html, new Text(html.getLiteral()));
        } else if (node instanceof HtmlBlock html) {
            Block paragraph = new Paragraph();
            paragraph.appendChild(new Text(html.getLiteral().replaceAll("\\s*\\R\\s*", " ")));
            replace(html, paragraph);
        } else if (node instanceof LinkReferenceDefinition) {
            node.unlink();
        } else if (risky(node)) {
            for (Node child = node.getFirstChild(); child != null; child = node.getFirstChild()) {
                node.insertBefore(child);
            }
            node.unlink();
        }
    }

    private static void replace(Node node, Node other) {
        node.insertBefore(other);
        node.unlink();
    }
}
