package understorey.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static understorey.Samples.MAY_DAY;
import static understorey.Samples.picture;
import static understorey.Samples.spot;
import static understorey.Samples.trip;
import static understorey.Samples.walk;
import static understorey.Samples.wood;

import java.util.List;
import org.junit.jupiter.api.Test;
import understorey.order.Orders;
import understorey.plan.Parking;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;

class GroundPlanTest {

    private static final Site SITE = wood(List.of(spot("Gate", 52.0, -3.5, null), spot("Bank", 52.01, -3.5, null),
            spot("Somewhere", null, null, null), spot("Stump", 52.0, -3.51, null)), List.of(walk("Gate", "Bank", 21)), null,
            new Parking("Gate", null, null));

    private static GroundPlan plan(Trip trip) {
        return GroundPlan.of(trip, Orders.of(trip, MAY_DAY).route(trip.site()));
    }

    /** A degree of latitude is 111.195 km on the sphere; one of longitude cos 52° of that. */
    @Test
    void laysSpotsEastAndNorthOfTheFirstInMetres() {
        GroundPlan plan = plan(trip(SITE, "06:00", "10:00", picture("a").at("Bank").shot()));
        assertEquals(List.of("Gate", "Bank", "Stump"), plan.places().stream().map(GroundPlan.Place::name).toList());
        assertEquals(1111.95, plan.places().get(1).northM(), 0.02);
        assertEquals(0, plan.places().get(1).eastM(), 1e-6);
        assertEquals(-1111.95 * Math.cos(Math.toRadians(52)), plan.places().get(2).eastM(), 0.02);
        assertEquals(1, plan.ways().size(), "there and back is one way");
        assertEquals(1111.95, plan.ways().get(0).metres(), 0.02);
        assertEquals(21, plan.ways().get(0).minutes());
    }

    @Test
    void isNotDrawnFromOnePositionOrWhereTheyAreKeptBack() {
        assertNull(plan(trip(wood(), "06:00", "10:00", picture("a").at("Bank").shot())));
        Trip exact = trip(SITE, "06:00", "10:00", picture("a").at("Bank").shot());
        assertNull(plan(new Trip(exact.title(), exact.slug(), null, SITE, exact.when(), exact.arrive(), exact.leave(), exact.gear(), List.of(),
                null, null, List.of(), null, exact.shots(), new Share(Share.Audience.PUBLIC, Share.Precision.COARSE))));
    }
}
