package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import understorey.pages.templates.Templates;
import understorey.schema.Reference;

/** How to use the program, for the author of the plans: the format of the files and the chapters. */
public record Manual(Reference format, List<Chapter> chapters) {

    /** A chapter as a page. */
    public record ChapterPage(TemplateHTMLOutputModel css, String title, String lead, TemplateHTMLOutputModel text) {
    }

    /** The manual that the program comes with. */
    public static Manual builtIn(Reference format) {
        return new Manual(format, Chapter.all());
    }

    List<Page> pages(Templates templates, TemplateHTMLOutputModel css) {
        List<Page> pages = new ArrayList<>();
        pages.add(new Page("format.html", templates.fill("format.html.ftl", FormatPage.of(css, format))));
        for (Chapter chapter : chapters) {
            pages.add(new Page(chapter.name() + ".html", templates.fill("chapter.ftlh",
                    new ChapterPage(css, chapter.title(), chapter.lead(), Templates.html(chapter.html())))));
        }
        return pages;
    }

    List<IndexPage.Entry> entries() {
        return chapters.stream().map(chapter -> new IndexPage.Entry(chapter.title(), chapter.name() + ".html", chapter.lead())).toList();
    }
}
