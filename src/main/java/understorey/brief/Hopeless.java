package understorey.brief;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.advice.SpoilerAdvice;
import understorey.advice.TripAdvice;
import understorey.kit.Verdict;
import understorey.plan.Subject;
import understorey.season.FloweringWindow;

/**
 * Says whether a day is hardly worth going, and what to do instead. It is so if most pictures, by priority, have a chance of full
 * flower below a fifth and below half of what the best day has, if gusts break branches, or if fewer than half of the pictures are possible (common practice, no source).
 */
final class Hopeless {

    private static final double HARDLY = 0.2;
    private static final double HALF = 0.5;

    private Hopeless() {
    }

    /** Why a day is hardly worth going, and what to do instead; empty for any other day. */
    static List<Advice> of(Brief brief) {
        List<Advice> hopeless = new ArrayList<>(brief.cautions().stream().filter(Hopeless::dangerous).toList());
        Subject subject = withoutFlowers(brief);
        if (subject != null) {
            hopeless.add(new SpoilerAdvice.FlowersHardly(chance(brief, subject), subject.name()));
            hopeless.addAll(instead(brief, subject));
        }
        int possible = PictureSet.of(brief, shot -> shot.time() != null && shot.verdict() != Verdict.CANNOT).count();
        if (possible < HALF * brief.timed().size()) {
            hopeless.add(new SpoilerAdvice.FewPossible(possible, brief.timed().size()));
        }
        return List.copyOf(hopeless);
    }

    /** Gusts that break branches, in a wood or on the way to it. */
    private static boolean dangerous(Advice caution) {
        return caution instanceof CautionAdvice.GustsBreakBranches || caution instanceof CautionAdvice.GustsTooStrong;
    }

    /** The subject with the most pictures of those that hardly flower; null if these are not most of the pictures. */
    private static @Nullable Subject withoutFlowers(Brief brief) {
        Map<Subject, Double> shares = new LinkedHashMap<>();
        for (TimedShot shot : brief.timed()) {
            Subject subject = shot.intent().shot().subject();
            if (hardly(brief, subject)) {
                shares.put(subject, PictureSet.of(brief, other -> other.intent().shot().subject().equals(subject)).share());
            }
        }
        double all = shares.values().stream().mapToDouble(Double::doubleValue).sum();
        return all <= HALF ? null : shares.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    }

    /** Where the season is hardly known, every day has a low chance: a day is only hopeless beside a better one. */
    private static boolean hardly(Brief brief, Subject subject) {
        FloweringWindow window = brief.season().window(subject);
        double chance = chance(brief, subject);
        return window != null && chance < HARDLY && chance < HALF * window.chanceOn(window.best());
    }

    /** Of full flower; 1 where no dates are known. */
    private static double chance(Brief brief, Subject subject) {
        FloweringWindow window = brief.season().window(subject);
        return window == null ? 1 : window.chanceOn(brief.date());
    }

    /** The better days of the season, and that none of the days given is among them. */
    private static List<Advice> instead(Brief brief, Subject subject) {
        List<Advice> instead = new ArrayList<>();
        for (Advice finding : brief.findings()) {
            if (finding instanceof TripAdvice.BetterDays better && better.subject().equals(subject.name())) {
                instead.add(new SpoilerAdvice.GoInstead(better.from(), better.to(), better.most()));
            }
        }
        if (brief.season().ranking() != null) {
            instead.add(new SpoilerAdvice.BestOfDaysGiven(brief.season().ranking().possible()));
        }
        return instead;
    }
}
