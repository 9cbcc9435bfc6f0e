package understorey.reading.trip;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Shot;
import understorey.plan.Stay;
import understorey.plan.When;
import understorey.reading.site.SiteRead;
import understorey.reading.site.ZoneCheck;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.tree.Node;

/** Reads the shots of a trip, and checks them together: names, order, fixed times. */
final class ShotsReader {

    /** Clock times of a visit are compared on it. */
    private static final LocalDate ANY_DAY = LocalDate.EPOCH;

    private final List<ShotReader.Read> shots;

    private ShotsReader(List<ShotReader.Read> shots) {
        this.shots = shots;
    }

    /**
     * Reads those that are complete, in file order.
     *
     * @param bag null if it could not be read
     */
    static List<Shot> read(Fields trip, SiteRead site, @Nullable Bag bag, @Nullable When when, Stay stay) {
        Names names = new Names("shot");
        ShotReader one = new ShotReader(site, bag, names);
        List<ShotReader.Read> shots = trip.blocks("shots", "this shot").stream().map(one::read).toList();
        shots.forEach(shot -> names.pointed(shot.block(), "after"));
        shots.forEach(shot -> ZoneCheck.clock(shot.block(), "start", shot.start(), when, stay, site));
        if (trip.take("shots") instanceof Node.Seq list && list.items().isEmpty()) {
            trip.refuse("shots", "a trip needs at least one shot", "for example - {name: The carpet, subject: ramsons}");
        }
        ShotsReader reader = new ShotsReader(shots);
        reader.pins(stay);
        reader.circles();
        return shots.stream().map(ShotReader.Read::shot).filter(Objects::nonNull).toList();
    }

    private void pins(Stay stay) {
        LocalTime arrive = stay.arrive();
        LocalTime leave = stay.leave();
        for (ShotReader.Read shot : shots) {
            LocalTime start = shot.start();
            if (start != null && stay.passesMidnight()) {
                LocalDateTime end = Objects.requireNonNull(stay.leave(ANY_DAY));
                if (!stay.at(ANY_DAY, start).isBefore(end)) {
                    shot.block().refuse("start", "'start' is not between 'arrive' (" + arrive + ") and 'leave' (" + end.toLocalTime() + ") the next day",
                            "choose a time of the visit");
                }
            } else if (start != null && arrive != null && start.isBefore(arrive)) {
                shot.block().refuse("start", "'start' must not be before 'arrive' (" + arrive + ")",
                        "start later, or arrive earlier");
            } else if (start != null && leave != null && !start.isBefore(leave)) {
                shot.block().refuse("start", "'start' must be before 'leave' (" + leave + ")",
                        "start earlier, or leave later");
            }
        }
    }

    /** Reports each loop of {@code after} once, at its first shot in the file. */
    private void circles() {
        Map<String, String> after = new HashMap<>();
        for (ShotReader.Read shot : shots) {
            if (shot.name() != null && shot.after() != null) {
                after.putIfAbsent(shot.name(), shot.after());
            }
        }
        Set<String> settled = new LinkedHashSet<>();
        for (ShotReader.Read shot : shots) {
            Set<String> way = new LinkedHashSet<>();
            String at = shot.name();
            while (at != null && !settled.contains(at) && way.add(at)) {
                at = after.get(at);
            }
            if (at != null && way.contains(at)) {
                report(new ArrayList<>(way), at);
            }
            settled.addAll(way);
        }
    }

    private void report(List<String> way, String from) {
        List<String> circle = new ArrayList<>(way.subList(way.indexOf(from), way.size()));
        circle.add(from);
        shots.stream().filter(shot -> from.equals(shot.name())).findFirst().ifPresent(shot -> shot.block().refuse("after",
                "'after' forms a loop: " + String.join(" after ", circle), "delete one 'after' of the loop"));
    }
}
