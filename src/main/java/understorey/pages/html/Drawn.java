package understorey.pages.html;

import freemarker.core.TemplateHTMLOutputModel;
import org.jspecify.annotations.Nullable;
import understorey.pages.svg.Svg;
import understorey.pages.templates.Templates;
import understorey.pages.words.Sentences;
import understorey.scene.Drawing;
import understorey.scene.Scene;

/** A drawing on a page, and the same in sentences for readers without pictures. */
public record Drawn(TemplateHTMLOutputModel svg, String says) {

    /**
     * A scene in the words of the sentences.
     *
     * @param id unique on its page
     */
    public static Drawn of(Scene scene, String id, Sentences sentences) {
        Drawing drawing = scene.drawing(sentences);
        return new Drawn(Templates.html(Svg.of(drawing, id)), drawing.says());
    }

    static @Nullable Drawn ifAny(@Nullable Scene scene, String id, Sentences sentences) {
        return scene == null ? null : of(scene, id, sentences);
    }
}
