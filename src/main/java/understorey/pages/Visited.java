package understorey.pages;

import java.util.List;
import understorey.brief.Brief;
import understorey.pages.html.SpotView;
import understorey.pages.words.Dates;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;

/**
 * A site as a trip shows it.
 *
 * @param spared a public page of a sensitive site
 * @param date   of the light, as a sentence begins
 */
public record Visited(Site site, Share.Audience audience, Share.Precision precision, boolean spared, List<SpotView> light, String date) {

    static Visited of(Brief brief, List<SpotView> light) {
        Trip trip = brief.trip();
        return new Visited(trip.site(), trip.audience(), trip.precision(), trip.sparesThePlace(), light, Dates.onDay(trip, brief.date()));
    }

    /** Whether more people may see this than another. */
    boolean isMorePublic(Visited other) {
        int byAudience = audience.compareTo(other.audience);
        return (byAudience != 0 ? byAudience : precision.compareTo(other.precision)) > 0;
    }
}
