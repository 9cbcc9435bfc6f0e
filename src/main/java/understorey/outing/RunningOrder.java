package understorey.outing;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.kit.Intent;
import understorey.light.LightAt;
import understorey.plan.Share;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.SunDay;

/**
 * The order of the day: of all orders and starts on a grid of five minutes the one that takes the most musts, then the most
 * light for what matters, then is back first (see {@link BestOrder}). A pin is kept to the minute or the picture is left out.
 */
public final class RunningOrder {

    /** Minutes that are worth an arrival that much later: common practice, no source. */
    private static final int LONG_WAIT = 30;

    private RunningOrder() {
    }

    /** The visit where light counts for nothing but day and night. */
    public static Outing of(Trip trip, LocalDate date, SunDay sun, List<LightAt> light, List<Intent> intents) {
        return of(trip, date, sun, light, intents, Quality.daylight(light), List.of());
    }

    /**
     * The visit.
     *
     * @param light   on the darkest floor visited, over the whole date
     * @param quality of the light for each picture; asked at five-minute steps over the date
     * @param lenses  by picture; between two that are not equal there is a change of lens. Empty when nobody knows
     */
    public static Outing of(Trip trip, LocalDate date, SunDay sun, List<LightAt> light, List<Intent> intents, Quality quality,
                            List<?> lenses) {
        List<Intent> order = Wishes.inOrder(intents);
        VisitHours hours = VisitHours.of(trip, date, sun);
        Ground ground = Ground.of(trip.site(), light, hours, spots(order));
        Visit visit = Wishes.visit(hours, ground, new DayCurve(light), order, quality, inOrder(lenses, intents, order));
        Schedule schedule = Schedule.best(visit);
        Legs.Walked walked = Legs.of(hours, ground, visit, schedule, order, quality, sun.sunrise());
        List<Advice> remarks = new ArrayList<>(hours.remarks());
        remarks.addAll(LeftOut.of(hours, visit, schedule, order));
        remarks.addAll(laterArrival(hours, visit, schedule));
        boolean withheld = trip.precision() != Share.Precision.EXACT && !walked.remarks().isEmpty();
        remarks.addAll(withheld ? List.of(new VisitAdvice.WalksWithheld()) : walked.remarks());
        if (trip.site().parking() == null && ground.spots().size() > 2) {
            remarks.add(new VisitAdvice.NoParking());
        }
        return new Outing(hours.arrive(), hours.leave(), turnBack(trip, hours, visit, schedule), LampHours.of(light, hours.arrive(), hours.end()), walked.legs(),
                List.copyOf(remarks), hours.assumed());
    }

    /** The last minute of arriving that has one ready for the first picture, where that saves a long wait. */
    private static List<Advice> laterArrival(VisitHours hours, Visit visit, Schedule schedule) {
        if (schedule.takes().isEmpty()) {
            return List.of();
        }
        Schedule.Take first = schedule.takes().get(0);
        int arrive = first.start();
        while (arrive > visit.from() && visit.between(arrive, visit.to()).readyFirst(first.stint()) > first.start()) {
            arrive--;
        }
        if (arrive - visit.from() < LONG_WAIT) {
            return List.of();
        }
        return List.of(new VisitAdvice.CouldArriveLater(hours.at(first.start()), arrive - hours.minute(hours.arrive()), hours.at(arrive)));
    }

    /** From arriving to leaving. */
    public static Interval hours(Trip trip, LocalDate date, SunDay sun) {
        VisitHours hours = VisitHours.of(trip, date, sun);
        return new Interval(hours.arrive(), hours.leave());
    }

    private static List<String> spots(List<Intent> order) {
        List<String> spots = new ArrayList<>();
        for (Intent intent : order) {
            spots.add(intent.shot().spot());
        }
        return spots;
    }

    private static List<Object> inOrder(List<?> lenses, List<Intent> intents, List<Intent> order) {
        List<Object> sorted = new ArrayList<>();
        for (Intent intent : order) {
            for (int i = 0; i < lenses.size(); i++) {
                if (intents.get(i) == intent) {
                    sorted.add(lenses.get(i));
                }
            }
        }
        return sorted;
    }

    /** In time for gates, leaving and the word due; a word that is due before anybody could turn back sets no limit. */
    private static ZonedDateTime turnBack(Trip trip, VisitHours hours, Visit visit, Schedule schedule) {
        if (schedule.takes().isEmpty()) {
            ZonedDateTime due = trip.contact() == null ? hours.leave() : hours.wordDue(trip.contact());
            return due.isBefore(hours.leave()) ? due : hours.leave();
        }
        int last = last(visit, schedule);
        int forWord = visit.ways().leaveBy(last, visit.base(), hours.home(trip.contact()));
        return hours.at(forWord >= hours.from() ? forWord : visit.ways().leaveBy(last, visit.base(), hours.to()));
    }

    private static int last(Visit visit, Schedule schedule) {
        return visit.stints().get(schedule.takes().get(schedule.takes().size() - 1).stint()).spot();
    }
}
