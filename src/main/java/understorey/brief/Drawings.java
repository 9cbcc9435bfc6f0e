package understorey.brief;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.exposure.Settings;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.illuminance.PlantArea;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.plan.Canopy;
import understorey.plan.Foliage;
import understorey.plan.LightWish;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.scene.Scene;
import understorey.scene.chart.CoverCurve;
import understorey.scene.chart.SkylineChart;
import understorey.scene.chart.SpotPlan;
import understorey.scene.chart.VisitFigure;
import understorey.scene.sketch.Air;
import understorey.scene.sketch.DistanceScale;
import understorey.scene.sketch.Setup;
import understorey.scene.sketch.SideView;
import understorey.scene.sketch.Stage;
import understorey.scene.sketch.Surroundings;
import understorey.scene.sketch.ViewfinderSketch;
import understorey.season.FloweringWindow;
import understorey.sky.Interval;
import understorey.visit.Day;
import understorey.visit.GroundPlan;
import understorey.visit.Place;
import understorey.weather.Likelihood;
import understorey.weather.Mist;

/** The drawings of a plan. */
final class Drawings {

    /** Share of the ground in sun from which shadows are drawn, and the most cloud: our choice, by eye. */
    private static final double SUNLIT_SHARE = 0.02;
    private static final double SUNLIT_OKTA = 4;
    /** Share of the drops left from which they are drawn: our choice, by eye. */
    private static final double DROPS_LEFT = 0.2;

    private final Day day;
    private final Site site;
    private final RunningOrder order;
    private final List<TimedShot> shots;
    private final SeasonBrief season;

    Drawings(Day day, SeasonBrief season, RunningOrder order, List<TimedShot> shots) {
        this.day = day;
        this.season = season;
        this.site = day.trip().site();
        this.order = order;
        this.shots = shots;
    }

    List<PlannedShot> shots() {
        return shots.stream().map(this::shot).toList();
    }

    /** Without a sun behind the skyline. */
    private PlannedShot shot(TimedShot shot) {
        LensFit fit = shot.fit().best();
        Settings settings = shot.settings();
        if (fit == null || settings == null) {
            return new PlannedShot(shot, null, null, null, null);
        }
        Spot spot = site.spot(shot.intent().shot().spot());
        LightAt light = shot.light();
        Setup setup = new Setup(fit, settings.fNumber(), settings.sharpFromM(), settings.sharpToM(),
                spot == null ? null : spot.slope(), site.canopyAt(spot), spot == null ? null : spot.clearingRadiusM(),
                light.aboveSkyline() ? light.sun() : null, air(shot), stage(shot),
                new Surroundings(leaves(site.canopyAt(spot)), shot.fitted().place().stand().skyline()));
        return new PlannedShot(shot, ViewfinderSketch.of(setup), SideView.of(setup), DistanceScale.of(setup),
                shot.ofCarpet() && shot.cover() != null ? CoverCurve.of(shot.cover().choices()) : null);
    }

    /** On the day of the plan; full flower where the season is unknown and where the day is withheld. */
    private Stage stage(TimedShot shot) {
        FloweringWindow window = season.window(shot.intent().shot().subject());
        return window == null || day.trip().hidesTheDay() ? Stage.FULL : Stage.of(window.ripeness(season.date()));
    }

    /** Share of full leaf on the day; evergreens are counted from nothing, others from their bare twigs. */
    private double leaves(@Nullable Canopy canopy) {
        double index = PlantArea.effectiveIndex(canopy, day.date());
        double full = PlantArea.stageIndex(Foliage.Stage.FULL_LEAF);
        double bare = canopy != null && canopy.trees() == Canopy.Trees.EVERGREEN ? 0 : PlantArea.stageIndex(Foliage.Stage.LEAFLESS);
        return Math.max(0, Math.min(1, (index - bare) / (full - bare)));
    }

    /** Drops that are wished for are expected where nothing is known of rain. */
    private boolean drops(TimedShot shot) {
        ZonedDateTime time = shot.light().sun().time();
        double left = day.drops().at(time) * day.drops().chance(time);
        return Double.isNaN(left) ? shot.intent().shot().light().contains(LightWish.AFTER_RAIN) : left >= DROPS_LEFT;
    }

    /** Mist counts when it is likely at the start, sun when it reaches a part of the ground under at most half a sky of cloud. */
    private Air air(TimedShot shot) {
        LightAt light = shot.light();
        Double okta = day.sky().okta(light.sun().time());
        Mist mist = day.places().get(0).mist();
        return new Air(mist.likelihood() == Likelihood.HIGH && mist.when() != null && mist.when().contains(light.sun().time()),
                light.aboveSkyline() && light.fleckShare() >= SUNLIT_SHARE && okta != null && okta <= SUNLIT_OKTA, drops(shot));
    }

    List<SpotLight> places() {
        return day.places().stream().map(place -> new SpotLight(place, skyline(place))).toList();
    }

    /** On the ground under the sky expected; not a number where the sky is unknown. */
    private double expected(LightAt row) {
        Double okta = day.sky().okta(row.sun().time());
        return okta == null ? Double.NaN : row.floorEv(okta);
    }

    private Scene skyline(Place place) {
        List<SkylineChart.Field> fields = new ArrayList<>();
        for (TimedShot shot : shots) {
            if (shot.fitted().place() == place && shot.fit().best() != null) {
                fields.add(new SkylineChart.Field(shot.number(), shot.intent().shot().name(), shot.intent().shot().facingDeg(),
                        shot.fit().best().view().horizontalDeg()));
            }
        }
        return SkylineChart.of(place.light(), place.stand().skyline(), place.stand().canopy().treeTopDeg(), site.position().latitude(),
                fields, place.name(site));
    }

    /** Null when no picture is taken. */
    VisitFigure.@Nullable Wordless visit(List<VisitFigure.Event> events) {
        List<VisitFigure.Taken> taken = order.shooting().stream().map(leg -> taken(shot(leg.shot()), leg)).toList();
        return taken.isEmpty() ? null : VisitFigure.of(day, order, taken, events, this::expected);
    }

    private static VisitFigure.Taken taken(TimedShot shot, Leg leg) {
        LightAt light = shot.light();
        Double okta = shot.weather().okta();
        return new VisitFigure.Taken(shot.number(), shot.intent().shot().name(), shot.outlook() == null ? List.of() : shot.outlook().windows(),
                shot.fitted().place(), new Interval(leg.from(), leg.to()).middle(), okta == null ? light.floor().broken() : light.floorEv(okta));
    }

    private TimedShot shot(@Nullable String name) {
        return shots.stream().filter(shot -> shot.intent().shot().name().equals(name)).findFirst().orElseThrow();
    }

    /** Null where fewer than two positions are known exactly. */
    @Nullable Scene spots() {
        GroundPlan plan = GroundPlan.of(day.trip(), order.route(site));
        return plan == null ? null : SpotPlan.of(plan);
    }
}
