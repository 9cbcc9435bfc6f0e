package understorey.order;

import java.util.ArrayList;
import java.util.List;
import understorey.advice.Advice;
import understorey.advice.RoomAdvice;
import understorey.visit.Hours;

/** Changes that would let every must-have picture be taken if not all of them fit. */
final class RoomForMusts {

    /** Fewest minutes of a picture: common practice, no source. */
    private static final int SHORTEST = 5;

    private final Hours hours;
    private final Visit visit;

    private RoomForMusts(Hours hours, Visit visit) {
        this.hours = hours;
        this.visit = visit;
    }

    /** The changes, those without a head torch first; none for more musts than can be ordered exactly. */
    static List<Advice> of(Hours hours, Visit visit, List<Integer> musts, List<Candidate> candidates) {
        if (musts.size() > BranchAndBound.MOST) {
            return List.of(new RoomAdvice.MustsTooMany(musts.size()));
        }
        int earliest = Math.max(hours.opens(), Math.max(0, visit.from() - LeftOut.MOST_CHANGE));
        int latest = Math.min(hours.closes(), visit.to() + LeftOut.MOST_CHANGE);
        Fitting.Room room = Fitting.room(visit.only(musts), earliest, latest, SHORTEST);
        RoomForMusts offers = new RoomForMusts(hours, visit);
        List<Advice> reasons = new ArrayList<>();
        List<Advice> byLamp = new ArrayList<>();
        if (room.earlier() != null && offers.lightBy(musts, visit.from() - room.earlier())) {
            offers.arriving(room.earlier(), reasons, byLamp);
        }
        if (room.later() != null && offers.lightUntil(musts, visit.to() + room.later())) {
            offers.leaving(room.later(), reasons, byLamp);
        }
        if (room.shorter() != null && room.task() != null) {
            reasons.add(new RoomAdvice.RoomByShortening(candidates.get(musts.get(room.task())).name(), room.shorter()));
        }
        reasons.addAll(byLamp);
        return reasons.isEmpty() ? List.of(new RoomAdvice.NoRoom()) : reasons;
    }

    /** True if some must could start in daylight after that arrival: minutes in the dark gain nothing. */
    private boolean lightBy(List<Integer> musts, int arrive) {
        return musts.stream().anyMatch(must -> !visit.times().night(visit.between(arrive, visit.to()).readyFirst(must)));
    }

    /** True if some must could end in daylight before that leave. */
    private boolean lightUntil(List<Integer> musts, int leave) {
        return musts.stream().anyMatch(must -> !visit.times()
                .night(visit.times().leaveBy(visit.tasks().get(must).spot(), visit.base(), leave) - SHORTEST));
    }

    private void arriving(int earlier, List<Advice> reasons, List<Advice> byLamp) {
        int arrive = visit.from() - earlier;
        if (visit.times().night(arrive) && !visit.times().night(visit.from())) {
            byLamp.add(new RoomAdvice.RoomByArrivingInTheDark(earlier, hours.at(arrive)));
        } else {
            reasons.add(new RoomAdvice.RoomByArriving(earlier, hours.at(arrive)));
        }
    }

    /** Adds a later leave; the last minute decides whether the way out is dark. */
    private void leaving(int later, List<Advice> reasons, List<Advice> byLamp) {
        int leave = visit.to() + later;
        if (visit.times().night(leave - 1) && !visit.times().night(visit.to() - 1)) {
            byLamp.add(new RoomAdvice.RoomByLeavingInTheDark(later, hours.at(leave)));
        } else {
            reasons.add(new RoomAdvice.RoomByLeaving(later, hours.at(leave)));
        }
    }
}
