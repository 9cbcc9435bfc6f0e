package understorey.visit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import understorey.light.LightAt;
import understorey.light.LightTable;
import understorey.plan.Shot;
import understorey.plan.Site;
import understorey.plan.Trip;
import understorey.sky.Interval;
import understorey.sky.MoonDay;
import understorey.sky.SunDay;
import understorey.weather.Drops;

/**
 * A trip on its date: sun, light, hours, walks and weather, before any picture has a time.
 *
 * @param trip      as its audience gets it
 * @param hours     of the visit
 * @param light     at the site itself, over the day of the {@link Hours}, every 15 minutes
 * @param places    where the pictures are taken, each with its own light; the site itself if there are no spots
 * @param darkest   sun and light over the day at the darkest place, for the walk
 * @param headTorch when the way in and the way out need one
 * @param walks     between the spots of the pictures and the car park
 * @param sky       the weather to expect
 * @param drops     of rain and dew on the flowers
 */
public record Day(Trip trip, LocalDate date, SunDay sun, MoonDay moon, Hours hours, List<LightAt> light, List<Place> places,
                  DayCurve darkest, HeadTorchHours headTorch, SpotWalks walks, ExpectedSky sky, Drops drops) {

    /** A trip on one of its dates. */
    public static Day of(Trip trip, LocalDate date) {
        Site site = trip.site();
        Interval span = Hours.day(trip, date);
        SunDay sun = SunDay.of(site.position(), span);
        Hours hours = Hours.of(trip, date, () -> sun);
        List<LightAt> light = LightTable.of(site, null, span);
        List<Place> places = Places.of(trip, span, sun, light);
        DayCurve darkest = new DayCurve(darkest(light, places));
        return new Day(trip, date, sun, MoonDay.of(site.position(), span), hours, light, places, darkest,
                HeadTorchHours.of(darkest, hours.arrive(), hours.end()), SpotWalks.of(trip, hours, darkest), new ExpectedSky(trip),
                Drops.of(span, trip.forecast(), trip.sky()));
    }

    /** The light of the place that is darkest under an overcast sky, row by row. */
    private static List<LightAt> darkest(List<LightAt> light, List<Place> places) {
        List<LightAt> darkest = new ArrayList<>(light);
        for (Place place : places) {
            for (int i = 0; i < darkest.size(); i++) {
                LightAt there = place.light().get(i);
                darkest.set(i, there.floor().overcast() < darkest.get(i).floor().overcast() ? there : darkest.get(i));
            }
        }
        return List.copyOf(darkest);
    }

    /** The place where a picture of the trip is taken. */
    public Place place(Shot shot) {
        return places.stream().filter(place -> place.holds(shot.spot())).findFirst().orElseThrow();
    }
}
