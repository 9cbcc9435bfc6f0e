package understorey.pages.html;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.ApertureAdvice;
import understorey.advice.ComposeAdvice;
import understorey.advice.DepthAdvice;
import understorey.advice.DirectionAdvice;
import understorey.advice.FitAdvice;
import understorey.advice.LightAdvice;
import understorey.advice.MotionAdvice;
import understorey.advice.PhoneAdvice;
import understorey.advice.SetAdvice;
import understorey.advice.ShutterAdvice;
import understorey.advice.SupportAdvice;
import understorey.advice.ToneAdvice;
import understorey.brief.Brief;
import understorey.brief.TimedShot;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.light.Outlook;
import understorey.order.Leg;

/**
 * What is said of a shot, what matters most first: what spoils it and what helps, its light, one reason for its settings,
 * one hint for its composition, then the rest. The appendix has its own lines for the light, so no more of it is said here.
 */
final class SaidOfShot {

    private static final int MOST_OBJECTIONS = 2;
    private static final int MOST_LIGHT = 2;
    /** A shorter wait passes with the setting up: common practice, no source. */
    private static final int A_WAIT_MIN = 15;

    /** Reasons for settings with something to do before those that only explain. */
    private static final List<Class<? extends Advice>> SETTINGS = List.of(DepthAdvice.Stack.class, DepthAdvice.StackByRail.class,
            DepthAdvice.StackView.class, DepthAdvice.FlowerByStack.class, DepthAdvice.OneFrameInWind.class, DepthAdvice.OneFrameByHand.class,
            ApertureAdvice.DimmedByFilter.class, ApertureAdvice.DimmedByFilterAndRing.class, ApertureAdvice.StoppedDownShows.class,
            ShutterAdvice.Bulb.class, SetAdvice.BlurAsSet.class, ToneAdvice.ExposeForMist.class, ToneAdvice.SmallFrameInShade.class,
            ToneAdvice.SmallFrameInSun.class, DepthAdvice.FlowerDeeper.class,
            MotionAdvice.InLull.class, MotionAdvice.GustsBlur.class, ToneAdvice.ExposeForFlecks.class, ToneAdvice.Bracket.class,
            ToneAdvice.BracketUp.class, PhoneAdvice.PhoneHdr.class, PhoneAdvice.PhoneBrighter.class, PhoneAdvice.PhoneDarker.class,
            PhoneAdvice.PhoneLock.class, ApertureAdvice.ApertureOpenedOn.class, ApertureAdvice.ApertureAtLimit.class,
            MotionAdvice.IsoForHand.class, MotionAdvice.IsoForMonopod.class, MotionAdvice.IsoForWind.class, MotionAdvice.IsoForGusts.class,
            MotionAdvice.IsoForStillness.class, MotionAdvice.IsoForSlowHands.class, MotionAdvice.IsoForDark.class,
            MotionAdvice.IsoWithoutRelease.class, ApertureAdvice.class, MotionAdvice.class);
    private static final List<Class<? extends Advice>> COMPOSITION = List.of(ComposeAdvice.FlowerOverfills.class,
            DepthAdvice.BackgroundShows.class, DepthAdvice.BackgroundShowsWideOpen.class, ComposeAdvice.TrunksOnly.class,
            ComposeAdvice.LookForLine.class, ComposeAdvice.LookBehindFlower.class, ComposeAdvice.class);

    private SaidOfShot() {
    }

