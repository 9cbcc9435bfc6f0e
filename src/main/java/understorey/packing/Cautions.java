package understorey.packing;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.plan.FieldGuide;
import understorey.plan.ForecastHour;
import understorey.plan.Shot;
import understorey.plan.Subject;
import understorey.sky.Interval;
import understorey.visit.Day;
import understorey.visit.HeadTorchHours;
import understorey.visit.Hours;

/** Picks the cautions that fit a trip, the most serious first. */
public final class Cautions {

    /** Twigs and branches can break from here (a tree consultancy's advice), m/s. */
    private static final double BRANCHES_BREAK_MS = 14;
    /** One large managed forest closes at forecast gusts of 20.1 m/s. */
    private static final double WOODS_CLOSE_MS = 20;

    private Cautions() {
    }

    /** The cautions of a day. */
    public static List<Advice> of(Day day) {
        List<Advice> cautions = new ArrayList<>();
        double gustMs = gustMs(day.trip().forecast(), day.hours());
        if (gustMs >= BRANCHES_BREAK_MS) {
            cautions.add(gustMs >= WOODS_CLOSE_MS ? new CautionAdvice.GustsTooStrong(gustMs)
                    : new CautionAdvice.GustsBreakBranches(gustMs));
        }
        darkness(day.headTorch(), cautions);
        if (day.trip().stay().passesMidnight()) {
            cautions.add(new CautionAdvice.AccessAtNight());
        }
        if (gustMs < BRANCHES_BREAK_MS) {
            cautions.add(new CautionAdvice.BranchesInWind());
        }
        cautions.add(new CautionAdvice.KeepToThePaths());
        List<Subject> subjects = day.trip().shots().stream().map(Shot::subject).distinct().toList();
        for (Subject subject : subjects) {
            if (subject.care() != null && !subject.care().isBlank()) {
                cautions.add(new CautionAdvice.CareForSubject(subject.name(), unstopped(subject.care())));
            }
        }
        cautions.addAll(laws(subjects, day.trip().site().country()));
        rain(day, cautions);
        cautions.add(new CautionAdvice.Ticks());
        cautions.add(new CautionAdvice.SunThroughALens());
        if (day.trip().contact() == null) {
            cautions.add(new CautionAdvice.TellSomeone());
        }
        cautions.add(new CautionAdvice.LocalRules());
        return List.copyOf(cautions);
    }

    /** The text without its full stop, because the sentence around it has one. */
    private static String unstopped(String care) {
        return care.strip().endsWith(".") ? care.strip().substring(0, care.strip().length() - 1) : care.strip();
    }

    /** The rules of the site's country, each once; a rule from memory is not quoted, and no country has no rule. */
    private static List<Advice> laws(List<Subject> subjects, @Nullable String country) {
        Map<FieldGuide.Statement, List<String>> rules = new LinkedHashMap<>();
        for (Subject subject : subjects) {
            for (FieldGuide.Law law : subject.guide() == null ? List.<FieldGuide.Law>of() : subject.guide().laws()) {
                if (law.country() != null && law.country().equals(country) && !law.rule().mark().equals("M")) {
                    rules.computeIfAbsent(law.rule(), rule -> new ArrayList<>()).add(subject.name());
                }
            }
        }
        List<Advice> laws = new ArrayList<>();
        rules.forEach((rule, names) -> laws.add(new CautionAdvice.PlantLaw(String.join(", ", names), unstopped(rule.text()), rule.source())));
        return laws.isEmpty() ? List.of(new CautionAdvice.PlantLawUnknown()) : laws;
    }

    /** The first rain of the visit. */
    private static void rain(Day day, List<Advice> cautions) {
        day.sky().hours(day.hours().arrive(), day.hours().leave()).stream()
                .filter(hour -> hour.time().isBefore(day.hours().leave()) && hour.wet()).findFirst()
                .ifPresent(hour -> cautions.add(new CautionAdvice.RainCover(hour.time())));
    }

    /** Strongest gust of the day up to the end of the visit: branches can fall after the gust that broke them. */
    private static double gustMs(List<ForecastHour> forecast, Hours hours) {
        LocalDateTime from = hours.start().toLocalDateTime();
        LocalDateTime leave = hours.leave().toLocalDateTime();
        return forecast.stream().filter(hour -> !hour.begins(from.toLocalDate()).isBefore(from) && hour.begins(from.toLocalDate()).isBefore(leave))
                .mapToDouble(hour -> Math.max(orCalm(hour.gustMs()), orCalm(hour.windMs()))).max().orElse(0);
    }

    private static double orCalm(@Nullable Double speedMs) {
        return speedMs == null ? 0 : speedMs;
    }

    private static void darkness(HeadTorchHours torch, List<Advice> cautions) {
        if (torch.allDay()) {
            cautions.add(new CautionAdvice.DarkAllTheTime());
        }
        Interval night = torch.between();
        if (night != null) {
            cautions.add(new CautionAdvice.DarkInBetween(night.from(), night.to()));
            return;
        }
        if (torch.until() != null) {
            cautions.add(new CautionAdvice.DarkOnTheWayIn(torch.until(), torch.minutesIn()));
        }
        if (torch.from() != null) {
            cautions.add(new CautionAdvice.DarkOnTheWayOut(torch.from(), torch.minutesOut()));
        }
    }
}
