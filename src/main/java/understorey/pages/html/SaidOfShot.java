package understorey.pages.html;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.FitAdvice;
import understorey.advice.SupportAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.light.Outlook;

/**
 * All that is said of a shot, what matters most first: what spoils it and what helps, why its light is what it is, the
 * composition, then how the settings were chosen, and last why its lens and support fit.
 */
final class SaidOfShot {

    private SaidOfShot() {
    }

    static List<Advice> inOrder(Brief brief, TimedShot shot) {
        List<Advice> said = new ArrayList<>();
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        if (fit != null && settings != null) {
            said.addAll(fit.reasons());
            said.addAll(settings.reasons());
        }
        List<Advice> look = brief.composition(shot);
        Set<Advice> order = new LinkedHashSet<>();
        said.stream().filter(SaidOfShot::objects).forEach(order::add);
        look.stream().filter(SaidOfShot::objects).forEach(order::add);
        order.addAll(shot.helps());
        order.addAll(light(shot));
        said.stream().filter(advice -> !chosen(advice)).forEach(order::add);
        order.addAll(look);
        order.addAll(said);
        return List.copyOf(order);
    }

    private static List<Advice> light(TimedShot shot) {
        Outlook outlook = shot.outlook();
        List<Advice> light = new ArrayList<>(outlook == null ? List.of() : outlook.because());
        light.addAll(shot.sunlight() == null ? List.of() : shot.sunlight().reasons());
        return light;
    }

    private static boolean objects(Advice advice) {
        return advice.severity() != Advice.Severity.NOTE;
    }

    /** What only says that the lens or the support is the one asked for. */
    private static boolean chosen(@Nullable Advice advice) {
        return advice instanceof FitAdvice || advice instanceof SupportAdvice;
    }
}
