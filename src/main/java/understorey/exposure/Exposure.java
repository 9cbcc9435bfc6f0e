package understorey.exposure;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.HelpAdvice;
import understorey.advice.MotionAdvice;
import understorey.exposure.motion.Lull;
import understorey.exposure.motion.Lulls;
import understorey.exposure.motion.MotionBlur;
import understorey.exposure.motion.StemSway;
import understorey.exposure.scale.StopScale;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.kit.Verdict;
import understorey.optics.DepthOfField;
import understorey.plan.CameraSettings;
import understorey.plan.Sharp;

/**
 * Finds the settings of one picture in one light: what succeeds in the mean wind, by the hands as they hold the camera, and what a
 * lull would allow besides; judges them, and says why. {@link Choice} has the figures.
 */
public final class Exposure {

    /** Four stops beyond what hands or flowers allow nothing is sharp: common practice, no source. */
    private static final double HOPELESS_STOPS = 4;
    /** A flower that swings through so many depths of field is hardly ever in focus: common practice, no source. */
    private static final double OUT_OF_FOCUS = 3;
    /** From two thirds of a stop past a gust's limit on gusts blur: common practice, no source. */
    private static final double GUSTY = 1.5;
    /** A lull is worth waiting for if it gives two stops: common practice, no source. */
    private static final double WORTH_WAITING_STOPS = 2;
    /** Two stops over the ISO that a bag accepts are worth naming: common practice, no source. */
    private static final int WORTH_NAMING = 4;
    /** Less wind than that is found nowhere outdoors. */
    private static final double LEAST_SHELTER_MS = 0.05;
    private static final double LULL_SHARE = Lulls.share(Lulls.LEFT, Lulls.IN_A_WOOD);

    private final LensFit fit;
    private final List<Darkening> filters;
    private final Conditions conditions;
    private final CameraSettings set;
    private final @Nullable Stack wanted;
    private final @Nullable Stack stack;
    private final Aperture aperture;
    private final Motion motion;
    private final double lessStops;
    private final Choice choice;
    private final @Nullable Lull lull;
    private final MotionReasons why;
    /** A shutter speed at which the wind blurs the flowers is set for that blur. */
    private final boolean blurWanted;
    private final List<Settings.Limit> limits = new ArrayList<>();
    private final List<Advice> reasons = new ArrayList<>();
    private final List<Advice> helps = new ArrayList<>();
    private Verdict verdict = Verdict.FITS;

    private Exposure(LensFit fit, List<Darkening> filters, Conditions conditions) {
        this.fit = fit;
        this.filters = filters;
        this.conditions = conditions;
        this.set = fit.intent().shot().set();
        wanted = Depth.stack(fit, conditions);
        stack = wanted == null || wanted.tooMany() ? null : wanted;
        aperture = set.fNumber() != null ? Aperture.asSet(set.fNumber()) : stack == null ? Aperture.of(fit) : Aperture.ofStack(fit);
        motion = Motion.of(fit, conditions, stack);
        lessStops = Tones.lessStops(fit, conditions);
        choice = new Choice(fit, filters, conditions.ev100() + lessStops, aperture, motion);
        blurWanted = set.shutterS() != null && choice.tooSlow() && motion.byWind();
        lull = lull();
        why = new MotionReasons(fit, conditions, motion, choice);
    }

    /**
     * The settings for a light and a wind.
     *
     * @param filters that go on the lens to take light
     */
    public static Settings of(LensFit fit, List<Darkening> filters, Conditions conditions) {
        return new Exposure(fit, filters, conditions).settings();
    }

