package understorey.brief;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import understorey.advice.Advice;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.kit.SmallestBag;
import understorey.light.Drops;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.outing.Alternative;
import understorey.outing.GroundPlan;
import understorey.outing.Outing;
import understorey.outing.Quality;
import understorey.outing.Safety;
import understorey.outing.Story;
import understorey.packing.Cautions;
import understorey.packing.Cold;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.plan.Companion;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.scene.DayLightChart;
import understorey.scene.Drawing;
import understorey.scene.OrderChart;
import understorey.scene.SkylineChart;
import understorey.scene.SpotPlan;
import understorey.season.Flowering;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;

/** Assembles the brief of a trip that is ready for its audience. */
public final class Planner {

    private final Trip trip;
    private final SeasonPlanner season;
    private final Site site;
    private final LocalDate date;
    private final SunDay sun;
    private final List<LightAt> light;
    private final List<Intent> intents;
    private final SpotPlanner spots;
    private final List<SpotPlanner.Place> places;
    private final SmallestBag bag;
    private final List<SmallestBag> companionBags = new ArrayList<>();
    private final ExpectedSky sky;
    private final Drops drops;
    private final SkyDays days;
    private final List<LensFit> fits;
    private final List<LightAt> darkest;
    private final OrderPlanner order;
    private final Quality quality;
    private final Outing outing;

    private Planner(Trip trip) {
        this.trip = trip;
        this.site = trip.site();
        this.season = new SeasonPlanner(trip);
        this.date = season.date();
        this.sun = SunDay.of(site.position(), date, site.zone());
        this.light = LightTable.of(site, null, date);
        this.intents = Intent.of(trip.shots(), site);
        this.bag = SmallestBag.of(trip.gear(), trip.companions(), intents);
        for (Companion companion : trip.companions()) {
            companionBags.add(SmallestBag.of(companion.gear(), List.of(), intents));
        }
        this.spots = new SpotPlanner(trip, date, sun, light);
        this.places = spots.places(intents);
        this.sky = new ExpectedSky(trip);
        this.drops = Drops.of(date, site.zone(), trip.forecast(), trip.sky());
        this.days = new SkyDays(sky, drops);
        this.fits = new ArrayList<>();
        for (ShotFit fit : bag.fits()) {
            fits.add(fit.best());
        }
        this.darkest = darkest();
        this.order = new OrderPlanner(trip, date, sun, darkest, intents, fits, companionBags, intent -> spots.of(places, intent.shot()));
        this.quality = order.expected(days, sky);
        this.outing = order.outing(quality);
    }

    public static Brief brief(Trip trip) {
        return new Planner(trip).brief();
    }

