package understorey.order;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.advice.WaitAdvice;
import understorey.light.Outlook.Grade;
import understorey.plan.LightWish;
import understorey.plan.SkyWord;
import understorey.visit.Day;
import understorey.visit.Hours;

/** Turns a schedule into legs, minute by minute: walk, set up, wait, shoot, and back to the base. */
final class Legs {

    /** A shorter wait is part of setting up. */
    private static final int SHORTEST_WAIT = 5;
    /** A wait with room for one more picture, set up and taken: common practice, no source. */
    private static final int ROOM_FOR_AN_EXTRA = 20;
    /** What a long wait is for in the end is seen in its last half hour. */
    private static final int LATELY = 30;

    private final Day day;
    private final Hours hours;
    private final Visit visit;
    private final List<Candidate> candidates;
    private final List<Leg> legs = new ArrayList<>();
    private final List<Advice> remarks = new ArrayList<>();
    private int now;
    private int here;

    private Legs(Day day, Visit visit, List<Candidate> candidates) {
        this.day = day;
        this.hours = day.hours();
        this.visit = visit;
        this.candidates = candidates;
        this.now = hours.minute(hours.arrive());
        this.here = visit.base();
    }

    /** The legs, and remarks on walks that are guesses. */
    record Walked(List<Leg> legs, List<Advice> remarks) {
    }

    static Walked of(Day day, Visit visit, Schedule schedule, List<Candidate> candidates) {
        Legs legs = new Legs(day, visit, candidates);
        if (!schedule.takes().isEmpty()) {
            legs.waitForTheGate();
        }
        for (Schedule.Take take : schedule.takes()) {
            legs.take(take);
        }
        legs.walk(visit.base(), null);
        return new Walked(List.copyOf(legs.legs), List.copyOf(legs.remarks));
    }

    private void waitForTheGate() {
        if (now < visit.from()) {
            add(visit.from(), Leg.What.WAIT, null, new WaitAdvice.WaitForOpening(hours.at(visit.from())));
        }
    }

    private void take(Schedule.Take take) {
        Task task = visit.tasks().get(take.task());
        String name = candidates.get(take.task()).name();
        int ready = ready(take.task());
        walk(task.spot(), name);
        if (take.start() - ready < SHORTEST_WAIT) {
            add(take.start(), Leg.What.SET_UP, name, null);
        } else {
            add(ready, Leg.What.SET_UP, name, null);
            add(take.start(), Leg.What.WAIT, name, used(take, ready));
        }
        add(take.start() + task.minutes(), Leg.What.SHOOT, name, null);
    }

    private int ready(int task) {
        int last = last();
        return last < 0 ? visit.readyFirst(task) : visit.ready(last, task, now);
    }

    private int last() {
        String shot = legs.isEmpty() ? null : legs.get(legs.size() - 1).shot();
        for (int i = 0; i < candidates.size(); i++) {
            if (candidates.get(i).name().equals(shot)) {
                return i;
            }
        }
        return -1;
    }

    /** The reason for a wait; a long wait by day has room for an extra that the plan does not have. */
    private Advice used(Schedule.Take take, int ready) {
        Advice why = why(take, ready);
        int minutes = take.start() - ready;
        if (minutes < ROOM_FOR_AN_EXTRA || visit.times().night(ready)) {
            return why;
        }
        return new WaitAdvice.WaitWithRoom(minutes, why);
    }

    private Advice why(Schedule.Take take, int ready) {
        Task task = visit.tasks().get(take.task());
        List<LightWish> wishes = candidates.get(take.task()).shot().light();
        if (task.pinned()) {
            return new WaitAdvice.WaitForPin(hours.at(take.start()));
        }
        ZonedDateTime sunrise = day.sun().sunrise();
        if (wishes.isEmpty() && sunrise != null && hours.minute(sunrise) >= ready
                && hours.minute(sunrise) <= take.start() + task.minutes()) {
            return new WaitAdvice.WaitForSunrise(sunrise);
        }
        Candidate candidate = candidates.get(take.task());
        ZonedDateTime start = hours.at(take.start());
        int lately = Math.max(ready, take.start() - LATELY);
        Grade best = Grade.POOR;
        for (Quality sky : candidate.skies()) {
            Grade grade = grade(candidate, sky, take.start());
            best = grade.compareTo(best) < 0 ? grade : best;
            if (grade.compareTo(grade(candidate, sky, lately)) < 0) {
                Advice worth = sky.worthTheWait(hours.at(lately), start);
                return under(candidate, sky, start, worth != null ? worth : new WaitAdvice.WaitForLight(start, grade));
            }
        }
        Advice gain = first(candidate, start, sky -> sky.easierSettings(hours.at(ready), start));
        if (gain == null && best == Grade.POOR) {
            return new WaitAdvice.WaitForDay(start);
        }
        gain = gain == null ? first(candidate, start, sky -> sky.worthTheWait(hours.at(lately), start)) : gain;
        return gain == null ? new WaitAdvice.WaitForBestLight(start, best) : gain;
    }

    private Grade grade(Candidate candidate, Quality sky, int start) {
        return Grade.of(Tasks.mean(hours, start, candidate.minutes(), sky::at));
    }

    private static @Nullable Advice first(Candidate candidate, ZonedDateTime start, Function<Quality, @Nullable Advice> gain) {
        for (Quality sky : candidate.skies()) {
            Advice why = gain.apply(sky);
            if (why != null) {
                return under(candidate, sky, start, why);
            }
        }
        return null;
    }

    /** Says for which sky a reason holds if more than one may come. */
    private static Advice under(Candidate candidate, Quality sky, ZonedDateTime start, Advice why) {
        SkyWord word = sky.sky(start);
        return candidate.skies().size() == 1 || word == null ? why : new WaitAdvice.WaitForSky(word, why);
    }

    private void walk(int to, @Nullable String shot) {
        int arrival = visit.times().arrive(here, to, now);
        int from = here;
        here = to;
        if (arrival == now) {
            return;
        }
        if (day.walks().guessed(from, to)) {
            Advice reason = new VisitAdvice.WalkAssumed(name(from), name(to));
            if (!remarks.contains(reason)) {
                remarks.add(reason);
            }
        }
        add(arrival, Leg.What.WALK, shot, null);
    }

    private void add(int until, Leg.What what, @Nullable String shot, @Nullable Advice why) {
        legs.add(new Leg(hours.at(now), hours.at(until), what, day.walks().spots().get(here), shot, why));
        now = until;
    }

    private String name(int spot) {
        return day.walks().name(spot);
    }
}
