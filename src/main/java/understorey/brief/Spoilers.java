package understorey.brief;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.advice.SpoilerAdvice;
import understorey.advice.VisitAdvice;
import understorey.exposure.Settings;
import understorey.kit.Verdict;
import understorey.plan.Subject;
import understorey.season.FloweringWindow;
import understorey.visit.Safety;

/**
 * Ranks what could spoil a day. A risk weighs its chance times the pictures that it touches, by priority, times the part
 * of them that it costs. That part and the limits are rules of thumb, no source.
 */
final class Spoilers {

    private static final int MOST = 3;
    /** Lighter risks are named only where no other is. */
    private static final double WORTH_NAMING = 0.05;
    private static final double DANGER = 2;
    /** Twigs and branches can break from 13.9 m/s (a tree consultancy's advice); a forecast may be 1 m/s short: common practice, no source. */
    private static final double BRANCHES_MAY_FALL_MS = 13;
    private static final double COMPROMISE = 0.3;
    private static final double POOR_LIGHT = 0.6;
    private static final double NO_DATES = 0.5;
    private static final double LATE = 0.5;
    private static final double TIGHT = 0.2;
    private static final Duration TIGHT_CLOSING = Duration.ofMinutes(30);

    private final Brief brief;
    private final List<Risk> risks = new ArrayList<>();

    private Spoilers(Brief brief) {
        this.brief = brief;
    }

    /** Up to three risks, the greatest first; never empty. */
    static List<Advice> of(Brief brief) {
        Spoilers spoilers = new Spoilers(brief);
        spoilers.danger();
        spoilers.branches();
        spoilers.flowers();
        spoilers.pictures();
        spoilers.wayBack();
        spoilers.risks.addAll(WeatherRisks.of(brief));
        return spoilers.ranked();
    }

    private List<Advice> ranked() {
        risks.sort(Comparator.comparingDouble(Risk::weight).reversed());
        List<Advice> named = new ArrayList<>();
        for (Risk risk : risks) {
            if (named.isEmpty() || named.size() < MOST && risk.weight() >= WORTH_NAMING) {
                named.add(risk.reason());
            }
        }
        return List.copyOf(named);
    }

    private void danger() {
        brief.cautions().stream().filter(caution -> caution.severity() == Advice.Severity.WARNING)
                .forEach(caution -> add(DANGER, caution));
    }

    /** Gusts that are a little below those that the cautions warn of. */
    private void branches() {
        boolean warned = brief.cautions().stream().anyMatch(caution -> caution instanceof CautionAdvice.GustsBreakBranches
                || caution instanceof CautionAdvice.GustsTooStrong);
        boolean trees = brief.day().places().stream().anyMatch(place -> place.stand().canopy().plantAreaIndex() > 0);
        double gustMs = brief.weather().stream().filter(hour -> hour.time().isBefore(brief.order().leave()))
                .map(hour -> hour.weather().gustMs()).filter(Objects::nonNull).mapToDouble(Double::doubleValue).max().orElse(0);
        if (trees && !warned && gustMs >= BRANCHES_MAY_FALL_MS) {
            add(DANGER, new SpoilerAdvice.BranchesMayFall(gustMs));
        }
    }

    private void flowers() {
        LinkedHashSet<String> keys = new LinkedHashSet<>();
        for (TimedShot shot : brief.timed()) {
            Subject subject = shot.intent().shot().subject();
            if (keys.add(subject.key())) {
                PictureSet pictures = PictureSet.of(brief, other -> other.intent().shot().subject().key().equals(subject.key()));
                flowers(subject, brief.season().window(subject), pictures);
            }
        }
    }

    private void flowers(Subject subject, @Nullable FloweringWindow window, PictureSet pictures) {
        if (window == null) {
            add(NO_DATES * pictures.share(), new SpoilerAdvice.FlowersUnknown(subject.name(), pictures.numbers()));
            return;
        }
        double chance = window.chanceOn(brief.date());
        double weight = (1 - chance) * pictures.share();
        if (chance < FloweringWindow.LIKELY) {
            add(weight, new SpoilerAdvice.FlowersUnlikely(chance, subject.name()));
        } else {
            add(weight, new SpoilerAdvice.FlowersLikely(chance, subject.name(), window.errorD()));
        }
    }

    private void pictures() {
        int all = brief.timed().size();
        PictureSet impossible = PictureSet.of(brief, Spoilers::impossible);
        if (!impossible.isEmpty()) {
            add(impossible.share(), new SpoilerAdvice.PicturesImpossible(impossible.numbers(), impossible.count(), all));
        }
        PictureSet left = PictureSet.of(brief, shot -> shot.time() == null && !impossible(shot));
        if (!left.isEmpty()) {
            add(left.share(), new SpoilerAdvice.PicturesLeftOut(left.numbers(), left.count(), all));
        }
        PictureSet compromised = PictureSet.of(brief, Spoilers::compromised);
        if (!compromised.isEmpty()) {
            add(COMPROMISE * compromised.share(), new SpoilerAdvice.PicturesCompromised(compromised.numbers(), compromised.count(), all));
        }
        PictureSet dull = PictureSet.of(brief, TimedShot::poorLight);
        if (!dull.isEmpty()) {
            add(POOR_LIGHT * dull.share(), new SpoilerAdvice.LightPoor(dull.numbers(), dull.count(), all));
        }
    }

    /** With the bag at any time, or at the time that the author fixed. */
    private static boolean impossible(TimedShot shot) {
        return shot.verdict() == Verdict.CANNOT && (shot.time() != null || !shot.fit().possible());
    }

    /** Motion blur has a risk of its own. */
    private static boolean compromised(TimedShot shot) {
        Settings settings = shot.settings();
        return shot.time() != null && shot.verdict() == Verdict.COMPROMISE && settings != null && settings.limit() != Settings.Limit.STEMS;
    }

    /** A gate or a check-in that the plan misses, or only just meets. */
    private void wayBack() {
        List<Advice> remarks = new ArrayList<>(brief.order().remarks());
        remarks.addAll(brief.safety().remarks());
        for (Advice remark : remarks) {
            if (remark instanceof VisitAdvice.TooLate) {
                add(LATE, remark);
            }
        }
        Safety.Closing closing = brief.safety().closing();
        if (closing != null) {
            Duration spare = Duration.between(brief.safety().back(), closing.at());
            if (!spare.isNegative() && spare.compareTo(TIGHT_CLOSING) < 0) {
                add(TIGHT, spare.toMinutes() == 0 ? new SpoilerAdvice.ClosingAtOnce(closing.at())
                        : new SpoilerAdvice.ClosingSoon(closing.at(), spare.toMinutes()));
            }
        }
    }

    private void add(double weight, Advice reason) {
        risks.add(new Risk(weight, reason));
    }
}
