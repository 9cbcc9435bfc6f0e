package understorey.share;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import understorey.plan.Companion;
import understorey.plan.Parking;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.plan.Walk;

/**
 * Reduces a plan to what its audience may see. The name of the trip's own file (its slug), of a file of temperatures and
 * of anything in a bag stay as they are. Free text stays too, except for the names of a sensitive site.
 */
public final class Sharing {

    private Sharing() {
    }

    /**
     * The trip for its own audience. A public trip loses the contact and the names of companions. With a sensitive site
     * it also loses the exact position, and the names of site and spots wherever they are written. The {@link Trip#share}
     * of the result has the remaining precision. A trip without {@code share} is private and exact, and stays as it is.
     */
    public static Trip forAudience(Trip trip) {
        Share.Audience audience = trip.audience();
        boolean open = audience == Share.Audience.PUBLIC;
        Share.Precision precision = allowed(trip.site(), audience, trip.precision());
        Site site = forAudience(trip.site(), audience, precision);
        Trip shared = new Trip(trip.title(), trip.slug(), trip.series(), site, trip.when(), trip.arrive(), trip.leave(),
                trip.gear(), open ? unnamed(trip.companions()) : trip.companions(), open ? null : trip.contact(),
                trip.sky(), trip.forecast(), trip.story(), trip.shots(),
                trip.share() == null ? null : new Share(audience, precision), trip.wishes());
        return open && trip.site().sensitive() ? covered(shared, Cover.of(trip.site())) : shared;
    }

    /**
     * Whether the trip's own file name reveals a sensitive site. It becomes the folder name in every link, and only the
     * author can change it. True if it contains a word of four or more letters from the site's name or slug.
     */
    public static boolean nameTellsThePlace(Trip trip) {
        if (trip.audience() != Share.Audience.PUBLIC || !trip.site().sensitive()) {
            return false;
        }
        String name = trip.slug().toLowerCase(Locale.ROOT);
        for (String word : (trip.site().name() + "-" + trip.site().slug()).toLowerCase(Locale.ROOT).split("[^\\p{L}]+")) {
            if (word.length() >= 4 && name.contains(word)) {
                return true;
            }
        }
        return false;
    }

    /**
     * The site for an audience, as the trips and the site's own page may show it. Unless the position is exact, spots
     * have no position or height of their own, because one spot would reveal the place.
     */
    public static Site forAudience(Site site, Share.Audience audience, Share.Precision precision) {
        Grid grid = Grid.of(allowed(site, audience, precision), covers(site, audience));
        Site rounded = new Site(site.name(), site.slug(), site.publicName(), grid.round(site.position()),
                grid.elevationM(site.elevationM()), site.zone(), site.skyline(), site.canopy(),
                grid == Grid.EXACT ? site.spots() : each(site.spots(), Sharing::unplaced), site.walks(), site.opening(),
                site.parking(), site.seasons(), site.subjects(), site.access(), site.reports(), site.sensitive(),
                site.cautions(), site.notes());
        return covers(site, audience) ? covered(rounded, Cover.of(site)) : rounded;
    }

    /**
     * Decimals of a degree in the position for an audience, so that a page prints no false precision; null if the
     * position is as the author wrote it. Equal before and after {@link #forAudience}.
     */
    public static Integer decimals(Site site, Share.Audience audience, Share.Precision precision) {
        return Grid.of(allowed(site, audience, precision), covers(site, audience)).decimals();
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

    private static Trip covered(Trip trip, Cover cover) {
        return new Trip(cover.text(trip.title()), trip.slug(), cover.text(trip.series()), trip.site(), trip.when(),
                trip.arrive(), trip.leave(), trip.gear(), trip.companions(), trip.contact(), trip.sky(), trip.forecast(),
                cover.text(trip.story()), each(trip.shots(), shot -> covered(shot, cover)), trip.share(), trip.wishes());
    }

    private static Site covered(Site site, Cover cover) {
        Parking parking = site.parking();
        return new Site(cover.siteName(), site.slug() == null ? null : cover.slug(), site.publicName(), site.position(),
                site.elevationM(), site.zone(), site.skyline(), site.canopy(),
                each(site.spots(), spot -> covered(spot, cover)),
                each(site.walks(), walk -> new Walk(cover.spot(walk.from()), cover.spot(walk.to()), walk.duration())),
                site.opening(),
                parking == null ? null : new Parking(cover.spot(parking.spot()), parking.closes(), null),
                site.seasons(), each(site.subjects(), subject -> covered(subject, cover)), null, null, true,
                each(site.cautions(), cover::text), null);
    }

    private static Spot unplaced(Spot spot) {
        return new Spot(spot.name(), null, null, spot.canopy(), spot.skyline(), spot.slope(), spot.clearingRadiusM(),
                spot.notes());
    }

    private static Spot covered(Spot spot, Cover cover) {
        return new Spot(cover.spot(spot.name()), null, null, spot.canopy(), spot.skyline(), spot.slope(),
                spot.clearingRadiusM(), null);
    }

    private static Shot covered(Shot shot, Cover cover) {
        return new Shot(cover.text(shot.name()), shot.role(), covered(shot.subject(), cover), cover.spot(shot.spot()),
                shot.viewpoint(), shot.orientation(), shot.sharp(), shot.focalEquivalentMm(), shot.frame(),
                shot.facingDeg(), shot.light(), shot.polariser(), shot.duration(), shot.priority(),
                cover.text(shot.notes()), cover.text(shot.otherwise()), shot.tiltDeg(), shot.start(),
                cover.text(shot.after()), shot.printWidthM());
    }

    /** The subject without covered names. The key stays, because seasons use it. */
    private static Subject covered(Subject s, Cover cover) {
        return s == null ? null : new Subject(s.key(), cover.text(s.name()), s.scientificName(), cover.text(s.region()),
                s.southern(), s.monthFirst(), s.monthLast(), cover.text(s.monthsReference()), s.stemsPerM2(),
                s.heightLowM(), s.heightHighM(), s.flowerWidthMm(), s.flowersOpen(), s.flowerAreaIndex(),
                s.reflectance(), s.colour(), cover.text(s.habitat()), cover.text(s.care()), s.marks(),
                cover.text(s.sources()), s.monthsLatitude());
    }

    private static <T> List<T> each(List<T> list, UnaryOperator<T> change) {
        return list == null ? null : list.stream().map(change).toList();
    }
}
