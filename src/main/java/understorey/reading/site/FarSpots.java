package understorey.reading.site;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;
import understorey.yaml.Fields;

/** Warns of spots that are far from their site, and recognises a missing minus sign. */
final class FarSpots {

    /** Distance in degrees beyond which a spot is probably a mistake. */
    private static final double FAR_LATITUDE = 0.5;
    private static final double FAR_LONGITUDE = 1;

    private final Fields site;
    private final @Nullable Position of;
    private final List<Position> far = new ArrayList<>();
    private int near;

    /**
     * @param of the site's position; null when it is not known
     */
    FarSpots(Fields site, @Nullable Position of) {
        this.site = site;
        this.of = of;
    }

    void add(Fields spot, Position at) {
        if (of == null) {
            return;
        }
        if (together(of, at)) {
            near++;
            return;
        }
        far.add(at);
        boolean sign = slip(of, at) != null;
        spot.findings().warning(spot.at("at"), "this spot is far from its site",
                sign ? "check the minus sign of this spot and of its site"
                        : Math.abs(at.longitude()) <= 90 && together(of, new Position(at.longitude(), at.latitude()))
                        ? "put the latitude first, then the longitude" : "check its latitude and its longitude");
    }

    /** Warns at the site's own position if the opposite sign there matches all its spots. */
    void report() {
        Slip slip = of == null || far.isEmpty() || near > 0 ? null : slip(of, far.get(0));
        if (slip == null || !far.stream().allMatch(at -> together(slip.of(), at))) {
            return;
        }
        for (String key : slip.keys()) {
            site.findings().warning(site.at(key), "with the opposite sign, this '" + key + "' matches the spots",
                    "check the minus sign");
        }
    }

    /** Site with the opposite sign of latitude or longitude, if that is near the spot; null otherwise. */
    private static @Nullable Slip slip(Position of, Position at) {
        List<Slip> slips = List.of(
                new Slip(new Position(of.latitude(), -of.longitude()), List.of("longitude")),
                new Slip(new Position(-of.latitude(), of.longitude()), List.of("latitude")),
                new Slip(new Position(-of.latitude(), -of.longitude()), List.of("latitude", "longitude")));
        return slips.stream().filter(slip -> together(slip.of(), at)).findFirst().orElse(null);
    }

    private static boolean together(Position a, Position b) {
        double east = Math.abs(a.longitude() - b.longitude());
        return Math.abs(a.latitude() - b.latitude()) <= FAR_LATITUDE && Math.min(east, 360 - east) <= FAR_LONGITUDE;
    }

    private record Slip(Position of, List<String> keys) {
    }
}
