package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.List;
import understorey.pages.tables.Row;
import understorey.pages.templates.Templates;
import understorey.schema.Reference;

/** What an author may write, key by key. */
public record FormatPage(TemplateHTMLOutputModel css, List<Row> links, Reference reference) {

    /** The way up, and its address. */
    static final List<Row> UP = List.of(new Row("All trips", "index.html"));

    static FormatPage of(TemplateHTMLOutputModel css, Reference reference) {
        return new FormatPage(css, UP, reference);
    }

    /** The same reference as Markdown. */
    public static String markdown(Reference reference) {
        return new Templates(null).markdown("format.md.ftl", of(Templates.html(""), reference));
    }
}
