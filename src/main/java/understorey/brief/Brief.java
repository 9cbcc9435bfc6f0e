package understorey.brief;

import java.time.LocalDate;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Set;
import understorey.advice.Advice;
import understorey.light.Drops;
import understorey.light.LightAt;
import understorey.outing.Alternative;
import understorey.outing.Outing;
import understorey.outing.Safety;
import understorey.outing.Story;
import understorey.packing.CompanionBag;
import understorey.packing.Packing;
import understorey.plan.Trip;
import understorey.scene.Drawing;
import understorey.season.Flowering;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;

/**
 * A trip, answered.
 *
 * @param trip      as its audience may see it
 * @param date      planned
 * @param light     over the whole local day at the site, every 15 minutes
 * @param places    where the pictures are taken, each with its own light; the site itself when there are no spots
 * @param weather   at every full hour of the visit; empty without a forecast
 * @param drops     of rain and dew on the flowers, over the day
 * @param alternatives what changes if the day turns out another; only where something does
 * @param timeLine  of the running order; null when no picture is taken
 * @param spotPlan  the spots to scale; null where fewer than two positions are known exactly
 * @param flowering of the first picture's subject; null when nobody knows its months
 * @param season    how the day was chosen, and what flowers then
 * @param cautions  gravest first
 * @param assumed   the names, as in the plan's format, of what the author left out
 */
public record Brief(Trip trip, LocalDate date, SunDay sun, MoonDay moon, List<LightAt> light, List<SpotLight> places,
                    List<WeatherHour> weather, Drops drops, List<ShotBrief> shots, Outing outing,
                    List<Alternative> alternatives, Safety safety, Drawing timeLine, Drawing spotPlan, Story story, Packing packing,
                    List<CompanionBag> companionBags, Flowering flowering, SeasonBrief season, List<Advice> cautions,
                    List<Advice> findings, Set<String> assumed) {

    /** The picture of that name. */
    public ShotBrief shot(String name) {
        for (ShotBrief shot : shots) {
            if (shot.intent().shot().name().equals(name)) {
                return shot;
            }
        }
        throw new NoSuchElementException(name);
    }
}
