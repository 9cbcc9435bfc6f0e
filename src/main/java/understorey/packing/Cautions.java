package understorey.packing;

import static understorey.reason.Figure.Measure.CLOCK;
import static understorey.reason.Figure.Measure.METRES_PER_SECOND;
import static understorey.reason.Figure.Measure.MINUTES;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import understorey.plan.ForecastHour;
import understorey.plan.Shot;
import understorey.plan.Subject;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.visit.Day;
import understorey.visit.HeadTorchHours;

/** Picks the cautions that fit a trip, the gravest first. */
public final class Cautions {

    /** Twigs and branches can break from here (a tree consultancy's advice), m/s. */
    private static final double BRANCHES_BREAK_MS = 14;
    /** One large managed forest closes at forecast gusts of 20.1 m/s. */
    private static final double WOODS_CLOSE_MS = 20;

    private Cautions() {
    }

    /** The cautions of a day. */
    public static List<Reason> of(Day day) {
        List<Reason> cautions = new ArrayList<>();
        double gustMs = gustMs(day.trip().forecast(), day.hours().leave());
        if (gustMs >= BRANCHES_BREAK_MS) {
            cautions.add(Reason.of(gustMs >= WOODS_CLOSE_MS ? Caution.GUSTS_TOO_STRONG : Caution.GUSTS_BREAK_BRANCHES)
                    .with("gust", gustMs, METRES_PER_SECOND));
        }
        darkness(day.headTorch(), cautions);
        if (gustMs < BRANCHES_BREAK_MS) {
            cautions.add(Reason.of(Caution.BRANCHES_IN_WIND));
        }
        cautions.add(Reason.of(Caution.KEEP_TO_THE_PATHS));
        Set<String> cared = new HashSet<>();
        for (Shot shot : day.trip().shots()) {
            Subject subject = shot.subject();
            if (subject.care() != null && !subject.care().isBlank() && cared.add(subject.key())) {
                cautions.add(Reason.of(Caution.CARE_FOR_SUBJECT)
                        .with("subject", subject.name()).with("care", unstopped(subject.care())));
            }
        }
        cautions.add(Reason.of(Caution.TICKS));
        cautions.add(Reason.of(Caution.SUN_THROUGH_A_LENS));
        cautions.add(Reason.of(Caution.TELL_SOMEONE));
        cautions.add(Reason.of(Caution.LOCAL_RULES));
        return List.copyOf(cautions);
    }

    /** The sentence brings its own full stop. */
    private static String unstopped(String care) {
        return care.strip().endsWith(".") ? care.strip().substring(0, care.strip().length() - 1) : care.strip();
    }

    /** Of the day up to the end of the visit: what a gust has loosened may still fall after it. */
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

    private static double orCalm(Double speedMs) {
        return speedMs == null ? 0 : speedMs;
    }

    private static void darkness(HeadTorchHours lamp, List<Reason> cautions) {
        if (lamp.allDay()) {
            cautions.add(Reason.of(Caution.DARK_ALL_THE_TIME));
        }
        if (lamp.until() != null) {
            cautions.add(Reason.of(Caution.DARK_ON_THE_WAY_IN).with("until", new Figure(lamp.until(), CLOCK))
                    .with("minutes", lamp.minutesIn(), MINUTES));
        }
        if (lamp.from() != null) {
            cautions.add(Reason.of(Caution.DARK_ON_THE_WAY_OUT).with("from", new Figure(lamp.from(), CLOCK))
                    .with("minutes", lamp.minutesOut(), MINUTES));
        }
    }
}
