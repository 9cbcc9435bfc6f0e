package understorey.brief;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import understorey.exposure.Conditions;
import understorey.exposure.Exposure;
import understorey.exposure.Settings;
import understorey.kit.CoverTrade;
import understorey.kit.Darkening;
import understorey.kit.Intent;
import understorey.kit.LensFit;
import understorey.kit.ShotFit;
import understorey.light.LightAt;
import understorey.light.LightDay;
import understorey.light.LightTable;
import understorey.light.Outlook;
import understorey.light.PolariserEffect;
import understorey.light.SunDirection;
import understorey.light.Weather;
import understorey.light.WhiteBalance;
import understorey.optics.Projection;
import understorey.outing.Outing;
import understorey.plan.LightWish;
import understorey.plan.Position;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.SkyWord;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.scene.SideView;
import understorey.scene.Setup;
import understorey.scene.ViewfinderSketch;
import understorey.sky.Interval;
import understorey.sky.SunAt;

/** Plans one picture after another: its lens, its light and its settings, at its spot and time. */
final class ShotPlanner {

    private static final List<SkyWord> SKIES = List.of(SkyWord.CLEAR, SkyWord.BROKEN, SkyWord.OVERCAST);
    private static final int[] EACH_WAY_HOURS = {-1, 1};
    private static final double OVERCAST_OKTA = 7.5;

    private final Trip trip;
    private final Site site;
    private final Outing outing;
    private final ExpectedSky sky;
    private final SkyDays days;

    ShotPlanner(Trip trip, Outing outing, ExpectedSky sky, SkyDays days) {
        this.trip = trip;
        this.site = trip.site();
        this.outing = outing;
        this.sky = sky;
        this.days = days;
    }

    /**
     * One picture.
     *
     * @param fit of its lenses, the carried ones first
     */
    ShotBrief shot(int number, Intent intent, ShotFit fit, SpotPlanner.Place place,
                   List<ShotBrief.ForCompanion> companions) {
        Shot shot = intent.shot();
        Interval time = outing.timeOf(shot.name());
        ZonedDateTime middle = middle(time == null ? new Interval(outing.arrive(), outing.leave()) : time);
        Spot spot = site.spot(shot.spot());
        Position position = site.positionOf(spot);
        SunAt sun = SunAt.of(position, middle);
        LightAt light = LightTable.at(position, sun, place.stand());
        Weather weather = sky.weather(middle);
        LensFit best = fit.best();
        Projection camera = best == null || shot.facingDeg() == null ? null
                : Projection.of(shot.facingDeg(), best.tiltDeg(), best.view());
        Settings settings = null;
        List<ShotBrief.Other> skies = new ArrayList<>();
        List<ShotBrief.Other> hours = new ArrayList<>();
        if (best != null) {
            settings = settings(best, light, orMiddle(weather.okta()), weather, camera);
            for (SkyWord word : SKIES) {
                skies.add(new ShotBrief.Other(word, middle, settings(best, light, word.okta(), weather, camera),
                        whiteBalance(shot, light, word.okta())));
            }
            for (int step : EACH_WAY_HOURS) {
                hours.add(at(middle.plusHours(step), shot, best, position, place, camera));
            }
        }
        return new ShotBrief(number, intent, fit, time, light, weather, sunlight(shot, sun, camera, place, light, weather),
                wished(shot, place, light, weather), camera == null || best.lossStops() == 0 ? null
                : PolariserEffect.of(sun, camera, weather.okta(), best.lossStops()),
                weather.okta() == null ? null : whiteBalance(shot, light, weather.okta()),
                CoverTrade.of(fit, spot == null ? null : spot.slope()),
                settings, List.copyOf(skies), List.copyOf(hours), companions, null, null);
    }

    /** The same picture with its drawings; without a sun that the land hides. */
    ShotBrief drawn(ShotBrief shot) {
        LensFit fit = shot.fit().best();
        if (fit == null) {
            return shot;
        }
        Spot spot = site.spot(shot.intent().shot().spot());
        Settings settings = shot.settings();
        LightAt light = shot.light();
        Setup setup = new Setup(fit, settings.fNumber(), settings.sharpFromM(), settings.sharpToM(),
                spot == null ? null : spot.slope(), site.canopyAt(spot), spot == null ? null : spot.clearingRadiusM(),
                light.aboveSkyline() ? light.sun() : null);
        return shot.with(ViewfinderSketch.of(setup), SideView.of(setup));
    }

