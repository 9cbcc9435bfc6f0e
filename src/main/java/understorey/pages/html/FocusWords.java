package understorey.pages.html;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.exposure.Settings;
import understorey.exposure.Stack;
import understorey.kit.LensFit;
import understorey.pages.words.Words;
import understorey.plan.Filter;

/** The depth of field, the frames of a stack and the filters, in words. */
final class FocusWords {

    private FocusWords() {
    }

    /** From where to where; close up, over what depth; of a stack, in how many frames. */
    static String sharp(LensFit fit, Settings settings) {
        double depthM = settings.sharpToM() - settings.sharpFromM();
        String frames = settings.stack() == null ? "" : " in " + settings.stackFrames() + " frames";
        return (depthM < fit.focusM() / 10 ? Words.metres(depthM)
                : Words.metres(settings.sharpFromM()) + " to "
                + Words.farLimit(settings.sharpToM())) + frames;
    }

    /** The frames of a stack: focus on the lens’s scale, or how far apart; null where one frame is taken. */
    static @Nullable String stack(LensFit fit, Settings settings) {
        Stack stack = settings.stack();
        if (stack == null) {
            return null;
        }
        return stack.frames() + " frames" + (stack.stepM() == null
                ? ", focus " + Words.metres(fit.fromSensorM(stack.firstM())) + " to " + Words.metres(fit.fromSensorM(stack.lastM()))
                : (stack.byRail() ? " on a rail, " : ", ") + Words.metres(stack.stepM()) + " steps, nearest first");
    }

    /** What to put on the lens, nearest it first; null for nothing. */
    static @Nullable String filters(LensFit fit, Settings settings) {
        String on = Stream.concat(fit.filters().stream(), settings.dimming().stream()).map(Filter::name).collect(Collectors.joining(", "));
        return on.isEmpty() ? null : on;
    }
}
