package understorey.reading;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Position;

/** Warns of spots that lie far from their site, and tells a sign that was forgotten. */
final class FarSpots {

    /** A spot farther than this from its site is more likely a slip than a spot, degrees. */
    private static final double FAR_LATITUDE = 0.5;
    private static final double FAR_LONGITUDE = 1;

    private final Fields site;
    private final Position of;
    private final List<Position> far = new ArrayList<>();
    private int near;

    /**
     * @param of the site's position; null when it is not known
     */
    FarSpots(Fields site, Position of) {
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
        boolean sign = slip(at) != null;
        spot.findings().warning(spot.at("at"), "this spot lies far from its site",
                sign ? "is a minus missing here, or at the site?" : "the latitude comes first, then the longitude");
    }

    /** Points at the site's own position when another sign there brings all its spots to it. */
    void report() {
        if (far.isEmpty() || near > 0) {
            return;
        }
        Slip slip = slip(far.get(0));
        for (Position at : far) {
            if (slip == null || !together(slip.of(), at)) {
                return;
            }
        }
        for (String key : slip.keys()) {
            site.findings().warning(site.at(key), "with the other sign, this '" + key + "' goes with the spots",
                    "is the minus missing, or one too many?");
        }
    }

    /** The site with another sign of latitude or longitude, near that spot; null when no sign brings it there. */
    private Slip slip(Position at) {
        List<Slip> slips = List.of(
                new Slip(new Position(of.latitude(), -of.longitude()), List.of("longitude")),
                new Slip(new Position(-of.latitude(), of.longitude()), List.of("latitude")),
                new Slip(new Position(-of.latitude(), -of.longitude()), List.of("latitude", "longitude")));
        for (Slip slip : slips) {
            if (together(slip.of(), at)) {
                return slip;
            }
        }
        return null;
    }

    private static boolean together(Position a, Position b) {
        double east = Math.abs(a.longitude() - b.longitude());
        return Math.abs(a.latitude() - b.latitude()) <= FAR_LATITUDE && Math.min(east, 360 - east) <= FAR_LONGITUDE;
    }

    private record Slip(Position of, List<String> keys) {
    }
}
