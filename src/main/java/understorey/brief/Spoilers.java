package understorey.brief;

import static understorey.reason.Figure.Measure.CLOCK;
import static understorey.reason.Figure.Measure.COUNT;
import static understorey.reason.Figure.Measure.DAYS;
import static understorey.reason.Figure.Measure.MINUTES;
import static understorey.reason.Figure.Measure.SHARE;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import understorey.exposure.ExposureReason;
import understorey.kit.Verdict;
import understorey.visit.OutingReason;
import understorey.visit.Safety;
import understorey.packing.Caution;
import understorey.plan.Subject;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.season.FloweringWindow;

/**
 * Ranks what could spoil a day. A risk weighs its chance times the pictures that it touches, by priority, times the part
 * of them that it costs. That part and the limits are rules of thumb, no source.
 */
final class Spoilers {

    private static final int MOST = 3;
    /** Lighter risks are named only where no other is. */
    private static final double WORTH_NAMING = 0.1;
    private static final double DANGER = 2;
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
    static List<Reason> of(Brief brief) {
        Spoilers spoilers = new Spoilers(brief);
        spoilers.danger();
        spoilers.flowers();
        spoilers.pictures();
        spoilers.wayBack();
        spoilers.risks.addAll(WeatherRisks.of(brief));
        return spoilers.ranked();
    }

    private List<Reason> ranked() {
        risks.sort(Comparator.comparingDouble(Risk::weight).reversed());
        List<Reason> named = new ArrayList<>();
        for (Risk risk : risks) {
            if (named.isEmpty() || named.size() < MOST && risk.weight() >= WORTH_NAMING) {
                named.add(risk.reason());
            }
        }
        return List.copyOf(named);
    }

    private void danger() {
        for (Reason caution : brief.cautions()) {
            if (caution.kind() == Caution.GUSTS_TOO_STRONG || caution.kind() == Caution.GUSTS_BREAK_BRANCHES) {
                add(DANGER, caution);
            }
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

    private void flowers(Subject subject, FloweringWindow window, PictureSet pictures) {
        if (window == null) {
            add(NO_DATES * pictures.share(), Reason.of(SpoilerReason.FLOWERS_UNKNOWN).with("subject", subject.name())
                    .with("pictures", pictures.figure()));
            return;
        }
        double chance = window.chanceOn(brief.date());
        double weight = (1 - chance) * pictures.share();
        if (chance < FloweringWindow.LIKELY) {
            add(weight, Reason.of(SpoilerReason.FLOWERS_UNLIKELY).with("subject", subject.name()).with("chance", chance, SHARE));
        } else {
            add(Math.min(weight, WORTH_NAMING / 2), Reason.of(SpoilerReason.FLOWERS_LIKELY).with("subject", subject.name())
                    .with("chance", chance, SHARE).with("error", window.errorD(), DAYS));
        }
    }

    private void pictures() {
        int all = brief.timed().size();
        PictureSet impossible = PictureSet.of(brief, shot -> shot.verdict() == Verdict.CANNOT);
        if (!impossible.isEmpty()) {
            add(impossible.share(), Reason.of(SpoilerReason.PICTURES_IMPOSSIBLE).with("count", impossible.count(), COUNT)
                    .with("all", all, COUNT).with("pictures", impossible.figure()));
        }
        PictureSet left = PictureSet.of(brief, shot -> shot.verdict() != Verdict.CANNOT && shot.time() == null);
        if (!left.isEmpty()) {
            add(left.share(), Reason.of(SpoilerReason.PICTURES_LEFT_OUT).with("count", left.count(), COUNT)
                    .with("all", all, COUNT).with("pictures", left.figure()));
        }
        PictureSet compromised = PictureSet.of(brief, shot -> shot.verdict() == Verdict.COMPROMISE
                && shot.settings().objection() != ExposureReason.WIND_TOO_STRONG);
        if (!compromised.isEmpty()) {
            add(COMPROMISE * compromised.share(), Reason.of(SpoilerReason.PICTURES_COMPROMISED)
                    .with("count", compromised.count(), COUNT).with("all", all, COUNT).with("pictures", compromised.figure()));
        }
        PictureSet dull = PictureSet.of(brief, TimedShot::poorLight);
        if (!dull.isEmpty()) {
            add(POOR_LIGHT * dull.share(), Reason.of(SpoilerReason.LIGHT_POOR).with("count", dull.count(), COUNT)
                    .with("all", all, COUNT).with("pictures", dull.figure()));
        }
    }

    /** A gate or a check-in that the plan misses, or only just meets. */
    private void wayBack() {
        List<Reason> remarks = new ArrayList<>(brief.order().remarks());
        remarks.addAll(brief.safety().remarks());
        for (Reason remark : remarks) {
            if (remark.kind() == OutingReason.BACK_TOO_LATE || remark.kind() == OutingReason.CAR_PARK_CLOSES
                    || remark.kind() == OutingReason.AFTER_CLOSING) {
                add(LATE, remark);
            }
        }
        Safety.Closing closing = brief.safety().closing();
        Duration spare = closing == null ? null : Duration.between(brief.safety().back(), closing.at());
        if (spare != null && !spare.isNegative() && spare.compareTo(TIGHT_CLOSING) < 0) {
            add(TIGHT, Reason.of(SpoilerReason.CLOSING_SOON).with("at", new Figure(closing.at(), CLOCK))
                    .with("minutes", spare.toMinutes(), MINUTES));
        }
    }

    private void add(double weight, Reason reason) {
        risks.add(new Risk(weight, reason));
    }
}
