package understorey.exposure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.optics.DepthOfField;
import understorey.plan.Body;

/**
 * Finds the settings of one picture: the aperture that the sharpness asks for, ISO at its base, the time
 * that follows. Where hand, wind or darkness forbid that time, these yield in turn: the wait, until a lull; the
 * aperture, as far as the depth asked allows; ISO, up to the author's limit, on legs too; at last the picture itself.
 */
public final class Exposure {

    /** Four stops beyond what the hand holds nothing is sharp: common practice, no source. */
    private static final double HOPELESS_TIMES = 16;
    /** Rather than wait longer for one frame people raise ISO: common practice, no source. */
    private static final double LONGEST_WAIT_S = 240;
    /** A third of a stop in time is within what the markings round. */
    private static final double TOLERANCE = Math.pow(2, 1 / 3.0);

    private final LensFit fit;
    private final Body body;
    private final Conditions conditions;
    private final @Nullable Stack stack;
    private final Motion motion;
    private final MotionReasons why;
    private final List<Settings.Limit> limits = new ArrayList<>();
    private final List<Advice> reasons = new ArrayList<>();
    private double lossStops;
    private @Nullable MotionBlur motionBlur;
    private Verdict verdict = Verdict.FITS;

    private Exposure(LensFit fit, Conditions conditions) {
        this.fit = fit;
        this.body = fit.camera().body();
        this.conditions = conditions;
        this.lossStops = fit.lossStops() + fit.closenessStops();
        Stack wanted = Depth.stack(fit, conditions);
        this.stack = wanted == null || wanted.tooMany() ? null : wanted;
        if (stack != wanted) {
            verdict = Verdict.COMPROMISE;
        }
        this.motion = Motion.of(fit, conditions, stack);
        this.why = new MotionReasons(fit, conditions, motion);
    }

    /** The settings for a light and a wind, with no neutral density filter to hand. */
    public static Settings of(LensFit fit, Conditions conditions) {
        return of(fit, List.of(), conditions);
    }

    /**
     * The settings for a light and a wind.
     *
     * @param filters neutral density filters that go on the lens, for a light that no shutter is short enough for
     */
    public static Settings of(LensFit fit, List<Darkening> filters, Conditions conditions) {
        return new Exposure(fit, conditions).settings(filters);
    }

    private Settings settings(List<Darkening> filters) {
        Aperture aperture = stack == null ? Aperture.of(fit) : Aperture.ofStack(fit);
        double opened = opened(aperture);
        Dimming dimming = Dimming.of(fit, filters, opened, secondsAt(opened, body.baseIso()), motion.longestS());
        lossStops += dimming.lossStops();
        if (dimming.verdict() != Verdict.FITS) {
            verdict = verdict.and(dimming.verdict());
            limits.add(Settings.Limit.BRIGHT);
        }
        double fNumber = dimming.fNumber();
        aperture(aperture, opened, dimming);
        Background background = depth(fNumber);
        int iso = iso(fNumber);
        stems(aperture, secondsAt(fNumber, iso));
        double seconds = marked(fNumber, iso);
        if (seconds > Reminders.LONGEST_SENSIBLE_S) {
            verdict = Verdict.CANNOT;
            limits.add(Settings.Limit.DARK);
        } else if (fit.steady() && !fit.released() && seconds > Reminders.LONGEST_MARKED_S) {
            verdict = verdict.and(Verdict.COMPROMISE);
            limits.add(Settings.Limit.RELEASE);
        }
        Reminders.add(reasons, fit, fNumber, seconds);
        List<Integer> bracket = Tones.bracket(reasons, fit, conditions);
        DepthOfField one = fit.depthOfField(fNumber, fit.focusM() * 1000);
        return new Settings(conditions.ev100(), fNumber, seconds, iso, dimming.filters(), lossStops, bracket,
                one.hyperfocalMm() / 1000, stack == null ? one.nearMm() / 1000 : stack.sharpFromM(),
                stack == null ? one.farMm() / 1000 : stack.sharpToM(), stack, background,
                motion.sway().blurMm(seconds), motionBlur, motionStops(secondsAt(fNumber, iso)), depthStops(fNumber), verdict,
                List.copyOf(limits), List.copyOf(reasons));
    }

    /**
     * Opened a third of a stop at a time while the lowest ISO leaves the time too long; past a depth that nobody asked
     * for while the highest does.
     */
    private double opened(Aperture aperture) {
        double fNumber = aperture.first();
        while (fNumber > aperture.widest() && secondsAt(fNumber, body.baseIso()) > bearableS()) {
            fNumber = Math.max(aperture.widest(), StopScale.thirdWider(fNumber));
        }
        while (fNumber > aperture.open() && secondsAt(fNumber, body.topIso()) > bearableS()) {
            fNumber = Math.max(aperture.open(), StopScale.thirdWider(fNumber));
        }
        return fNumber;
    }

    /** Why it is the aperture that it is, and what else keeps the frame from being too bright. */
    private void aperture(Aperture aperture, double opened, Dimming dimming) {
        if (dimming.fNumber() == opened) {
            reasons.add(opened < aperture.widest()
                    ? new ApertureAdvice.ApertureOpenedOn(opened, aperture.first(), body.topIso())
                    : opened < aperture.first() ? new ApertureAdvice.ApertureOpened(opened, aperture.first())
                    : aperture.why());
        }
        if (dimming.why() != null) {
            reasons.add(dimming.why());
        }
    }

