package understorey.brief;

import java.time.ZonedDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Metering;
import understorey.exposure.Settings;
import understorey.kit.CoverTrade;
import understorey.kit.Darkening;
import understorey.kit.LensFit;
import understorey.light.LightAt;
import understorey.light.LightAt.Metered;
import understorey.light.LightDay;
import understorey.light.LightTable;
import understorey.light.Outlook;
import understorey.light.PolariserEffect;
import understorey.light.SunDirection;
import understorey.light.WhiteBalance;
import understorey.light.Wishes;
import understorey.optics.Projection;
import understorey.order.Leg;
import understorey.order.RunningOrder;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.Spot;
import understorey.sky.Interval;
import understorey.sky.SunAt;
import understorey.visit.Day;
import understorey.visit.ExpectedSky;
import understorey.visit.Place;
import understorey.visit.SkyDays;
import understorey.weather.Weather;

/** Plans one picture after another: its lens, its light and its settings, at its spot and time. */
final class ShotPlanner {

    private static final List<Integer> EACH_WAY_HOURS = List.of(-1, 1);
    private static final double OVERCAST_OKTA = 7.5;

    private final Day day;
    private final Site site;
    private final RunningOrder order;
    private final ExpectedSky sky;
    private final SkyDays skies;

    private ShotPlanner(Day day, RunningOrder order, SkyDays skies) {
        this.day = day;
        this.site = day.trip().site();
        this.order = order;
        this.sky = day.sky();
        this.skies = skies;
    }

    /** Light, time and settings of every picture. */
    static List<TimedShot> timed(Day day, List<FittedShot> shots, RunningOrder order, SkyDays skies) {
        ShotPlanner planner = new ShotPlanner(day, order, skies);
        return shots.stream().map(planner::timed).toList();
    }

    private TimedShot timed(FittedShot fitted) {
        Place place = fitted.place();
        Shot shot = fitted.fit().intent().shot();
        Interval time = order.timeOf(shot.name());
        ZonedDateTime middle = (time == null ? day.hours().visit() : time).middle();
        Spot spot = site.spot(shot.spot());
        Position position = site.positionOf(spot);
        SunAt sun = SunAt.of(position, middle);
        LightAt light = LightTable.at(position, sun, place.stand());
        Weather weather = sky.weather(middle);
        LensFit best = fitted.fit().best();
        List<TimedShot.Wished> wished = wished(shot, place, light, weather);
        double okta = weather.okta() == null ? TimedShot.bestSky(wished).okta() : weather.okta();
        Metering metering = MistPlan.metering(shot, best, place.mist(), light, okta);
        Projection camera = fitted.camera();
        return new TimedShot(fitted, time, light, weather, sunlight(shot, sun, camera, place, light),
                wished, best == null || camera == null || best.lossStops() == 0 ? null
                : PolariserEffect.of(sun, camera, weather.okta(), best.lossStops()),
                MistPlan.of(shot, place.mist(), middle), weather.okta() == null ? null : whiteBalance(shot, metering, light, okta),
                CoverTrade.of(fitted.fit(), spot == null ? null : spot.slope()),
                best == null ? null : settings(best, metering, light, okta, camera),
                best == null ? List.of() : otherSkies(shot, best, light, camera),
                best != null && MistPlan.otherwise(best, place.mist(), middle)
                        ? other(null, shot, best, Metering.inMist(light, okta), light, okta, camera) : null,
                best == null ? List.of() : otherHours(middle, shot, best, position, place, camera));
    }

    /** Without mist, which no other sky is sure to bring. */
    private List<TimedShot.Other> otherSkies(Shot shot, LensFit best, LightAt light, @Nullable Projection camera) {
        return ExpectedSky.ANY.stream()
                .map(word -> other(word, shot, best, Metering.of(best, light, word.okta()), light, word.okta(), camera)).toList();
    }

    private List<TimedShot.Other> otherHours(ZonedDateTime middle, Shot shot, LensFit best, Position position, Place place,
                                             @Nullable Projection camera) {
        List<Leg> shooting = order.shooting();
        ZonedDateTime first = shooting.isEmpty() ? day.hours().arrive() : shooting.get(0).from();
        return EACH_WAY_HOURS.stream().map(middle::plusHours)
                .filter(other -> !other.isBefore(first) && !other.isAfter(order.leaveLastSpotBy()))
                .map(other -> at(other, shot, best, position, place, camera)).toList();
    }

