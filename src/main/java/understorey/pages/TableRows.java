package understorey.pages;

import java.util.Map;
import java.util.Set;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableBody;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlWriter;

/** The author's tables as HTML, a row a line as in the tables of the pages; the library would break every cell. */
final class TableRows implements NodeRenderer {

    private final HtmlNodeRendererContext context;
    private final HtmlWriter html;

    TableRows(HtmlNodeRendererContext context) {
        this.context = context;
        this.html = context.getWriter();
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
        return Set.of(TableBlock.class, TableHead.class, TableBody.class, TableRow.class, TableCell.class);
    }

    @Override
    public void render(Node node) {
        if (node instanceof TableCell cell) {
            inside(cell, cell.isHeader() ? "th" : "td");
            return;
        }
        if (node instanceof TableRow) {
            inside(node, "tr");
        } else {
            String tag = node instanceof TableBlock ? "table" : node instanceof TableHead ? "thead" : "tbody";
            html.line();
            html.tag(tag);
            html.line();
            children(node);
            html.tag("/" + tag);
        }
        html.line();
    }

    private void inside(Node node, String tag) {
        html.tag(tag, node instanceof TableCell cell && cell.getAlignment() != null
                ? Map.of("align", Words.word(cell.getAlignment())) : Map.of());
        children(node);
        html.tag("/" + tag);
    }

    private void children(Node parent) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            context.render(child);
        }
    }
}