    private Settings settings() {
        aperture();
        Background background = depth();
        iso();
        wind();
        length();
        double depthStops = stack == null ? choice.depthStops() : 0;
        verdict = verdict.and(SetReasons.judge(reasons, fit, choice, depthStops, motion, conditions));
        double seconds = choice.markedS();
        Reminders.add(reasons, fit, choice.fNumber(), seconds, awaitsLull());
        List<Integer> bracket = Tones.bracket(reasons, fit, conditions);
        if (Phone.is(fit)) {
            Phone.add(reasons, fit, conditions, seconds, awaitsLull());
        }
        DepthOfField one = fit.depthOfField(choice.fNumber(), fit.focusM() * 1000);
        return new Settings(conditions.ev100(), choice.fNumber(), seconds, choice.iso(), choice.dimming().filters(), choice.lossStops(),
                lessStops, bracket, one.hyperfocalMm() / 1000, stack == null ? one.nearMm() / 1000 : stack.sharpFromM(),
                stack == null ? one.farMm() / 1000 : stack.sharpToM(), stack, background, motion.sway().blurMm(seconds), blur(), lull,
                blurWanted ? 0 : choice.motionStops(), depthStops, choice.overStops(), verdict, List.copyOf(limits),
                List.copyOf(reasons), List.copyOf(helps));
    }

    /** What a lull allows on a steady support, if it is sharp, and the wind's settings are not or are two stops worse; null if not. */
    private @Nullable Lull lull() {
        if (set.shutterS() != null || !fit.steady() || !conditions.hasLulls()) {
            return null;
        }
        Choice then = new Choice(fit, filters, conditions.ev100() + lessStops, aperture, Motion.of(fit, conditions.inLull(), stack));
        double gained = StopScale.log2((double) choice.iso() / then.iso()) + 2 * StopScale.log2(then.fNumber() / choice.fNumber());
        boolean better = choice.tooSlow() || gained >= WORTH_WAITING_STOPS;
        return then.tooSlow() || !better ? null : new Lull(then.fNumber(), then.markedS(), then.iso(), LULL_SHARE);
    }

    /** Why it is the aperture that it is, and what else keeps the frame from being too bright. */
    private void aperture() {
        Dimming dimming = choice.dimming();
        if (dimming.verdict() != Verdict.FITS) {
            verdict = verdict.and(dimming.verdict());
            limits.add(Settings.Limit.BRIGHT);
        }
        double opened = choice.opened();
        if (dimming.fNumber() == opened) {
            reasons.add(opened < aperture.widest()
                    ? new ApertureAdvice.ApertureOpenedOn(opened, aperture.first(), choice.iso())
                    : opened < aperture.first() ? new ApertureAdvice.ApertureOpened(opened, aperture.first())
                    : aperture.why());
        }
        if (dimming.why() != null) {
            reasons.add(dimming.why());
        }
    }

    /** Adds how the depth of field asked is held, and what becomes of the background. */
    private @Nullable Background depth() {
        Background background = Background.of(fit, choice.fNumber());
        if (wanted != null && stack == null) {
            verdict = verdict.and(Verdict.COMPROMISE);
            Depth.addTooMany(reasons, wanted);
            limits.add(Settings.Limit.STACK);
        } else {
            Depth.add(reasons, fit, conditions, stack);
        }
        if (stack == null && fit.hopelesslyDeep() && !fit.depthIsProposed()) {
            verdict = Verdict.CANNOT;
        }
        FlowerDepth flower = stack == null ? FlowerDepth.of(fit, choice.fNumber()) : null;
        if (flower != null && flower.add(reasons, helps, conditions)) {
            verdict = verdict.and(Verdict.COMPROMISE);
            limits.add(Settings.Limit.DEPTH);
        }
        Depth.add(reasons, fit, choice.fNumber(), background);
        return background;
    }