    /** Drawings are made on another core while the pictures are planned. */
    private Brief brief() {
        List<CompletableFuture<Drawing>> ribbons = new ArrayList<>();
        for (SpotPlanner.Place place : places) {
            ribbons.add(CompletableFuture.supplyAsync(() -> day(place)));
        }
        CompletableFuture<List<Alternative>> alternatives = CompletableFuture.supplyAsync(
                () -> order.alternatives(outing, quality, sky, drops));
        ShotPlanner planner = new ShotPlanner(trip, outing, sky, days);
        List<ShotBrief> shots = new ArrayList<>();
        List<CompletableFuture<ShotBrief>> drawn = new ArrayList<>();
        for (Intent intent : intents) {
            ShotBrief shot = planner.shot(shots.size() + 1, intent, bag.fits().get(shots.size()),
                    spots.of(places, intent.shot()), companions(shots.size()));
            shots.add(shot);
            drawn.add(CompletableFuture.supplyAsync(() -> planner.drawn(shot)));
        }
        List<CompletableFuture<Drawing>> skylines = new ArrayList<>();
        for (SpotPlanner.Place place : places) {
            List<ShotBrief> here = shotsAt(place, shots);
            skylines.add(CompletableFuture.supplyAsync(() -> skyline(place, here)));
        }
        Story story = Story.of(intents, fits);
        Packing packing = packing(shots);
        Safety safety = Safety.of(trip, sun, darkest, outing);
        List<Advice> findings = remarks(safety, story, shots).all();
        List<SpotLight> lit = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            lit.add(places.get(i).lit(ribbons.get(i).join(), skylines.get(i).join()));
        }
        List<ShotBrief> withDrawings = new ArrayList<>();
        for (CompletableFuture<ShotBrief> shot : drawn) {
            withDrawings.add(shot.join());
        }
        return new Brief(trip, date, sun, MoonDay.of(site.position(), date, site.zone()), light, List.copyOf(lit),
                sky.hours(outing.arrive(), outing.leave()), drops, List.copyOf(withDrawings), outing,
                alternatives.join(), safety, timeLine(shots),
                SpotPlan.of(GroundPlan.of(trip, outing), "The spots, north up"), story, packing, carriedByCompanions(),
                flowering(), season.brief(), Cautions.of(trip, outing, intents), findings, assumed());
    }

    private List<ShotBrief.ForCompanion> companions(int picture) {
        List<ShotBrief.ForCompanion> companions = new ArrayList<>();
        for (int i = 0; i < companionBags.size(); i++) {
            companions.add(new ShotBrief.ForCompanion(trip.companions().get(i).name(),
                    companionBags.get(i).fits().get(picture).best()));
        }
        return List.copyOf(companions);
    }

    private List<CompanionBag> carriedByCompanions() {
        List<CompanionBag> carried = new ArrayList<>();
        for (int i = 0; i < companionBags.size(); i++) {
            carried.add(CompanionBag.of(trip.companions().get(i).name(), companionBags.get(i)));
        }
        return List.copyOf(carried);
    }

    /** Row by row the light of the site or of the place visited that is darkest under an overcast sky: for the way. */
    private List<LightAt> darkest() {
        List<LightAt> darkest = new ArrayList<>(light);
        for (SpotPlanner.Place place : places) {
            for (int i = 0; i < darkest.size(); i++) {
                LightAt there = place.light().get(i);
                darkest.set(i, there.floor().overcast() < darkest.get(i).floor().overcast() ? there : darkest.get(i));
            }
        }
        return darkest;
    }

    private List<ShotBrief> shotsAt(SpotPlanner.Place place, List<ShotBrief> shots) {
        List<ShotBrief> here = new ArrayList<>();
        for (ShotBrief shot : shots) {
            if (spots.of(places, shot.intent().shot()) == place) {
                here.add(shot);
            }
        }
        return here;
    }

    private Drawing day(SpotPlanner.Place place) {
        return DayLightChart.of(place.light(), sun, place.sunlit(), this::expected, outing, order(place),
                "The day’s light at " + name(place));
    }

    private Drawing skyline(SpotPlanner.Place place, List<ShotBrief> here) {
        return SkylineChart.of(place.light(), place.stand().skyline(), place.stand().canopy().treeTopDeg(), site,
                trip.shots(), fields(here), "The sun over the skyline at " + name(place));
    }

    private String name(SpotPlanner.Place place) {
        return place.spots().isEmpty() ? site.name() : String.join(", ", place.spots());
    }

    /** The pictures by number; null for those taken elsewhere. */
    private List<String> order(SpotPlanner.Place place) {
        List<String> order = new ArrayList<>();
        for (Shot shot : trip.shots()) {
            order.add(spots.of(places, shot) == place ? shot.name() : null);
        }
        return order;
    }

    private Drawing timeLine(List<ShotBrief> shots) {
        List<OrderChart.Picture> pictures = new ArrayList<>();
        for (ShotBrief shot : shots) {
            pictures.add(new OrderChart.Picture(shot.number(), shot.intent().shot().name(),
                    shot.outlook() == null ? List.of() : shot.outlook().windows()));
        }
        return OrderChart.of(outing, pictures, "The running order");
    }

    private static List<SkylineChart.Field> fields(List<ShotBrief> here) {
        List<SkylineChart.Field> fields = new ArrayList<>();
        for (ShotBrief shot : here) {
            if (shot.fit().best() != null) {
                fields.add(new SkylineChart.Field(shot.number(), shot.intent().shot().facingDeg(),
                        shot.fit().best().view().horizontalDeg()));
            }
        }
        return fields;
    }

    /** On the floor under the sky expected; not a number where nobody said what that is. */
    private double expected(LightAt row) {
        Double okta = sky.okta(row.sun().time());
        return okta == null ? Double.NaN : row.floorEv(okta);
    }

    /** Of the first picture whose subject's months are known. */
    private Flowering flowering() {
        for (Intent intent : intents) {
            Flowering flowering = Flowering.of(intent.shot().subject(), site.position().latitude(), date);
            if (flowering != null) {
                return flowering;
            }
        }
        return null;
    }

    private Packing packing(List<ShotBrief> shots) {
        List<Packing.Use> uses = new ArrayList<>();
        for (ShotBrief shot : shots) {
            uses.add(new Packing.Use(shot.fit().best(), shot.settings(), shot.verdict(), shot.helps(),
                    shot.dimming()));
        }
        return Packing.of(bag, uses, Cold.coldestC(trip.forecast(), outing), outing.lamp());
    }

    private Remarks remarks(Safety safety, Story story, List<ShotBrief> shots) {
        Remarks remarks = new Remarks(trip, date);
        remarks.season(intents, season);
        remarks.sun(sun);
        remarks.sky(sky, shots);
        remarks.canopy();
        remarks.clocks();
        for (ShotBrief shot : shots) {
            remarks.shot(shot);
        }
        for (ShotBrief shot : shots) {
            remarks.light(shot);
        }
        remarks.outing(outing, safety, story);
        return remarks;
    }

    private Set<String> assumed() {
        Set<String> assumed = new LinkedHashSet<>(outing.assumed());
        if (sky.unknown()) {
            assumed.add("sky");
        }
        if (site.canopy() == null) {
            assumed.add("canopy");
        }
        if (trip.share() == null || trip.share().audience() == null) {
            assumed.add("audience");
        }
        if (trip.share() == null || trip.share().position() == null) {
            assumed.add("position");
        }
        return Collections.unmodifiableSet(assumed);
    }
}
