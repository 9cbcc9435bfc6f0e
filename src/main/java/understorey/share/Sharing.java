package understorey.share;

import java.util.ArrayList;
import java.util.List;
import understorey.plan.Companion;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;

/**
 * Turns a plan into the plan for its audience; the table is in the documentation of this package. Free text stays as it
 * is: {@link Leaks} finds what it must not give away.
 */
public final class Sharing {

    private Sharing() {
    }

    /**
     * The trip for its own audience. A public trip loses the contact and the names of companions; with a sensitive
     * site it has only the cell that holds the site. The result's {@link Trip#share} has the precision that is left. A
     * trip without {@code share} is private and exact, and does not change.
     */
    public static Trip forAudience(Trip trip) {
        Share.Audience audience = trip.audience();
        boolean open = audience == Share.Audience.PUBLIC;
        Share.Precision precision = allowed(trip.site(), audience, trip.precision());
        Trip shared = new Trip(trip.title(), trip.slug(), trip.series(), forAudience(trip.site(), audience, precision),
                trip.when(), trip.arrive(), trip.leave(), trip.gear(),
                open ? unnamed(trip.companions()) : trip.companions(), open ? null : trip.contact(), trip.sky(),
                trip.forecast(), trip.story(), trip.shots(),
                trip.share() == null ? null : new Share(audience, precision), trip.wishes(), trip.display());
        return trip.sparesThePlace() ? new Spared(trip.site(), precision).trip(shared) : shared;
    }

    /**
     * The site for an audience, on the pages of trips and on its own page. With a position less than exact,
     * spots have no position or height of their own: one spot would give the place away.
     */
    public static Site forAudience(Site site, Share.Audience audience, Share.Precision asked) {
        Share.Precision precision = allowed(site, audience, asked);
        if (covers(site, audience)) {
            return new Spared(site, precision).site();
        }
        Grid grid = Grid.of(precision, false);
        return grid == Grid.EXACT ? site
                : new Site(site.name(), site.slug(), site.publicName(), grid.round(site.position()),
                        grid.elevationM(site.elevationM()), site.zone(), site.skyline(), site.canopy(),
                        site.spots().stream().map(Sharing::unplaced).toList(), site.walks(), site.opening(),
                        site.parking(), site.seasons(), site.subjects(), site.access(), site.reports(),
                        site.sensitive(), site.cautions(), site.notes(), site.edges(), site.country());
    }

    private static boolean covers(Site site, Share.Audience audience) {
        return site.sensitive() && audience == Share.Audience.PUBLIC;
    }

    private static Share.Precision allowed(Site site, Share.Audience audience, Share.Precision asked) {
        return covers(site, audience) && asked == Share.Precision.EXACT ? Share.Precision.COARSE : asked;
    }

    private static List<Companion> unnamed(List<Companion> companions) {
        List<Companion> unnamed = new ArrayList<>();
        for (Companion companion : companions) {
            String name = unnamed.isEmpty() ? "Companion" : "Companion " + (unnamed.size() + 1);
            unnamed.add(new Companion(name, companion.gear()));
        }
        return List.copyOf(unnamed);
    }

    private static Spot unplaced(Spot spot) {
        return new Spot(spot.name(), null, null, spot.canopy(), spot.skyline(), spot.slope(), spot.clearingRadiusM(),
                spot.notes(), spot.edges());
    }
}
