package understorey.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import understorey.plan.Filter;
import understorey.plan.Season;
import understorey.plan.Support;

/** Words for the constants of the plan, as an author writes them. */
final class Words {

    private Words() {
    }

    /**
     * Word for a constant, for example {@code low-sun}: small letters and hyphens. Kinds of gear and stages of flower
     * have blanks, for example {@code ground plate} and {@code first flowers}.
     */
    static String of(Enum<?> constant) {
        String name = constant.name().toLowerCase(Locale.ROOT);
        if (constant instanceof Filter.Kind) {
            return name.replace("step_up", "step-up").replace("close_up", "close-up").replace('_', ' ');
        }
        boolean spaced = constant instanceof Support.Kind || constant instanceof Season.Stage;
        return name.replace('_', spaced ? ' ' : '-');
    }

    static List<String> of(Enum<?>[] constants) {
        List<String> words = new ArrayList<>();
        for (Enum<?> constant : constants) {
            words.add(of(constant));
        }
        return words;
    }

    /** Constant for a word; null if there is none. */
    static <E extends Enum<E>> E find(E[] constants, String written) {
        for (E constant : constants) {
            if (of(constant).equals(written)) {
                return constant;
            }
        }
        return null;
    }
}
