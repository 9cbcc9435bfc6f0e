package understorey.pages;

import java.time.Duration;
import java.time.LocalTime;
import java.util.List;
import understorey.Places;
import understorey.brief.Brief;
import understorey.brief.Planner;
import understorey.plan.Bag;
import understorey.plan.Body;
import understorey.plan.Canopy;
import understorey.plan.Companion;
import understorey.plan.Contact;
import understorey.plan.Filter;
import understorey.plan.Foliage;
import understorey.plan.ForecastHour;
import understorey.plan.Frame;
import understorey.plan.Lens;
import understorey.plan.LightWish;
import understorey.plan.Orientation;
import understorey.plan.Parking;
import understorey.plan.Position;
import understorey.plan.Role;
import understorey.plan.Sensor;
import understorey.plan.Share;
import understorey.plan.Sharp;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.SkylinePoint;
import understorey.plan.Spot;
import understorey.plan.Subject;
import understorey.plan.Support;
import understorey.plan.Trip;
import understorey.plan.Viewpoint;
import understorey.plan.Walk;
import understorey.plan.When;
import understorey.share.Sharing;

/** Invented trips, and their briefs as an audience gets them. */
public final class Trips {

    public static final Share EXACT = new Share(Share.Audience.PARTY, Share.Precision.EXACT);
    public static final Share COARSE = new Share(Share.Audience.PUBLIC, Share.Precision.COARSE);
    public static final Share HIDDEN = new Share(Share.Audience.PUBLIC, Share.Precision.HIDDEN);

    private Trips() {
    }

    public static Brief brief(Trip trip) {
        return Planner.brief(Sharing.forAudience(trip));
    }

    /** A full trip: a bag of two lenses, a companion with a phone, a forecast, four pictures at three places. */
    public static Trip full(Places place, Share share) {
        return trip(place, share, dayBag(), pictures(), LocalTime.of(5, 0), LocalTime.of(11, 0), forecast());
    }

    /** A full trip to a site that no public page may give away. */
    public static Trip sensitive(Places place, Share share) {
        Trip trip = full(place, share);
        Site site = trip.site();
        return new Trip(trip.title(), trip.slug(), trip.series(), new Site(site.name(), site.slug(), site.publicName(),
                site.position(), site.elevationM(), site.zone(), site.skyline(), site.canopy(), site.spots(),
                site.walks(), site.opening(), site.parking(), site.seasons(), site.subjects(), site.access(),
                site.reports(), true, site.cautions(), site.notes(), List.of(), null), trip.when(), trip.arrive(), trip.leave(),
                trip.gear(), trip.companions(), trip.contact(), trip.sky(), trip.forecast(), trip.story(),
                trip.shots(), trip.share());
    }

    /** The same trip with somebody else to know of it, or nobody. */
    public static Trip told(Trip trip, Contact contact) {
        return new Trip(trip.title(), trip.slug(), trip.series(), trip.site(), trip.when(), trip.arrive(), trip.leave(), trip.gear(),
                trip.companions(), contact, trip.sky(), trip.forecast(), trip.story(), trip.shots(), trip.share());
    }

    /** What an author leaves out is left out: times, roles, sky, forecast, share. */
    public static Trip bare(Places place, Bag bag) {
        Shot floor = shot("The floor", null, null, null, null, null, null, null, List.of(), null);
        Shot head = shot("One head", Role.CLOSING, null, null, null, null, null, null, List.of(), null);
        return new Trip("A quick look", "a-quick-look", null, site(place), new When.On(place.date()), null, null, bag,
                List.of(), null, null, List.of(), null, List.of(floor, head), null);
    }

    public static Trip trip(Places place, Share share, Bag bag, List<Shot> shots, LocalTime arrive, LocalTime leave,
                     List<ForecastHour> forecast) {
        return new Trip("First light; ramsons, stream & \"stone\" <bank>", "first-light", "Dingle in May", site(place),
                new When.On(place.date()), arrive, leave, bag, List.of(new Companion("Second camera", phone())),
                new Contact("my sister, by text", LocalTime.of(12, 0)), SkyWord.BROKEN, forecast,
                "From the floor down to one head.", shots, share);
    }

    public static List<Shot> pictures() {
        return List.of(
                shot("The white floor", Role.OPENING, "Footbridge", Viewpoint.Stance.STANDING,
                        new Sharp.Range(4, Double.POSITIVE_INFINITY), 50.0, null, 67.5,
                        List.of(LightWish.LOW_SUN, LightWish.BACKLIGHT), true),
                shot("Along the bank, über Moos: 木漏れ日 🌿", Role.APPROACH, "Stone bank", Viewpoint.Stance.KNEELING,
                        null, null, null, null, List.of(), null),
                shot("A plant & its leaf", Role.DETAIL, "Hollow", null, new Sharp.Depth(0.02), null,
                        new Frame(0.3, null, null, null), null, List.of(LightWish.SOFT), null),
                shot("One head, one drop", Role.CLOSING, null, Viewpoint.Stance.GROUND, new Sharp.Depth(0.012), null,
                        new Frame(0.045, null, null, null), null, List.of(LightWish.AFTER_RAIN), null));
    }

