package understorey.visit;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.light.Standpoint;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.Skyline;
import understorey.sky.SunAt;
import understorey.sky.SunDay;
import understorey.weather.Mist;

/** Works out the light at every spot that a picture is taken from. */
final class Places {

    private static final double NEAR_DEG = 0.01;

    private final Site site;
    private final Interval day;
    private final List<LightAt> siteLight;
    private final Mist mist;

    private Places(Trip trip, Interval day, SunDay sun, List<LightAt> siteLight) {
        this.site = trip.site();
        this.day = day;
        this.siteLight = siteLight;
        this.mist = Mist.atDawn(sun, morningSun(sun, siteLight.get(0).place().skyline().sunlit(site.position(),
                track(siteLight))), trip.forecast(), trip.sky());
    }

    /**
     * The places of a trip's pictures, in file order; the site itself if there are no pictures.
     *
     * @param siteLight of the site itself, over the day
     */
    static List<Place> of(Trip trip, Interval day, SunDay sun, List<LightAt> siteLight) {
        Places places = new Places(trip, day, sun, siteLight);
        // Spots that share the site's light are under the null key.
        Map<@Nullable Spot, List<String>> names = new LinkedHashMap<>();
        for (Shot shot : trip.shots()) {
            Spot spot = trip.site().spot(shot.spot());
            List<String> here = names.computeIfAbsent(places.likeSite(spot) ? null : spot, key -> new ArrayList<>());
            if (spot != null && !here.contains(spot.name())) {
                here.add(spot.name());
            }
        }
        if (names.isEmpty()) {
            names.put(null, List.of());
        }
        List<Place> found = new ArrayList<>();
        names.forEach((spot, spots) -> found.add(places.place(spot, List.copyOf(spots))));
        return List.copyOf(found);
    }

    /** A nearby spot without canopy, skyline, edges, slope or clearing of its own has the site's own light. */
    private boolean likeSite(@Nullable Spot spot) {
        return spot == null || near(spot) && spot.canopy() == null && spot.skyline() == null && spot.edges() == null && spot.slope() == null
                && spot.clearingRadiusM() == null;
    }

    /** Within about a kilometre of the site's own position. */
    private boolean near(Spot spot) {
        Position at = site.positionOf(spot);
        return Math.abs(at.latitude() - site.position().latitude()) < NEAR_DEG
                && Math.abs(at.longitude() - site.position().longitude()) < NEAR_DEG;
    }

    private Place place(@Nullable Spot spot, List<String> names) {
        List<LightAt> light = spot == null ? siteLight : near(spot)
                ? LightTable.near(siteLight, Standpoint.of(site, spot, day.from().toLocalDate())) : LightTable.of(site, spot, day);
        Standpoint stand = light.get(0).place();
        List<SunAt> track = track(light);
        List<Interval> sunlit = stand.skyline().sunlit(site.positionOf(spot), track);
        Double treeTopDeg = stand.canopy().treeTopDeg();
        List<Interval> overTrees = treeTopDeg == null ? null : Interval.common(sunlit,
                Skyline.ring(treeTopDeg).sunlit(site.positionOf(spot), track));
        return new Place(names, spot == null, stand, light, track, sunlit, overTrees, mist);
    }

    private static List<SunAt> track(List<LightAt> rows) {
        return rows.stream().map(LightAt::sun).toList();
    }

    /** Time at which the sun first reaches the ground after sunrise; null if it does not, or never sets. */
    private static @Nullable ZonedDateTime morningSun(SunDay sun, List<Interval> sunlit) {
        return sunlit.stream().map(Interval::from)
                .filter(from -> sun.sunrise() != null && !from.isBefore(sun.sunrise().minusMinutes(5))).findFirst().orElse(null);
    }
}