    static List<Advice> inOrder(Brief brief, TimedShot shot) {
        List<Advice> said = new ArrayList<>();
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        if (fit != null && settings != null) {
            fit.reasons().stream().filter(reason -> settings.stack() == null || !(reason instanceof FitAdvice.DepthShort)).forEach(said::add);
            said.addAll(settings.reasons());
        }
        said.addAll(brief.composition(shot));
        List<Advice> direction = shot.sunlight() == null ? List.of() : shot.sunlight().reasons();
        List<Advice> objections = said.stream().filter(SaidOfShot::objects).toList();
        List<Advice> spoils = Stream.concat(objections.stream(), direction.stream().filter(SaidOfShot::flares))
                .distinct().limit(MOST_OBJECTIONS).toList();
        Set<Advice> order = new LinkedHashSet<>(spoils);
        brief.order().legs().stream().filter(leg -> leg.what() == Leg.What.WAIT && leg.minutes() >= A_WAIT_MIN
                        && shot.intent().shot().name().equals(leg.shot())).map(Leg::why).filter(Objects::nonNull).forEach(order::add);
        shot.helps().stream().limit(objections.isEmpty() ? 0 : 1).forEach(order::add);
        light(shot.outlook(), direction).stream().limit(spoils.isEmpty() ? MOST_LIGHT : 1).forEach(order::add);
        order.addAll(first(said, SETTINGS));
        boolean shows = objections.stream().anyMatch(FitAdvice.BackgroundWide.class::isInstance);
        order.addAll(first(said.stream().filter(advice -> !shows || !(advice instanceof DepthAdvice)).toList(), COMPOSITION));
        order.addAll(objections);
        order.addAll(shot.helps());
        said.stream().filter(advice -> !chosen(advice)).forEach(order::add);
        order.addAll(said);
        return List.copyOf(order);
    }

    /** Why the light is what it is, then from which side it comes: each fact once, and none that asks for nothing. */
    private static List<Advice> light(@Nullable Outlook outlook, List<Advice> direction) {
        List<Advice> because = outlook == null ? List.of() : outlook.because();
        boolean wrongSide = because.stream().anyMatch(LightAdvice.SunOffTheSideWished.class::isInstance);
        boolean sideGiven = !wrongSide && direction.stream().anyMatch(SaidOfShot::side);
        boolean sunless = because.stream().anyMatch(SaidOfShot::sunless);
        return Stream.concat(because.stream().filter(advice -> !(sideGiven && givenWithSide(advice) || advice instanceof LightAdvice.FlowersOpen)),
                direction.stream().filter(advice -> side(advice) ? !wrongSide : !flares(advice) && !sunless)).toList();
    }

    private static boolean side(Advice advice) {
        return advice instanceof DirectionAdvice.SunAhead || advice instanceof DirectionAdvice.SunBeside
                || advice instanceof DirectionAdvice.SunBehindYou || advice instanceof DirectionAdvice.SunOverhead;
    }

    /** Side and height of the sun, which the direction gives too. */
    private static boolean givenWithSide(Advice advice) {
        return advice instanceof LightAdvice.AheadAsWished || advice instanceof LightAdvice.AsideAsWished
                || advice instanceof LightAdvice.BehindYouAsWished || advice instanceof LightAdvice.SunIsLow
                || advice instanceof LightAdvice.SunIsHigh;
    }

    private static boolean sunless(Advice advice) {
        return advice instanceof LightAdvice.SunHidden || advice instanceof LightAdvice.SoftWithoutSun
                || advice instanceof LightAdvice.SoftUnderCloud || advice instanceof LightAdvice.SoftUnderLeaves
                || advice instanceof LightAdvice.SunBehindLand || advice instanceof LightAdvice.SunNotYetUp;
    }

    private static boolean flares(Advice advice) {
        return advice instanceof DirectionAdvice.SunInFrame || advice instanceof DirectionAdvice.SunNearFrame;
    }

    private static boolean objects(Advice advice) {
        return advice.severity() != Advice.Severity.NOTE;
    }

    /** What only says that the lens or the support is the one asked for. */
    private static boolean chosen(Advice advice) {
        return advice instanceof FitAdvice || advice instanceof SupportAdvice;
    }

    /** The first kind of these that is said, without objections. */
    private static List<Advice> first(List<Advice> said, List<Class<? extends Advice>> kinds) {
        return said.stream().filter(advice -> !objects(advice) && rank(advice, kinds) < kinds.size())
                .min(Comparator.comparingInt(advice -> rank(advice, kinds))).map(List::of).orElse(List.of());
    }

    private static int rank(Advice advice, List<Class<? extends Advice>> kinds) {
        for (int rank = 0; rank < kinds.size(); rank++) {
            if (kinds.get(rank).isInstance(advice)) {
                return rank;
            }
        }
        return kinds.size();
    }
}
