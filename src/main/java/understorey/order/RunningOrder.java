package understorey.order;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.sky.Interval;
import understorey.visit.Day;
import understorey.visit.Hours;

/**
 * The visit minute by minute. Of all orders and starts on a grid of 5 minutes it takes the most must-have pictures, then those
 * worth most by light, settings and priority, less a price for idle minutes and moves, then the most pictures (see {@link BranchAndBound}).
 * A fixed time is kept to the minute, or the picture is left out.
 *
 * @param arriveBy        the latest arrival in time for the first picture, if that saves a long wait; else the arrival
 * @param leaveLastSpotBy the latest minute to turn back and still be off the site in time, and in time for the check-in
 * @param legs            in order of time, without gaps between the first and the last
 * @param remarks         on what does not fit; none for a day that turns out different
 * @param timeLeft        on time left over at the end; null where it is short, and for a day that turns out different
 * @param basis           null where it would give a place away that is spared, and for a day that turns out different
 */
public record RunningOrder(ZonedDateTime arrive, ZonedDateTime arriveBy, ZonedDateTime leave, ZonedDateTime leaveLastSpotBy, List<Leg> legs,
                           List<Advice> remarks, @Nullable Advice timeLeft, @Nullable OrderBasis basis) {

    /** Minutes to set up and to find the frame: common practice, no source. */
    public static final int SET_UP_MIN = 3;

    /** Shortest wait, minutes, that makes a later arrival worthwhile: common practice, no source. */
    private static final int LONG_WAIT = 30;

    /** The best order of some pictures on a day. */
    public static RunningOrder of(Day day, List<Candidate> candidates) {
        List<Candidate> order = Tasks.inOrder(candidates);
        Hours hours = day.hours();
        Visit visit = Tasks.visit(day, order);
        Schedule schedule = planned(visit);
        Legs.Walked walked = Legs.of(day, visit, schedule, order);
        List<Advice> remarks = new ArrayList<>(hours.remarks());
        remarks.addAll(LeftOut.of(hours, visit, schedule, order));
        int arriveBy = arriveBy(visit, schedule);
        if (arriveBy > visit.from()) {
            remarks.add(new VisitAdvice.CouldArriveLater(hours.at(schedule.takes().get(0).start()), arriveBy - hours.minute(hours.arrive()),
                    hours.at(arriveBy)));
        }
        boolean withheld = day.trip().precision() != Share.Precision.EXACT && !walked.remarks().isEmpty();
        remarks.addAll(withheld ? List.of(new VisitAdvice.WalksWithheld()) : walked.remarks());
        if (day.trip().site().parking() == null && !day.trip().sparesThePlace() && day.walks().spots().size() > 2) {
            remarks.add(new VisitAdvice.NoParking());
        }
        return new RunningOrder(hours.arrive(), arriveBy > visit.from() ? hours.at(arriveBy) : hours.arrive(),
                hours.leave(), turnBack(day, visit, schedule), walked.legs(), List.copyOf(remarks),
                TimeLeft.of(day, visit, schedule, order), day.trip().sparesThePlace() ? null : OrderBasis.of(day, visit, order));
    }

    /** The best order on a day that turns out different, without remarks and without its basis. */
    public static RunningOrder instead(Day day, List<Candidate> candidates) {
        List<Candidate> order = Tasks.inOrder(candidates);
        Visit visit = Tasks.visit(day, order);
        Schedule schedule = planned(visit);
        return new RunningOrder(day.hours().arrive(), day.hours().arrive(), day.hours().leave(), turnBack(day, visit, schedule),
                Legs.of(day, visit, schedule, order).legs(), List.of(), null, null);
    }

    private static Schedule planned(Visit visit) {
        Transitions transitions = new Transitions(visit);
        return LeftShift.of(transitions, Schedule.best(transitions));
    }

    /** The latest arrival in time for the first picture, if that saves a long wait; else the first minute. */
    private static int arriveBy(Visit visit, Schedule schedule) {
        if (schedule.takes().isEmpty()) {
            return visit.from();
        }
        Schedule.Take first = schedule.takes().get(0);
        int arrive = first.start();
        while (arrive > visit.from() && visit.between(arrive, visit.to()).readyFirst(first.task()) > first.start()) {
            arrive--;
        }
        return arrive - visit.from() < LONG_WAIT ? visit.from() : arrive;
    }

    /** Latest minute to turn back, for gates, leave and check-in; a check-in too early to be kept sets no limit. */
    private static ZonedDateTime turnBack(Day day, Visit visit, Schedule schedule) {
        Hours hours = day.hours();
        if (schedule.takes().isEmpty()) {
            ZonedDateTime due = day.trip().contact() == null ? hours.leave() : hours.checkInDue(day.trip().contact());
            return due.isBefore(hours.leave()) ? due : hours.leave();
        }
        int last = visit.tasks().get(schedule.takes().get(schedule.takes().size() - 1).task()).spot();
        int forCheckIn = visit.times().leaveBy(last, visit.base(), hours.home(day.trip().contact()));
        return hours.at(forCheckIn >= hours.from() ? forCheckIn : visit.times().leaveBy(last, visit.base(), hours.to()));
    }

    /** Time of the picture of that name; null if it is left out. */
    public @Nullable Interval timeOf(String shot) {
        for (Leg leg : legs) {
            if (leg.what() == Leg.What.SHOOT && shot.equals(leg.shot())) {
                return new Interval(leg.from(), leg.to());
            }
        }
        return null;
    }

    /** Time at which the walk is back where it began. */
    public ZonedDateTime back() {
        return legs.isEmpty() ? leave : legs.get(legs.size() - 1).to();
    }

    /** The pictures taken, in order. */
    public List<Leg> shooting() {
        return legs.stream().filter(leg -> leg.what() == Leg.What.SHOOT).toList();
    }

    /** The spots on the way, the car park first; null is the site itself, or an unknown car park. */
    public List<@Nullable String> route(Site site) {
        List<@Nullable String> route = new ArrayList<>();
        route.add(site.parking() == null ? null : site.parking().spot());
        legs.forEach(leg -> route.add(leg.spot()));
        return route;
    }
}
