package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import understorey.pages.templates.Templates;

/** A sheet of blanks to fill in at a wood that is seen for the first time. */
public record ScoutingPage(TemplateHTMLOutputModel css, String name) {

    /** The page, complete in itself. */
    public static String of(String site) {
        Templates templates = new Templates(null);
        String css = templates.text("style.css") + templates.text("sheet.css") + templates.text("scouting.css");
        return templates.fill("scouting.ftlh", new ScoutingPage(Templates.html(css), site));
    }
}
