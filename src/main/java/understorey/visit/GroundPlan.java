package understorey.visit;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Position;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;

/**
 * Map of the spots of a visit, flat, north up: over the few kilometres of a wood the Earth's curve shifts nothing by 1 m.
 *
 * @param places with a position of their own, in file order
 * @param ways   walked, in order, each pair of places once
 */
public record GroundPlan(List<Place> places, List<Way> ways) {

    /** A spot, metres east and north of the first one. */
    public record Place(String name, double eastM, double northM) {
    }

    /**
     * A walk.
     *
     * @param metres  as the crow flies
     * @param minutes as planned, by day
     */
    public record Way(Place from, Place to, double metres, int minutes) {
    }

    /**
     * The plan of a visit; null if positions are not exact or fewer than two spots have one.
     *
     * @param route the spots in the order walked, first where the walk begins; null is the site itself
     */
    public static @Nullable GroundPlan of(Trip trip, List<@Nullable String> route) {
        List<Place> places = new ArrayList<>();
        Position origin = null;
        for (Spot spot : trip.precision() == Share.Precision.EXACT ? trip.site().spots() : List.<Spot>of()) {
            if (spot.at() != null) {
                origin = origin == null ? spot.at() : origin;
                places.add(new Place(spot.name(), east(origin, spot.at()), north(origin, spot.at())));
            }
        }
        return places.size() < 2 ? null : new GroundPlan(List.copyOf(places), ways(trip.site(), route, places));
    }

    private static double north(Position origin, Position at) {
        double metres = Walking.metres(origin, new Position(at.latitude(), origin.longitude()));
        return at.latitude() < origin.latitude() ? -metres : metres;
    }

    private static double east(Position origin, Position at) {
        double metres = Walking.metres(origin, new Position(origin.latitude(), at.longitude()));
        return Math.IEEEremainder(at.longitude() - origin.longitude(), 360) < 0 ? -metres : metres;
    }

    private static List<Way> ways(Site site, List<@Nullable String> route, List<Place> places) {
        Walking walking = new Walking(site);
        List<Way> ways = new ArrayList<>();
        Place here = null;
        for (String spot : route) {
            Place there = place(places, spot);
            if (here != null && there != null && here != there && !joined(ways, here, there)) {
                double metres = Walking.metres(site.positionOf(site.spot(here.name())), site.positionOf(site.spot(there.name())));
                Duration duration = walking.between(here.name(), there.name(), false);
                ways.add(new Way(here, there, metres, (int) Objects.requireNonNull(duration, "both have positions").toMinutes()));
            }
            here = there == null ? here : there;
        }
        return List.copyOf(ways);
    }

    private static boolean joined(List<Way> ways, Place one, Place other) {
        return ways.stream()
                .anyMatch(way -> way.from() == one && way.to() == other || way.from() == other && way.to() == one);
    }

    private static @Nullable Place place(List<Place> places, @Nullable String name) {
        return places.stream().filter(place -> place.name().equals(name)).findFirst().orElse(null);
    }
}
