package understorey.pages.html;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.List;
import java.util.stream.Stream;
import understorey.brief.Brief;

/**
 * The field sheet.
 *
 * @param night for dim red on black
 * @param full  where two lines a picture fit one side
 * @param shots in the order in which they are taken, then those left out
 */
public record SheetPage(TemplateHTMLOutputModel css, boolean night, boolean full, PlanView plan, List<ShotView> shots) {

    /** Pictures that have room for a second line. */
    private static final int FULL_SHEET = 5;

    public static SheetPage of(Brief brief, PlanView plan, TemplateHTMLOutputModel css, boolean night) {
        Stream<Integer> taken = brief.order().shooting().stream().map(leg -> brief.shot(leg.shot()).number());
        List<ShotView> shots = Stream.concat(taken, plan.shots().stream().map(ShotView::number)).distinct()
                .map(number -> plan.shots().get(number - 1)).toList();
        return new SheetPage(css, night, plan.shots().size() <= FULL_SHEET, plan, shots);
    }
}
