package understorey.brief;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.kit.Intent;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.light.Mist;
import understorey.light.Standpoint;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.scene.Drawing;
import understorey.sky.Interval;
import understorey.sky.Skyline;
import understorey.sky.SunAt;
import understorey.sky.SunDay;

/** Works out the light at every spot that a picture is taken from. */
final class SpotPlanner {

    private static final double NEAR_DEG = 0.01;

    private final Site site;
    private final LocalDate date;
    private final List<LightAt> siteLight;
    private final Mist mist;

    /**
     * For a trip on a date.
     *
     * @param siteLight of the site itself, over the whole date
     */
    SpotPlanner(Trip trip, LocalDate date, SunDay sun, List<LightAt> siteLight) {
        this.site = trip.site();
        this.date = date;
        this.siteLight = siteLight;
        this.mist = Mist.atDawn(sun, morningSun(sun, siteLight.get(0).place().skyline().sunlit(site.position(),
                track(siteLight))), trip.forecast(), trip.sky());
    }

    private static List<SunAt> track(List<LightAt> rows) {
        List<SunAt> track = new ArrayList<>(rows.size());
        for (LightAt row : rows) {
            track.add(row.sun());
        }
        return track;
    }

    /** The light at one place, before it is drawn. */
    record Place(Spot first, List<String> spots, Standpoint stand, List<LightAt> light, List<SunAt> track,
                 List<Interval> sunlit, List<Interval> overTrees, Mist mist) {
        SpotLight lit(Drawing dayLight, Drawing skyline) {
            return new SpotLight(List.copyOf(spots), stand, light, sunlit, overTrees, mist, dayLight, skyline);
        }
    }

    /** The places of the pictures in the order in which they come; the site itself where there are none. */
    List<Place> places(List<Intent> intents) {
        List<Place> places = new ArrayList<>();
        for (Intent intent : intents) {
            Spot spot = site.spot(intent.shot().spot());
            Place known = of(places, spot);
            if (known == null) {
                places.add(place(spot));
            } else if (spot != null && !known.spots().contains(spot.name())) {
                known.spots().add(spot.name());
            }
        }
        if (places.isEmpty()) {
            places.add(place(null));
        }
        return places;
    }

    /** The place of a picture among them. */
    Place of(List<Place> places, Shot shot) {
        return of(places, site.spot(shot.spot()));
    }

    private Place of(List<Place> places, Spot spot) {
        for (Place place : places) {
            if (place.first() == spot || like(place.first()) && like(spot)) {
                return place;
            }
        }
        return null;
    }

    /** Nothing is told of a spot near by that is not told of the site: it has the site's own light. */
    private boolean like(Spot spot) {
        return spot == null || near(spot) && spot.canopy() == null && spot.skyline() == null && spot.slope() == null
                && spot.clearingRadiusM() == null;
    }

    /** Within a kilometre or so of the site's own position. */
    private boolean near(Spot spot) {
        Position at = site.positionOf(spot);
        return Math.abs(at.latitude() - site.position().latitude()) < NEAR_DEG
                && Math.abs(at.longitude() - site.position().longitude()) < NEAR_DEG;
    }

    private Place place(Spot spot) {
        List<LightAt> light = like(spot) ? siteLight : near(spot)
                ? LightTable.near(siteLight, Standpoint.of(site, spot, date)) : LightTable.of(site, spot, date);
        Standpoint stand = light.get(0).place();
        List<SunAt> track = track(light);
        List<Interval> sunlit = stand.skyline().sunlit(site.positionOf(spot), track);
        Double treeTopDeg = stand.canopy().treeTopDeg();
        List<Interval> overTrees = treeTopDeg == null ? null : Interval.common(sunlit,
                Skyline.ring(treeTopDeg).sunlit(site.positionOf(spot), track));
        List<String> names = new ArrayList<>();
        if (spot != null) {
            names.add(spot.name());
        }
        return new Place(spot, names, stand, light, track, sunlit, overTrees, mist);
    }

    /** When the sun first reaches the floor of the valley after sunrise; null when it does not, or never sets. */
    private static ZonedDateTime morningSun(SunDay sun, List<Interval> sunlit) {
        for (Interval stretch : sunlit) {
            if (sun.sunrise() != null && !stretch.from().isBefore(sun.sunrise().minusMinutes(5))) {
                return stretch.from();
            }
        }
        return null;
    }
}
