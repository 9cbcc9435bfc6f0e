package understorey.reading;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Shot;
import understorey.plan.When;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.Node;

/** Reads the shots of a trip, and checks them together: names, order, fixed times. */
final class ShotsReader {

    private final Fields trip;
    private final List<Fields> blocks;
    private final List<Shot> shots = new ArrayList<>();

    private ShotsReader(Fields trip) {
        this.trip = trip;
        this.blocks = trip.blocks("shots", "this shot");
    }

    /**
     * Reads them in file order.
     *
     * @param bag    null when it could not be read
     * @param when   null when it is not known
     * @param arrive null when not given
     * @param leave  null when not given
     */
    static List<Shot> read(Fields trip, SiteRead site, @Nullable Bag bag, When when, LocalTime arrive,
                           LocalTime leave) {
        ShotsReader reader = new ShotsReader(trip);
        Names names = new Names("shot");
        ShotReader one = new ShotReader(site, bag, names);
        for (Fields block : reader.blocks) {
            reader.shots.add(one.read(block));
        }
        for (Fields block : reader.blocks) {
            names.pointed(block, "after");
        }
        for (int i = 0; i < reader.blocks.size(); i++) {
            ZoneCheck.clock(reader.blocks.get(i), "start", reader.shots.get(i).start(), when, site);
        }
        reader.count();
        reader.pins(arrive, leave);
        reader.circles();
        return List.copyOf(reader.shots);
    }

    private void count() {
        if (trip.take("shots") instanceof Node.Seq list && list.items().isEmpty()) {
            trip.refuse("shots", "a trip needs at least one shot", "for example - {name: The carpet, subject: ramsons}");
        }
    }

    private void pins(LocalTime arrive, LocalTime leave) {
        for (int i = 0; i < shots.size(); i++) {
            LocalTime start = shots.get(i).start();
            if (start != null && arrive != null && start.isBefore(arrive)) {
                blocks.get(i).refuse("start", "'start' must not be before 'arrive' (" + arrive + ")",
                        "start later, or arrive earlier");
            } else if (start != null && leave != null && !start.isBefore(leave)) {
                blocks.get(i).refuse("start", "'start' must be before 'leave' (" + leave + ")",
                        "start earlier, or leave later");
            }
        }
    }

    /** Reports each loop of {@code after} once, at its first shot in the file. */
    private void circles() {
        Map<String, Shot> byName = new HashMap<>();
        for (Shot shot : shots) {
            if (shot.name() != null) {
                byName.putIfAbsent(shot.name(), shot);
            }
        }
        Set<String> settled = new LinkedHashSet<>();
        for (int i = 0; i < shots.size(); i++) {
            Set<String> way = new LinkedHashSet<>();
            Shot at = shots.get(i);
            while (at != null && at.name() != null && !settled.contains(at.name()) && way.add(at.name())) {
                at = at.after() == null ? null : byName.get(at.after());
            }
            if (at != null && at.name() != null && way.contains(at.name())) {
                report(new ArrayList<>(way), at.name());
            }
            settled.addAll(way);
        }
    }

    private void report(List<String> way, String from) {
        List<String> circle = new ArrayList<>(way.subList(way.indexOf(from), way.size()));
        circle.add(from);
        for (int i = 0; i < shots.size(); i++) {
            if (from.equals(shots.get(i).name())) {
                blocks.get(i).refuse("after", "'after' forms a loop: " + String.join(" after ", circle),
                        "delete one 'after' of the loop");
                return;
            }
        }
    }
}
