package understorey.reading.site;

import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.Edge;
import understorey.plan.Opening;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.SkylinePoint;
import understorey.plan.Slope;
import understorey.plan.Spot;
import understorey.plan.Walk;
import understorey.yaml.Coordinate;
import understorey.yaml.Fields;
import understorey.yaml.Names;
import understorey.yaml.tree.Node;
import understorey.yaml.value.Dimension;

/** Reads the spots of a site, the walks between them, the opening hours and the parking. */
final class SpotReader {

    private final Fields site;
    private final FarSpots far;
    private final Names names = new Names("spot",
            "this site has no spots: add 'spots:', with '- name: Gate' below it");
    private final List<Spot> spots;
    private final List<Walk> walks = new ArrayList<>();

    /**
     * @param of the site's position; null when it is not known
     */
    SpotReader(Fields site, @Nullable Position of) {
        this.site = site;
        this.far = new FarSpots(site, of);
        int before = site.findings().errors();
        List<Fields> blocks = site.blocks("spots", "this spot");
        this.spots = blocks.stream().map(this::spot).filter(Objects::nonNull).toList();
        far.report();
        if (site.findings().errors() > before && !(site.take("spots") instanceof Node.Seq list && list.items().size() == blocks.size())) {
            names.doubt();
        }
        site.blocks("walks", "this walk").forEach(this::walk);
    }

    List<Spot> spots() {
        return spots;
    }

    List<Walk> walks() {
        return List.copyOf(walks);
    }

    Names names() {
        return names;
    }

    private @Nullable Spot spot(Fields f) {
        f.require("name");
        String name = names.claim(f, "name");
        Position at = position(f);
        Double elevation = PlaceReader.elevation(f);
        Canopy canopy = PlaceReader.canopy(f);
        List<SkylinePoint> skyline = PlaceReader.skyline(f);
        Slope slope = PlaceReader.slope(f);
        Double clearing = PlaceReader.clearing(f);
        String notes = f.prose("notes");
        List<Edge> edges = PlaceReader.edges(f);
        f.done();
        return name == null ? null : new Spot(name, at, elevation, canopy, skyline, slope, clearing, notes, edges);
    }

    private @Nullable Position position(Fields f) {
        List<Node> items = f.items("at");
        if (items.size() != 2) {
            if (!items.isEmpty() || f.has("at") && f.take("at") instanceof Node.Seq) {
                f.refuse("at", "'at' needs a latitude and a longitude", items.size() == 4
                        ? "write decimals with a point, for example [52.3361, -3.5502]"
                        : "for example [52.3361, -3.5502]");
            }
            return null;
        }
        Double latitude = Coordinate.latitude(f.scalars(), items.get(0), "the latitude in 'at'",
                "put the latitude first, then the longitude");
        Double longitude = Coordinate.longitude(f.scalars(), items.get(1), "the longitude in 'at'", null);
        if (latitude == null || longitude == null) {
            return null;
        }
        Position at = new Position(latitude, longitude);
        far.add(f, at);
        return at;
    }

    private void walk(Fields f) {
        f.require("from", "to", "duration");
        String from = names.pointed(f, "from");
        String to = names.pointed(f, "to");
        Double seconds = f.quantity("duration", Dimension.DURATION, 1, 86_400);
        f.done();
        if (from == null || to == null || seconds == null) {
            return;
        }
        if (from.equals(to)) {
            f.refuse("to", "this walk starts and ends at the same spot", "choose another spot for 'from' or 'to'");
        }
        for (Walk walk : walks) {
            if (walk.joins(from, to)) {
                f.findings().error(f.pos(), "this walk is already listed",
                        "delete one: a walk counts in both directions");
            }
        }
        walks.add(new Walk(from, to, Duration.ofSeconds(Math.round(seconds))));
    }

    @Nullable Opening opening() {
        return site.in("opening", SpotReader::opening);
    }

    private static @Nullable Opening opening(Fields f) {
        f.require("from", "to");
        LocalTime from = f.clock("from");
        LocalTime to = f.clock("to");
        if (from != null && from.equals(to)) {
            f.refuse("to", "'to' is the same time as 'from'", "leave out 'opening' for a site that is always open");
        }
        return from == null || to == null ? null : new Opening(from, to);
    }

    @Nullable Parking parking() {
        return site.in("parking", f -> new Parking(names.pointed(f, "spot"), f.clock("closes"), f.text("fee")));
    }
}