    private void iso() {
        boolean tooSlow = choice.tooSlow() && !blurWanted;
        if (tooSlow) {
            boolean hopeless = choice.motionStops() > HOPELESS_STOPS && lull == null;
            verdict = verdict.and(hopeless ? Verdict.CANNOT : Verdict.COMPROMISE);
            limits.add(motion.byWind() ? Settings.Limit.STEMS
                    : fit.support() == null ? Settings.Limit.HANDS : Settings.Limit.MONOPOD);
        }
        if (set.iso() != null || set.shutterS() != null) {
            SetReasons.add(reasons, set, choice);
        } else {
            reasons.add(choice.eased() ? why.eased() : !tooSlow && choice.isoLowest() ? why.base()
                    : !tooSlow && choice.outlastsPatience() ? why.dark()
                    : motion.byWind() || !tooSlow && motion.calmS() < motion.handS() ? why.wind(tooSlow) : why.hand(tooSlow));
        }
        boolean swings = !blurWanted && swings();
        if (swings || tooSlow && motion.byWind()) {
            helps(swings ? StemSway.windMs(heldMm() / 2) : Double.POSITIVE_INFINITY);
        }
    }

    /** Adds that the flowers swing through the depth of field; in a lull too, the picture cannot be taken. */
    private boolean swings() {
        double swingMm = motion.sway().swingMm();
        if (!(fit.intent().sharp() instanceof Sharp.Depth) || swingMm <= OUT_OF_FOCUS * heldMm()) {
            return false;
        }
        boolean always = 2 * StemSway.amplitudeMm(conditions.inLull().windMs()) > heldMm();
        verdict = verdict.and(always ? Verdict.CANNOT : Verdict.COMPROMISE);
        limits.add(Settings.Limit.STEMS);
        reasons.add(new MotionAdvice.SwingsOutOfFocus(swingMm / 1000, heldMm() / 1000, conditions.windMs()));
        return true;
    }

    /** Depth of field of one frame. */
    private double heldMm() {
        return fit.depthOfField(choice.fNumber(), fit.focusM() * 1000).depthMm();
    }

    private void helps(double inFocusMs) {
        double longestS = StopScale.snapShutterS(motion.stemsS());
        int iso = choice.isoFor(longestS);
        if (set.iso() == null && iso > choice.iso() && iso <= WORTH_NAMING * choice.iso()) {
            helps.add(new HelpAdvice.HelpIso(iso, longestS));
        }
        double calmMs = Math.min(inFocusMs, motion.sway().calmMs(choice.seconds()));
        helps.add(calmMs >= LEAST_SHELTER_MS ? new HelpAdvice.HelpShelter(calmMs) : new HelpAdvice.HelpClamp());
    }

    /** What wind, lulls and gusts do to the flowers at these settings. */
    private void wind() {
        if (lull != null) {
            reasons.add(why.lull(lull));
        }
        boolean sharp = !(choice.tooSlow() && motion.byWind());
        if (sharp && gusty()) {
            reasons.add(why.gusts());
        } else if (sharp && fit.steady() && choice.firstS() <= motion.gustS()) {
            reasons.add(why.still());
        }
    }

    /** True where the shutter is fired when the flowers stop. */
    private boolean awaitsLull() {
        return !blurWanted && (lull != null || gusty() || choice.tooSlow() && motion.byWind());
    }

    private boolean gusty() {
        return choice.markedS() > motion.gustS() * GUSTY;
    }

    private @Nullable MotionBlur blur() {
        if (blurWanted) {
            return null;
        }
        if (choice.tooSlow() && motion.byWind()) {
            return new MotionBlur(lull == null ? MotionBlur.Degree.ALWAYS : MotionBlur.Degree.UNLESS_IN_LULL, conditions.windMs(),
                    choice.about(motion.stemsS()));
        }
        return !gusty() ? null : new MotionBlur(MotionBlur.Degree.IN_GUSTS, conditions.gustMs(), StopScale.snapShutterS(motion.gustS()));
    }

    /** Frames that take longer than makes sense, or than the camera times. */
    private void length() {
        if (choice.markedS() > Reminders.LONGEST_SENSIBLE_S) {
            verdict = Verdict.CANNOT;
            limits.add(Settings.Limit.DARK);
        } else if (fit.steady() && !fit.released() && choice.markedS() > Reminders.LONGEST_MARKED_S) {
            verdict = verdict.and(Verdict.COMPROMISE);
            limits.add(Settings.Limit.RELEASE);
        }
    }
}