    /** Adds how the depth asked is held, and what becomes of the background. */
    private @Nullable Background depth(double fNumber) {
        Background background = Background.of(fit, fNumber);
        Stack wanted = Depth.stack(fit, conditions);
        if (wanted != null && stack == null) {
            Depth.addTooMany(reasons, wanted);
            limits.add(Settings.Limit.STACK);
        } else {
            Depth.add(reasons, fit, conditions, stack);
        }
        if (stack == null && fit.hopelesslyDeep() && !fit.depthIsProposed()) {
            verdict = Verdict.CANNOT;
        }
        Depth.add(reasons, fit, fNumber, background);
        return background;
    }

    private int iso(double fNumber) {
        int iso = raise(fNumber, bearableS());
        double seconds = secondsAt(fNumber, iso);
        boolean tooSlow = seconds > motion.longestS() * TOLERANCE;
        if (tooSlow) {
            verdict = verdict.and(seconds > motion.handS() * HOPELESS_TIMES ? Verdict.CANNOT : Verdict.COMPROMISE);
            limits.add(motion.byWind() ? Settings.Limit.STEMS
                    : fit.support() == null ? Settings.Limit.HANDS : Settings.Limit.MONOPOD);
        }
        reasons.add(!tooSlow && iso == body.baseIso() ? why.base(iso)
                : !tooSlow && motion.longestS() > patienceS() ? why.dark(iso, secondsAt(fNumber, body.baseIso()))
                : motion.byWind() ? wind(iso, seconds, tooSlow) : why.hand(iso, tooSlow));
        return iso;
    }

    private Advice wind(int iso, double seconds, boolean tooSlow) {
        if (tooSlow || motion.lulls()) {
            blurs(tooSlow ? MotionBlur.Degree.ALWAYS : MotionBlur.Degree.IN_GUSTS, motion.patientS());
        }
        return why.wind(iso, seconds, tooSlow);
    }

    private void blurs(MotionBlur.Degree degree, double longestS) {
        if (motionBlur == null || degree.compareTo(motionBlur.degree()) > 0) {
            motionBlur = new MotionBlur(degree, conditions.givenWindMs(), StopScale.nextShutterDownS(longestS));
        }
    }

    /** Whether the stems stand for the time, or only in a lull; what to begin with for those who will not wait. */
    private void stems(Aperture aperture, double seconds) {
        if (conditions.worstWindMs() == null) {
            return;
        }
        if (fit.steady() && secondsAt(aperture.first(), body.baseIso()) <= motion.stemsS()) {
            reasons.add(why.still());
        } else if (seconds > motion.stemsS() * TOLERANCE && seconds <= motion.patientS() * TOLERANCE) {
            double markedS = StopScale.nextShutterDownS(motion.stemsS());
            int fast = raise(aperture.widest(), Math.min(markedS, motion.stemsS()));
            double fastS = secondsAt(aperture.widest(), fast);
            boolean smears = StopScale.snapShutterS(fastS) > markedS;
            blurs(smears ? MotionBlur.Degree.UNLESS_IN_LULL : MotionBlur.Degree.IN_GUSTS, motion.stemsS());
            reasons.add(why.lull(aperture.widest(), fast, fastS, smears));
        }
    }

    private double motionStops(double seconds) {
        return missed(seconds / Math.min(Math.min(motion.handS(), motion.stemsS()), patienceS()));
    }

    /** Light and depth of field go with the square of the f-number: twice the stops of its ratio. */
    private double depthStops(double fNumber) {
        return stack == null ? missed(Math.pow(fit.fNumberNeeded() / fNumber, 2)) : 0;
    }

    private static double missed(double times) {
        return times > TOLERANCE ? Math.log(times) / Math.log(2) : 0;
    }

    /** Longest time before something yields; never so short that no camera has it. */
    private double bearableS() {
        return Math.max(Math.min(motion.longestS(), patienceS()), Dimming.SHORTEST_S * TOLERANCE);
    }

    /** Longest time of a frame: as the camera counts it where nothing lets bulb go. */
    private double patienceS() {
        return fit.steady() && !fit.released() ? Reminders.LONGEST_COUNTED_S : LONGEST_WAIT_S;
    }

    /** The marked time; of a frame that is too bright the shortest that there is. */
    private double marked(double fNumber, int iso) {
        double seconds = StopScale.snapShutterS(secondsAt(fNumber, iso));
        return fit.camera().lens().builtIn() ? seconds : Math.max(Dimming.SHORTEST_S, seconds);
    }

    private double secondsAt(double fNumber, int iso) {
        return Shutter.seconds(fNumber, conditions.ev100(), iso, lossStops);
    }

    private int raise(double fNumber, double limitS) {
        double bearableS = Math.max(limitS, Dimming.SHORTEST_S * TOLERANCE);
        int needed = StopScale.nextIsoUp(Shutter.iso(fNumber, conditions.ev100(), bearableS, lossStops));
        return Math.min(body.topIso(), Math.max(body.baseIso(), needed));
    }
}