    private static ZonedDateTime middle(Interval time) {
        return time.from().plus(Duration.between(time.from(), time.to()).dividedBy(2));
    }

    private static double orMiddle(Double okta) {
        return okta == null ? ExpectedSky.MIDDLE.okta() : okta;
    }

    /** In the sun where most of the floor is, or where the picture wants it and there are flecks of it. */
    private static WhiteBalance whiteBalance(Shot shot, LightAt light, double okta) {
        if (light.moonLux() > 0) {
            return WhiteBalance.byMoon();
        }
        boolean inSun = wantsSun(shot.light()) ? light.flecked() : light.mostlySunlit();
        return WhiteBalance.of(light.sun().altitudeDeg(), inSun, okta, light.plantAreaIndex());
    }

    private static boolean wantsSun(List<LightWish> wishes) {
        for (LightWish wish : wishes) {
            switch (wish) {
                case LOW_SUN, BACKLIGHT, SIDELIGHT, FRONTLIGHT, OVERHEAD -> {
                    return true;
                }
                default -> { }
            }
        }
        return false;
    }

    /** Should the picture be taken at another time than planned. */
    private ShotBrief.Other at(ZonedDateTime time, Shot shot, LensFit fit, Position position, SpotPlanner.Place place,
                               Projection camera) {
        LightAt light = LightTable.at(position, SunAt.of(position, time), place.stand());
        Weather weather = sky.weather(time);
        double okta = orMiddle(weather.okta());
        return new ShotBrief.Other(weather.okta() == null ? ExpectedSky.MIDDLE : null, time,
                settings(fit, light, okta, weather, camera), whiteBalance(shot, light, okta));
    }

    private Settings settings(LensFit fit, LightAt light, double okta, Weather weather, Projection camera) {
        SunDirection sun = camera == null ? null : SunDirection.of(light.sun(), camera);
        return Exposure.of(fit, Darkening.of(trip.gear(), fit), Conditions.of(light, okta, weather, sun));
    }

    /** Null for a picture that faces nowhere in particular. */
    private static ShotBrief.Sunlight sunlight(Shot shot, SunAt sun, Projection camera, SpotPlanner.Place place,
                                               LightAt light, Weather weather) {
        if (shot.facingDeg() == null) {
            return null;
        }
        SunDirection now = camera == null ? SunDirection.of(sun, shot.facingDeg()) : SunDirection.of(sun, camera);
        boolean shines = light.flecked() && orMiddle(weather.okta()) < OVERCAST_OKTA;
        return new ShotBrief.Sunlight(now, now == null ? List.of() : now.reasons(light.aboveSkyline(), shines),
                SunDirection.over(place.track(), shot.facingDeg(), place.sunlit()));
    }

    /** The outlook for the sky expected; for each sky where nobody said. Empty without a wish. */
    private List<ShotBrief.Wished> wished(Shot shot, SpotPlanner.Place place, LightAt light, Weather weather) {
        if (shot.light().isEmpty()) {
            return List.of();
        }
        if (weather.okta() != null) {
            return List.of(new ShotBrief.Wished(null, outlook(shot, place, light.time(), null)));
        }
        List<ShotBrief.Wished> wished = new ArrayList<>();
        for (SkyWord word : SKIES) {
            wished.add(new ShotBrief.Wished(word, outlook(shot, place, light.time(), word)));
        }
        return List.copyOf(wished);
    }

    /** Under the sky expected when {@code word} is null. */
    private Outlook outlook(Shot shot, SpotPlanner.Place place, ZonedDateTime planned, SkyWord word) {
        LightDay day = days.day(word, place);
        return Outlook.of(shot.light(), shot.facingDeg(), days.moments(word, place), day.at(place.light(), planned),
                time -> day.at(place.light(), time));
    }
}
