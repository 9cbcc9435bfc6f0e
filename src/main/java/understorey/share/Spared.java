package understorey.share;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import understorey.plan.Canopy;
import understorey.plan.DayWishes;
import understorey.plan.ForecastHour;
import understorey.plan.Season;
import understorey.plan.Share;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Spot;
import understorey.plan.Trip;
import understorey.plan.When;

/**
 * A sensitive site, and a trip to it, as the public gets them. The result is the same for every place in the cell at the
 * same elevation to 100 m, so that no page computed from it can lead nearer than the cell.
 */
final class Spared {

    /** The exact days of a record could identify the wood; weeks fit many woods. */
    private static final int WEEK_D = 7;
    private static final int MID_MONTH = 15;
    private static final double CANOPY_STEP_M = 5;
    private static final double RAIN_STEP_MM = 0.5;
    private static final double SHARE_STEP = 0.1;

    private final Site site;
    private final PublicNames cover;
    private final Grid grid;
    private final boolean hidden;

    Spared(Site site, Share.Precision precision) {
        this.site = site;
        this.cover = PublicNames.of(site);
        this.grid = Grid.of(precision, true);
        this.hidden = precision == Share.Precision.HIDDEN;
    }

    /** The site without skyline, edges, trunks, ground, walks, hours, parking, or anything that only a visitor needs. */
    Site site() {
        return site(site.zone());
    }

    private Site site(ZoneId zone) {
        return new Site(cover.siteName(), cover.slug(), site.publicName(),
                grid.round(site.position()), grid.elevationM(site.elevationM()), zone, List.of(),
                canopy(site.canopy()), site.spots().stream().map(this::spot).toList(), List.of(), null, null,
                hidden ? List.of() : site.seasons().stream().map(Spared::inWeeks).toList(), site.subjects(), null, null,
                true, site.cautions(), null, List.of(), hidden ? null : site.country());
    }

    /** The trip for the public. A hidden trip has no day: it is the middle of its month, at the UTC offset of that date. */
    Trip trip(Trip trip) {
        List<LocalDate> days = trip.when().days();
        LocalDate middle = days.get(days.size() / 2).withDayOfMonth(MID_MONTH);
        ZoneId zone = ZoneId.ofOffset("UTC", site.zone().getRules().getOffset(middle.atTime(LocalTime.NOON)));
        return new Trip(trip.title(), trip.slug(), trip.series(), hidden ? site(zone) : site(),
                hidden ? new When.On(middle) : trip.when(), clock(trip.arrive()), leave(trip), trip.gear(),
                trip.companions(), null, trip.sky(),
                hidden ? List.of() : trip.forecast().stream().map(Spared::rounded).toList(), trip.story(),
                trip.shots().stream().map(this::shot).toList(), trip.share(), hidden ? DayWishes.NONE : trip.wishes(), trip.display());
    }

    private Spot spot(Spot spot) {
        return new Spot(Objects.requireNonNull(cover.spot(spot.name())), null, null, canopy(spot.canopy()), null, null, null, null,
                null);
    }

    private static @Nullable Canopy canopy(@Nullable Canopy canopy) {
        return canopy == null ? null : new Canopy(canopy.trees(), canopy.foliage(), canopy.heightM() == null ? null
                : Double.valueOf(Math.max(CANOPY_STEP_M, nearest(canopy.heightM(), CANOPY_STEP_M))));
    }

    private Shot shot(Shot shot) {
        return new Shot(shot.name(), shot.role(), shot.subject(), cover.spot(shot.spot()), shot.viewpoint(),
                shot.orientation(), shot.sharp(), shot.focalEquivalentMm(), shot.frame(), shot.facingDeg(), shot.light(),
                shot.polariser(), shot.duration(), shot.priority(), shot.notes(), shot.otherwise(), shot.tiltDeg(),
                clock(shot.start()), shot.after(), shot.printWidthM(), shot.compose(), shot.chosen(), shot.set());
    }

    /** Rounds to the step of the times on pages; the last step of a day is not rounded up into the next day. */
    private @Nullable LocalTime clock(@Nullable LocalTime time) {
        if (time == null) {
            return null;
        }
        int step = stepMin();
        int minute = (time.toSecondOfDay() / 60 + step / 2) / step * step;
        return LocalTime.ofSecondOfDay(60L * Math.min(minute, 24 * 60 - step));
    }

    /** A visit of minutes keeps a step of the grid: a leave at the time of the arrival would be on the next day. */
    private @Nullable LocalTime leave(Trip trip) {
        LocalTime arrive = clock(trip.arrive());
        LocalTime leave = clock(trip.leave());
        return leave != null && leave.equals(arrive) && !trip.stay().passesMidnight() ? leave.plusMinutes(stepMin()) : leave;
    }

    private int stepMin() {
        return Trip.clockStepMin(hidden ? Share.Precision.HIDDEN : Share.Precision.COARSE);
    }

    private static Season inWeeks(Season season) {
        return new Season(season.subject(), season.records().stream()
                .map(year -> new Season.Flowering(week(year.first()), week(year.full()), week(year.over()))).toList(),
                null, List.of());
    }

    private static @Nullable LocalDate week(@Nullable LocalDate date) {
        return date == null ? null : date.plusDays(WEEK_D / 2 - Math.floorMod(date.toEpochDay() + WEEK_D / 2, WEEK_D));
    }

    /** Rounds a forecast: exact figures would identify one point of the model's grid. */
    private static ForecastHour rounded(ForecastHour h) {
        return new ForecastHour(h.date(), h.time(), step(h.temperatureC(), 1),
                step(h.dewPointC(), 1), step(h.humidity(), SHARE_STEP), step(h.windMs(), 1), step(h.gustMs(), 1),
                step(h.okta(), 1), step(h.rainMm(), RAIN_STEP_MM), step(h.rainChance(), SHARE_STEP),
                step(h.temperature850C(), 1), step(h.wind850Ms(), 1));
    }

    private static @Nullable Double step(@Nullable Double value, double step) {
        return value == null ? null : Double.valueOf(nearest(value, step));
    }

    private static double nearest(double value, double step) {
        return Math.round(value / step) * step;
    }
}
