package understorey.pages.html;

import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.List;
import understorey.brief.Brief;
import understorey.order.Leg;

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
        List<ShotView> shots = new ArrayList<>();
        boolean[] taken = new boolean[plan.shots().size()];
        for (Leg leg : brief.order().legs()) {
            if (leg.what() == Leg.What.SHOOT) {
                int shot = brief.shot(leg.shot()).number() - 1;
                shots.add(plan.shots().get(shot));
                taken[shot] = true;
            }
        }
        for (int shot = 0; shot < taken.length; shot++) {
            if (!taken[shot]) {
                shots.add(plan.shots().get(shot));
            }
        }
        return new SheetPage(css, night, plan.shots().size() <= FULL_SHEET, plan, List.copyOf(shots));
    }
}
