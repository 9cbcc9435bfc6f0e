package understorey.pages.markdown;

import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.AttributeProvider;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.IndependentAttributeProviderFactory;
import com.vladsch.flexmark.html.renderer.AttributablePart;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.html.MutableAttributes;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Turns the documents into the chapters of the manual: a line with the title, one with the paragraph after it, then HTML. Headings
 * have ids, and links among documents lead to pages. The build runs it.
 */
final class ChapterFiles {

    private static final DataHolder OPTIONS = new MutableDataSet()
            .set(Parser.EXTENSIONS, List.of(TablesExtension.create()))
            .set(HtmlRenderer.ESCAPE_HTML, true)
            .set(HtmlRenderer.GENERATE_HEADER_ID, true)
            .set(HtmlRenderer.RENDER_HEADER_ID, true)
            .toImmutable();

    /** Pages that are made from other sources, with every build of a site. */
    private static final Set<String> OWN_PAGES = Set.of("format.md", "methods.md");

    private ChapterFiles() {
    }

    /** From one folder into another. */
    public static void main(String[] arguments) throws IOException {
        Parser parser = Parser.builder(OPTIONS).build();
        HtmlRenderer renderer = HtmlRenderer.builder(OPTIONS).attributeProviderFactory(new PageLinks()).build();
        Path to = Files.createDirectories(Path.of(arguments[1]));
        try (Stream<Path> documents = Files.list(Path.of(arguments[0]))) {
            for (Path document : documents.filter(ChapterFiles::isChapter).toList()) {
                String[] parts = Files.readString(document).split("\n\n", 3);
                String title = parts[0].substring("# ".length());
                Files.writeString(to.resolve(document.getFileName().toString().replace(".md", ".html")),
                        title + "\n" + parts[1].replace('\n', ' ') + "\n" + renderer.render(parser.parse(parts[2])));
            }
        }
    }

    private static boolean isChapter(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".md") && !OWN_PAGES.contains(name);
    }

    private static final class PageLinks extends IndependentAttributeProviderFactory implements AttributeProvider {

        @Override
        public AttributeProvider apply(LinkResolverContext context) {
            return this;
        }

        @Override
        public void setAttributes(Node node, AttributablePart part, MutableAttributes attributes) {
            if (attributes.contains("href")) {
                attributes.replaceValue("href", attributes.getValue("href").replaceFirst("^([a-z-]+)\\.md(?=#|$)", "$1.html"));
            }
        }
    }
}
