package understorey.pages;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.List;
import understorey.advice.Measure;
import understorey.pages.tables.Row;
import understorey.pages.words.Sentences;

/**
 * How the figures are calculated, and how sure they are.
 *
 * @param warm   temperature below which a battery holds less
 * @param colder by how much it holds a tenth less
 * @param rain   in an hour of a rainy day
 * @param climb  that delays flowering by four days
 */
public record MethodsPage(TemplateHTMLOutputModel css, List<Row> links, String warm, String colder, String rain,
                          String climb) {

    static MethodsPage of(TemplateHTMLOutputModel css, Sentences sentences) {
        String degrees = "\u00a0" + sentences.units().unit(Measure.CELSIUS);
        return new MethodsPage(css, FormatPage.UP, sentences.units().plain(20, Measure.CELSIUS) + degrees,
                sentences.units().plain(10, Measure.CELSIUS_APART) + degrees, sentences.of(1.0, Measure.RAIN),
                sentences.of(122.0, Measure.WHOLE_METRES));
    }
}
