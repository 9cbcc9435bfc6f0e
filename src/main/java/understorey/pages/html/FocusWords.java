package understorey.pages.html;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.exposure.Settings;
import understorey.exposure.Stack;
import understorey.kit.LensFit;
import understorey.pages.words.Sentences;
import understorey.plan.Filter;

/** The depth of field, the frames of a stack and the filters, in words. */
final class FocusWords {

    private FocusWords() {
    }

    /** From where to where; close up, over what depth; of a stack, in how many frames. */
    static String sharp(LensFit fit, Settings settings, Sentences sentences) {
        double depthM = settings.sharpToM() - settings.sharpFromM();
        String frames = settings.stack() == null ? "" : " in " + settings.stackFrames() + " frames";
        return (depthM < fit.focusM() / 10 ? sentences.of(depthM, Measure.METRES)
                : sentences.of(settings.sharpFromM(), Measure.METRES) + " to "
                + sentences.of(settings.sharpToM(), Measure.FAR_LIMIT)) + frames;
    }

    /** The frames of a stack: focus on the lens’s scale, or how far apart; null where one frame is taken. */
    static @Nullable String stack(LensFit fit, Settings settings, Sentences sentences) {
        Stack stack = settings.stack();
        if (stack == null) {
            return null;
        }
        return stack.frames() + " frames" + (stack.stepM() == null
                ? ", focus " + sentences.of(fit.fromSensorM(stack.firstM()), Measure.METRES) + " to "
                + sentences.of(fit.fromSensorM(stack.lastM()), Measure.METRES)
                : (stack.byRail() ? " on a rail, " : ", ") + sentences.of(stack.stepM(), Measure.METRES) + " steps, nearest first");
    }

    /** What to put on the lens, nearest it first; null for nothing. */
    static @Nullable String filters(LensFit fit, Settings settings) {
        String on = Stream.concat(fit.filters().stream(), settings.dimming().stream()).map(Filter::name).collect(Collectors.joining(", "));
        return on.isEmpty() ? null : on;
    }
}
