package understorey.exposure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.exposure.motion.Lull;
import understorey.exposure.motion.MotionBlur;
import understorey.kit.Verdict;
import understorey.plan.Filter;

/**
 * Where to begin: the settings of one picture in one light.
 *
 * @param ev100        of the light, EV at ISO 100
 * @param fNumber      as marked
 * @param shutterS     as marked, seconds
 * @param iso          as marked
 * @param dimming      filter that takes light, to put on over what the lens has on, and the ring for it, nearest the
 *                     lens first; empty for none
 * @param lossStops    that filters and closeness take
 * @param lessStops    by which the settings are below the light metered, so that flecks of sun keep their detail; negative above
 *                     it, for mist; 0 for none
 * @param bracketStops against the light metered, one frame each, the darkest first; {@code [0]} for a single frame
 * @param hyperfocalM  at this aperture
 * @param sharpFromM   nearest sharp point, from the lens; of all frames of a stack together
 * @param sharpToM     farthest sharp point; positive infinity for the horizon
 * @param stack        null if one frame is taken
 * @param background   null for a view, which has none
 * @param swayBlurMm   of stems on the sensor, in the mean wind
 * @param motionBlur   null if the flowers keep still for the shutter speed, in gusts too
 * @param lull         what a lull allows; null if it allows no more
 * @param motionStops  by which the shutter speed misses what flowers, hands and handling allow outside a lull; 0 when it
 *                     holds, to a third of a stop
 * @param depthStops   of aperture by which one frame misses the depth of field asked or suggested; 0 when it holds it, to
 *                     a third of a stop, or when frames are stacked
 * @param overStops    by which the frame is overexposed, negative when it is underexposed; 0 to a third of a stop
 * @param verdict      whether light and wind allow the picture
 * @param limits       what makes it a compromise or rules it out, the gravest last
 * @param reasons      in the order aperture and depth, ISO, time, light
 * @param helps        what would stop flowers that blur; empty where they do not
 */
public record Settings(double ev100, double fNumber, double shutterS, int iso, List<Filter> dimming, double lossStops,
                       double lessStops, List<Integer> bracketStops, double hyperfocalM, double sharpFromM, double sharpToM,
                       @Nullable Stack stack, @Nullable Background background, double swayBlurMm, @Nullable MotionBlur motionBlur,
                       @Nullable Lull lull,
                       double motionStops, double depthStops, double overStops, Verdict verdict, List<Limit> limits,
                       List<Advice> reasons, List<Advice> helps) {

    /** What no setting of the camera makes good. */
    public enum Limit { BRIGHT, DEPTH, STACK, HANDS, MONOPOD, STEMS, RELEASE, DARK }

    public Settings {
        if (!Double.isFinite(ev100) || !(fNumber > 0 && fNumber < Double.POSITIVE_INFINITY)
                || !(shutterS > 0 && shutterS < Double.POSITIVE_INFINITY) || Double.isNaN(sharpFromM) || Double.isNaN(sharpToM)) {
            throw new IllegalArgumentException("no such settings: EV " + ev100 + ", f/" + fNumber + ", " + shutterS
                    + " s, sharp from " + sharpFromM + " m to " + sharpToM + " m");
        }
    }

    /** Frames focused one behind the other; 1 where no stack is taken. */
    public int stackFrames() {
        return stack == null ? 1 : stack.frames();
    }

    /** True when they count on mist. */
    public boolean inMist() {
        return lessStops < 0;
    }

    /** True when the shutter speed is so slow that no frame makes sense. */
    public boolean tooDark() {
        return shutterS > Reminders.LONGEST_SENSIBLE_S;
    }

    /** What most makes it a compromise or rules it out; null for nothing. */
    public @Nullable Limit limit() {
        return limits.isEmpty() ? null : limits.get(limits.size() - 1);
    }
}