    public static Shot shot(String name, Role role, String spot, Viewpoint viewpoint, Sharp sharp, Double equivalentMm,
                     Frame frame, Double facingDeg, List<LightWish> light, Boolean polariser) {
        return new Shot(name, role, ramsons(), spot, viewpoint, Orientation.LANDSCAPE, sharp, equivalentMm, frame,
                facingDeg, light, polariser, Duration.ofMinutes(20), 2, null, null, null, null, null, null, null);
    }

    /** Ramsons as a flora has them, invented where it is silent. */
    public static Subject ramsons() {
        return new Subject("ramsons", "Ramsons", "Allium ursinum", null, false, 4, 6, null,
                new Subject.Stems(20, 60, 200), 0.2, 0.45, 16.0, 10, null, Subject.Reflectance.WHITE, "white", null,
                "Bulbs crushed one spring are missing the next.", null, null);
    }

    /** Three spots, one of which has no position of its own. */
    public static Site site(Places place) {
        Position at = place.position();
        Position bridge = new Position(at.latitude() - 0.0005, at.longitude() + 0.0004);
        Position bank = new Position(at.latitude() + 0.0012345, at.longitude() - 0.0023456);
        return new Site("Gorsewell Dingle", "gorsewell-dingle", "A wooded dingle", at, 180.0, place.zone(),
                List.of(new SkylinePoint(0, 4), new SkylinePoint(90, 6), new SkylinePoint(180, 5),
                        new SkylinePoint(270, 7)),
                new Canopy(Canopy.Trees.DECIDUOUS, Foliage.Stage.HALF_LEAF, 18.0),
                List.of(new Spot("Footbridge", bridge, null, null, null, null, null, null, null),
                        new Spot("Stone bank", bank, 187.25, null, null, null, 12.0, null, null),
                        new Spot("Hollow", null, null, null, null, null, null, null, null)),
                List.of(new Walk("Footbridge", "Stone bank", Duration.ofMinutes(9))), null,
                new Parking("Footbridge", null, null), List.of(), List.of(), "By the footpath.", null, false,
                List.of("Stay on the path."), null, List.of(), null);
    }

    public static Bag dayBag() {
        return new Bag("Day bag", "day-bag",
                List.of(new Body("Main body", Sensor.FULL_FRAME, 24, "A", 100, 3200, 3, 28.0, 400, 660.0, List.of())),
                List.of(new Lens("Short zoom", "A", null, 24, 70, 4, 4, null, 0.38, 0.3, 72.0, 0, 430.0),
                        new Lens("Close-up prime", "A", null, 90, 90, 2.8, 2.8, null, 0.28, 1.0, 62.0, 0, 600.0)),
                List.of(new Support("Carbon legs", Support.Kind.TRIPOD, 0.12, 1.5, 6.0, 1350.0)),
                List.of(new Filter("Polariser", Filter.Kind.POLARISER, 72.0, 1.5, null, null, null, null, 25.0),
                        new Filter("Ring 62 to 72", Filter.Kind.STEP_UP_RING, null, 0, 62.0, 72.0, null, null, null)),
                true, List.of(64.0, 64.0), 2, List.of(new Bag.Extra("Kneeling mat", 200.0)));
    }

    public static Bag phone() {
        Lens main = new Lens("main", null, new Sensor(9.8, 7.3), 6.9, 6.9, 1.8, 1.8, null, 0.12, null, null, 0, null);
        Lens wide = new Lens("wide", null, new Sensor(6.4, 4.8), 2.2, 2.2, 2.2, 2.2, null, 0.03, null, null, 0, null);
        return new Bag("Pocket phone", null,
                List.of(new Body("Pocket phone", null, 12, null, 50, 800, 0, null, null, 190.0, List.of(main, wide))),
                List.of(), List.of(), List.of(), false, List.of(), 0, List.of());
    }

    public static Bag empty() {
        return new Bag("Empty bag", null, List.of(), List.of(), List.of(), List.of(), false, List.of(), 0, List.of());
    }

    public static List<ForecastHour> forecast() {
        return List.of(
                new ForecastHour(null, LocalTime.of(5, 0), 6.0, 5.5, null, 1.0, 2.0, 2.0, 0.0, null, null, null),
                new ForecastHour(null, LocalTime.of(9, 0), 11.0, null, 0.71, 3.3, 6.7, 6.0, 0.4, 0.4, null, null));
    }

    /** No wind all day, under an overcast sky. */
    public static List<ForecastHour> stillAir() {
        return List.of(new ForecastHour(null, LocalTime.of(5, 0), 8.0, null, null, 0.0, 0.0, 8.0, 0.0, null, null, null));
    }
}
