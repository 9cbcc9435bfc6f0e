package understorey.order;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.light.Outlook.Grade;
import understorey.visit.Day;

/** Time left over at the end of a visit, and the pictures that are worth another try then. */
final class TimeLeft {

    /** Less is a margin: common practice, no source. */
    private static final int WORTH_SAYING = 30;
    private static final int MOST_NAMED = 2;

    private TimeLeft() {
    }

    /** Advice on the minutes between the planned return and the end of the visit; null where they are few. */
    static @Nullable Advice of(Day day, Visit visit, Schedule schedule, List<Candidate> candidates) {
        int left = visit.to() - schedule.back();
        if (schedule.takes().isEmpty() || left < WORTH_SAYING) {
            return null;
        }
        Schedule.Take last = schedule.takes().get(schedule.takes().size() - 1);
        ZonedDateTime then = day.hours().at(last.start() + visit.tasks().get(last.task()).minutes() + left / 2);
        List<String> worthIt = IntStream.range(0, candidates.size()).boxed()
                .filter(i -> worthAnotherTry(day, schedule, candidates, i, then))
                .sorted(Comparator.comparingDouble(i -> -visit.tasks().get(i).priority() * candidates.get(i).best(then)))
                .limit(MOST_NAMED).map(i -> candidates.get(i).name()).toList();
        return worthIt.isEmpty() ? new VisitAdvice.TimeLeft(left) : new VisitAdvice.TimeLeftFor(left, worthIt);
    }

    /** Not in poor light, nor in light of a lower grade than it is taken in. */
    private static boolean worthAnotherTry(Day day, Schedule schedule, List<Candidate> candidates, int task, ZonedDateTime then) {
        Candidate picture = candidates.get(task);
        Grade grade = Grade.of(picture.best(then));
        Duration half = picture.duration().dividedBy(2);
        return grade != Grade.POOR && schedule.takes().stream().filter(take -> take.task() == task)
                .allMatch(take -> grade.compareTo(Grade.of(picture.best(day.hours().at(take.start()).plus(half)))) <= 0);
    }
}
