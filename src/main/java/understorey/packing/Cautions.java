package understorey.packing;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.CautionAdvice;
import understorey.plan.ForecastHour;
import understorey.plan.Shot;
import understorey.plan.Subject;
import understorey.visit.Day;
import understorey.visit.HeadTorchHours;

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
        double gustMs = gustMs(day.trip().forecast(), day.hours().leave());
        if (gustMs >= BRANCHES_BREAK_MS) {
            cautions.add(gustMs >= WOODS_CLOSE_MS ? new CautionAdvice.GustsTooStrong(gustMs)
                    : new CautionAdvice.GustsBreakBranches(gustMs));
        }
        darkness(day.headTorch(), cautions);
        if (gustMs < BRANCHES_BREAK_MS) {
            cautions.add(new CautionAdvice.BranchesInWind());
        }
        cautions.add(new CautionAdvice.KeepToThePaths());
        Set<String> cared = new HashSet<>();
        for (Shot shot : day.trip().shots()) {
            Subject subject = shot.subject();
            if (subject.care() != null && !subject.care().isBlank() && cared.add(subject.key())) {
                cautions.add(new CautionAdvice.CareForSubject(subject.name(), unstopped(subject.care())));
            }
        }
        cautions.add(new CautionAdvice.Ticks());
        cautions.add(new CautionAdvice.SunThroughALens());
        cautions.add(new CautionAdvice.TellSomeone());
        cautions.add(new CautionAdvice.LocalRules());
        return List.copyOf(cautions);
    }

    /** The text without its full stop, because the sentence around it has one. */
    private static String unstopped(String care) {
        return care.strip().endsWith(".") ? care.strip().substring(0, care.strip().length() - 1) : care.strip();
    }

    /** Strongest gust of the day up to the end of the visit: branches can fall after the gust that broke them. */
    private static double gustMs(List<ForecastHour> forecast, ZonedDateTime leave) {
        double gustMs = 0;
        for (ForecastHour hour : forecast) {
            boolean before = hour.time().isBefore(leave.toLocalTime())
                    && (hour.date() == null || hour.date().equals(leave.toLocalDate()));
            if (before) {
                gustMs = Math.max(gustMs, Math.max(orCalm(hour.gustMs()), orCalm(hour.windMs())));
            }
        }
        return gustMs;
    }

    private static double orCalm(@Nullable Double speedMs) {
        return speedMs == null ? 0 : speedMs;
    }

    private static void darkness(HeadTorchHours lamp, List<Advice> cautions) {
        if (lamp.allDay()) {
            cautions.add(new CautionAdvice.DarkAllTheTime());
        }
        if (lamp.until() != null) {
            cautions.add(new CautionAdvice.DarkOnTheWayIn(lamp.until(), lamp.minutesIn()));
        }
        if (lamp.from() != null) {
            cautions.add(new CautionAdvice.DarkOnTheWayOut(lamp.from(), lamp.minutesOut()));
        }
    }
}
