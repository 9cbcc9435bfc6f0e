package understorey.order;

import static understorey.reason.Figure.Measure.CLOCK;
import static understorey.reason.Figure.Measure.COUNT;
import static understorey.reason.Figure.Measure.MINUTES;

import java.util.ArrayList;
import java.util.List;
import understorey.reason.Figure;
import understorey.reason.Reason;
import understorey.visit.Hours;
import understorey.visit.OutingReason;

/** What would let every must be taken where not all of them fit. */
final class RoomForMusts {

    /** A picture takes at least that long: common practice, no source. */
    private static final int SHORTEST = 5;

    private final Hours hours;
    private final Visit visit;

    private RoomForMusts(Hours hours, Visit visit) {
        this.hours = hours;
        this.visit = visit;
    }

    /** Changes that need no lamp come first. None is worked out for more musts than can be ordered exactly. */
    static List<Reason> of(Hours hours, Visit visit, List<Integer> musts, List<Candidate> candidates) {
        if (musts.size() > BestOrder.MOST) {
            return List.of(Reason.of(OutingReason.MUSTS_TOO_MANY).with("count", musts.size(), COUNT));
        }
        int earliest = Math.max(hours.opens(), Math.max(0, visit.from() - LeftOut.MOST_CHANGE));
        int latest = Math.min(hours.closes(), visit.to() + LeftOut.MOST_CHANGE);
        Fitting.Room room = Fitting.room(visit.only(musts), earliest, latest, SHORTEST);
        RoomForMusts offers = new RoomForMusts(hours, visit);
        List<Reason> reasons = new ArrayList<>();
        List<Reason> byLamp = new ArrayList<>();
        if (room.earlier() != null) {
            offers.arriving(room.earlier(), reasons, byLamp);
        }
        if (room.later() != null) {
            offers.leaving(room.later(), reasons, byLamp);
        }
        if (room.shorter() != null) {
            reasons.add(Reason.of(OutingReason.ROOM_BY_SHORTENING).with("minutes", room.shorter(), MINUTES)
                    .with("shot", candidates.get(musts.get(room.task())).name()));
        }
        reasons.addAll(byLamp);
        return reasons.isEmpty() ? List.of(Reason.of(OutingReason.NO_ROOM)) : reasons;
    }

    private void arriving(int earlier, List<Reason> reasons, List<Reason> byLamp) {
        int arrive = visit.from() - earlier;
        if (visit.times().night(arrive) && !visit.times().night(visit.from())) {
            byLamp.add(Reason.of(OutingReason.ROOM_BY_ARRIVING_IN_THE_DARK).with("minutes", earlier, MINUTES).with("arrive", clock(arrive)));
        } else {
            reasons.add(Reason.of(OutingReason.ROOM_BY_ARRIVING).with("minutes", earlier, MINUTES).with("arrive", clock(arrive)));
        }
    }

    /** The way out is judged in its last minute. */
    private void leaving(int later, List<Reason> reasons, List<Reason> byLamp) {
        int leave = visit.to() + later;
        if (visit.times().night(leave - 1) && !visit.times().night(visit.to() - 1)) {
            byLamp.add(Reason.of(OutingReason.ROOM_BY_LEAVING_IN_THE_DARK).with("minutes", later, MINUTES).with("leave", clock(leave)));
        } else {
            reasons.add(Reason.of(OutingReason.ROOM_BY_LEAVING).with("minutes", later, MINUTES).with("leave", clock(leave)));
        }
    }

    private Figure clock(int minute) {
        return new Figure(hours.at(minute), CLOCK);
    }
}
