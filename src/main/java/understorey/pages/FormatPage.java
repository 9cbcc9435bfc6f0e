package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.List;
import understorey.pages.templates.Templates;
import understorey.schema.Reference;

/** What an author may write, key by key. */
public record FormatPage(TemplateHTMLOutputModel css, List<Link> links, Reference reference) {

    /** The way up: an address and its name. */
    public record Link(String text, String name) {
    }

    static final List<Link> UP = List.of(new Link("index.html", "All trips"));

    static FormatPage of(TemplateHTMLOutputModel css, Reference reference) {
        return new FormatPage(css, UP, reference);
    }

    /** The same reference as Markdown. */
    public static String markdown(Reference reference) {
        return new Templates(null).markdown("format.md.ftl", of(Templates.html(""), reference));
    }
}