    /**
     * For the light that a small frame meters; in mist for the sun; for a wide one for the sun if most of the ground is in it, or
     * it wishes for flecks of it.
     */
    private static WhiteBalance whiteBalance(Shot shot, Metering metering, LightAt light, double okta) {
        if (light.moonLux() > 0) {
            return WhiteBalance.byMoon();
        }
        boolean wished = shot.wishesForSun() ? light.flecked() : light.mostlySunlit();
        WhiteBalance.Lit lit = metering.small() ? metering.part() == Metered.SUN ? WhiteBalance.Lit.SUN : WhiteBalance.Lit.SHADE
                : wished || metering.inMist() ? WhiteBalance.Lit.SUN
                : metering.part() == Metered.SUN_AND_SHADE ? WhiteBalance.Lit.SUN_AND_SHADE : WhiteBalance.Lit.SHADE;
        return WhiteBalance.of(light.sun().altitudeDeg(), lit, okta, light.plantAreaIndex());
    }

    /** Should the picture be taken at another time than planned. */
    private TimedShot.Other at(ZonedDateTime time, Shot shot, LensFit fit, Position position, Place place,
                               @Nullable Projection camera) {
        LightAt light = LightTable.at(position, SunAt.of(position, time), place.stand());
        Weather weather = sky.weather(time);
        double okta = sky.plannedOkta(time);
        return other(weather.okta() == null ? ExpectedSky.MIDDLE : null, shot, fit,
                MistPlan.metering(shot, fit, place.mist(), light, okta), light, okta, camera);
    }

    private TimedShot.Other other(@Nullable SkyWord word, Shot shot, LensFit fit, Metering metering, LightAt light, double okta,
                                  @Nullable Projection camera) {
        return new TimedShot.Other(word, light.time(), metering.part(), settings(fit, metering, light, okta, camera),
                whiteBalance(shot, metering, light, okta));
    }

    private Settings settings(LensFit fit, Metering metering, LightAt light, double okta, @Nullable Projection camera) {
        SunDirection sun = camera == null ? null : SunDirection.of(light.sun(), camera);
        return Exposure.of(fit, Darkening.of(day.trip().gear(), fit), Conditions.of(light, metering, okta,
                sky.nearestWind(light.time()), sun, fit.intent().shot().subject().heightM()));
    }

    /** Null for a picture that faces nowhere in particular. */
    private TimedShot.@Nullable Sunlight sunlight(Shot shot, SunAt sun, @Nullable Projection camera, Place place,
                                        LightAt light) {
        if (shot.facingDeg() == null) {
            return null;
        }
        SunDirection now = camera == null ? SunDirection.of(sun, shot.facingDeg()) : SunDirection.of(sun, camera);
        boolean shines = light.flecked() && sky.plannedOkta(sun.time()) < OVERCAST_OKTA;
        return new TimedShot.Sunlight(now, now == null ? List.of() : now.reasons(light.aboveSkyline(), shines),
                SunDirection.over(place.track(), shot.facingDeg(), place.sunlit()));
    }

    /** The outlook for the sky expected; for each sky without a forecast. Empty without a wish. */
    private List<TimedShot.Wished> wished(Shot shot, Place place, LightAt light, Weather weather) {
        if (shot.light().isEmpty()) {
            return List.of();
        }
        Double okta = weather.okta();
        if (okta != null) {
            return List.of(new TimedShot.Wished(null, outlook(shot, place, light.time(), null, okta)));
        }
        return ExpectedSky.ANY.stream().map(word -> new TimedShot.Wished(word, outlook(shot, place, light.time(), word, word.okta()))).toList();
    }

    /**
     * Under the sky expected when {@code word} is null.
     *
     * @param okta cloud cover at the time planned
     */
    private Outlook outlook(Shot shot, Place place, ZonedDateTime planned, @Nullable SkyWord word, double okta) {
        LightDay day = skies.day(word, place);
        return Outlook.of(Wishes.of(shot), skies.moments(word, place), day.at(LightTable.between(place.light(), planned), okta),
                time -> day.at(place.light(), time));
    }
}
