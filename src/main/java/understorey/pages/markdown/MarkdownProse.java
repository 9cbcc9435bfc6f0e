package understorey.pages.markdown;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.InlineLinkNode;
import com.vladsch.flexmark.ast.LinkNodeBase;
import com.vladsch.flexmark.ast.RefNode;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ast.SoftLineBreak;
import com.vladsch.flexmark.ast.Text;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Block;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.sequence.BasedSequence;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import understorey.advice.ProseLimit;

/**
 * The author's free text for the Markdown twin: as on the page, raw HTML is text, pictures are not fetched, a link leads
 * somewhere only if it is harmless, and headings are below the twin's own. All else keeps the author's characters.
 * Templates call it as {@code prose(text)}, {@code link(address)} and {@code code(text)}.
 */
public final class MarkdownProse implements TemplateMethodModelEx {

    /** What only newer readers take for HTML; flexmark's is that of CommonMark 0.28. */
    private static final Pattern MAYBE_HTML = Pattern.compile("(?<!\\\\)(?:\\\\\\\\)*+<(?=[A-Za-z/!?])");

    private final Parser parser = Prose.parser();

    /** Other characters for those from start to end. */
    private record Edit(int start, int end, String text) {
    }

    @Override
    @SuppressWarnings("rawtypes")
    public Object exec(List arguments) throws TemplateModelException {
        String text = String.valueOf(arguments.get(0)).strip();
        return MarkdownFormat.INSTANCE.fromMarkup(of(text));
    }

    /** An address in angle brackets; as text where it is not harmless. */
    public static String link(String address) {
        boolean whole = Prose.harmless(address) && address.matches("(?i)(?:https?|mailto|tel):[^\\s<>\\p{Cc}]+");
        return whole ? "<" + address + ">" : MarkdownFormat.escape(address);
    }

    /** What is to be typed as it is: one line between as many backticks as it needs. */
    public static String code(String text) {
        String ticks = "`".repeat(text.contains("`") ? 2 : 1);
        return ticks + text.strip() + ticks;
    }

    String of(String text) {
        if (ProseLimit.passed(text).isPresent()) {
            return MarkdownFormat.escape(text);
        }
        Document document = parser.parse(text);
        List<Edit> edits = new ArrayList<>();
        document.getDescendants().forEach(node -> tame(node, document, edits));
        edits.sort(Comparator.comparingInt(Edit::start).thenComparing(Edit::end).reversed());
        StringBuilder tamed = new StringBuilder(text);
        edits.forEach(edit -> tamed.replace(edit.start(), edit.end(), edit.text()));
        // What an edit might let slip is not let through: then all of it is text.
        boolean safe = edits.isEmpty()
                || StreamSupport.stream(parser.parse(tamed.toString()).getDescendants().spliterator(), false).noneMatch(MarkdownProse::risky);
        return safe ? tamed.toString().strip() : MarkdownFormat.escape(text);
    }

    private static boolean risky(Node node) {
        return html(node) || node instanceof Image || node instanceof Reference || node instanceof Heading heading && heading.getLevel() < 4
                || node instanceof LinkNodeBase link && !harmless(link);
    }

    private static boolean html(Node node) {
        return node instanceof HtmlInlineBase || node instanceof HtmlBlockBase;
    }

    private static boolean harmless(LinkNodeBase link) {
        return Prose.harmless(link.getUrl().unescape());
    }

    private static void tame(Node node, Document document, List<Edit> edits) {
        if (html(node) || node instanceof AutoLink link && !harmless(link)) {
            int end = node.getEndOffset() - node.getChars().countTrailingWhitespace();
            edits.add(new Edit(node.getStartOffset(), end, MarkdownFormat.escape(node instanceof Block block ? block.getContentChars().toString() : node.getChars().toString())));
        } else if (node instanceof Reference) {
            edits.add(new Edit(node.getStartOffset(), node.getEndOffset(), ""));
        } else if (node instanceof Heading heading) {
            head(heading, edits);
        } else if (node instanceof Text && !(node.getParent() instanceof Code || node.getParent() instanceof FencedCodeBlock)) {
            MAYBE_HTML.matcher(node.getChars()).results()
                    .forEach(mark -> edits.add(new Edit(node.getStartOffset() + mark.end() - 1, node.getStartOffset() + mark.end(), "\\<")));
        } else if (node instanceof FencedCodeBlock code && code.getParent() == document && code.getClosingMarker().isEmpty()) {
            edits.add(new Edit(code.getEndOffset(), code.getEndOffset(), "\n" + code.getOpeningFence()));
        } else if (node instanceof InlineLinkNode link && (link instanceof Image || !harmless(link))) {
            keep(link.getText(), "", "", node, edits);
        } else if (node instanceof RefNode link && link.getReferenceNode(document) != null) {
            Reference reference = link.getReferenceNode(document);
            boolean leads = !(link instanceof ImageRef) && harmless(reference);
            keep(link.getText().isEmpty() ? link.getReference() : link.getText(), leads ? "[" : "",
                    leads ? "](<" + reference.getUrl() + ">)" : "", node, edits);
        }
    }

    /** Leaves the label of a link, with other characters around it. */
    private static void keep(BasedSequence label, String before, String after, Node link, List<Edit> edits) {
        edits.add(new Edit(link.getStartOffset(), label.getStartOffset(), before));
        edits.add(new Edit(label.getEndOffset(), link.getEndOffset(), after));
    }

    /** A heading may have several lines if it is underlined; with number signs it has one. */
    private static void head(Heading heading, List<Edit> edits) {
        BasedSequence text = heading.getText();
        edits.add(new Edit(heading.getStartOffset(), text.getStartOffset(), "#".repeat(Prose.lower(heading)) + " "));
        edits.add(new Edit(text.getEndOffset(), heading.getEndOffset(), ""));
        for (Node child : heading.getDescendants()) {
            if (child instanceof SoftLineBreak && child.getNext() != null) {
                edits.add(new Edit(child.getStartOffset(), child.getNext().getStartOffset(), " "));
            }
        }
    }
}
