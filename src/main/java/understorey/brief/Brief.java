package understorey.brief;

import java.time.LocalDate;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.order.Alternative;
import understorey.order.RunningOrder;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.plan.Trip;
import understorey.scene.Scene;
import understorey.scene.chart.VisitFigure;
import understorey.season.Flowering;
import understorey.story.Story;
import understorey.visit.Day;
import understorey.visit.Safety;
import understorey.visit.WeatherHour;

/**
 * A trip, answered.
 *
 * @param weather   at every full hour of the visit; empty without a forecast
 * @param places    where the pictures are taken, with drawings of the light there
 * @param alternatives what changes if the day turns out another; only where something does
 * @param events    what happens during the visit, in order of time
 * @param visit     the visit as one figure; null when no picture is taken
 * @param spotPlan  the spots to scale; null where fewer than two positions are known exactly
 * @param flowering of the first picture's subject; null when its months are unknown
 * @param season    how the day was chosen, and what flowers then
 * @param cautions  gravest first
 * @param assumed   the names, as in the plan's format, of what the author left out
 */
public record Brief(Day day, SeasonBrief season, List<PlannedShot> shots, RunningOrder order, List<Alternative> alternatives,
                    Safety safety, Story story, Packing packing, List<CompanionBag> companionBags, @Nullable Flowering flowering,
                    List<WeatherHour> weather, List<SpotLight> places, List<VisitFigure.Event> events, VisitFigure.@Nullable Wordless visit,
                    @Nullable Scene spotPlan,
                    List<Advice> cautions, List<Advice> findings, Set<String> assumed) {

    /** As its audience may see it. */
    public Trip trip() {
        return day.trip();
    }

    /** The date planned. */
    public LocalDate date() {
        return day.date();
    }

    /** The pictures without their drawings. */
    public List<TimedShot> timed() {
        return shots.stream().map(PlannedShot::timed).toList();
    }

    /** The picture of that name. */
    public TimedShot shot(@Nullable String name) {
        return timed().stream().filter(shot -> shot.intent().shot().name().equals(name)).findFirst()
                .orElseThrow(() -> new NoSuchElementException(name));
    }

    /** What to look for when a picture is framed, the most pressing first. */
    public List<Advice> composition(TimedShot shot) {
        return Composition.of(trip().site(), shot);
    }

    /** How to expose in likely mist, for all pictures that do not wish for it; empty where none is taken in it. */
    public List<Advice> inMist() {
        return MistPlan.ofAll(timed());
    }

    /** Why the day is hardly worth going, and what to do instead; empty for any other day. */
    public List<Advice> hopeless() {
        return Hopeless.of(this);
    }

    /** What could spoil the day: up to three risks with their figures, the greatest first; never empty. */
    public List<Advice> spoilers() {
        return Spoilers.of(this);
    }
}
