package understorey.pages;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import understorey.brief.Brief;
import understorey.pages.html.Drawn;
import understorey.pages.html.SeasonView;
import understorey.pages.html.SpotView;
import understorey.pages.words.Dates;
import understorey.pages.words.Sentences;
import understorey.plan.Share;
import understorey.plan.Site;
import understorey.plan.Trip;

/**
 * A site as trips show it.
 *
 * @param spared  a public page of a sensitive site
 * @param date    of the light, as a sentence begins
 * @param seasons of its subjects, each drawn once
 */
public record Visited(Site site, Share.Audience audience, Share.Precision precision, boolean spared, List<SpotView> light, String date,
                      List<SeasonView.Window> seasons) {

    static Visited of(Brief brief, SeasonView season, List<SpotView> light, Sentences sentences) {
        Trip trip = brief.trip();
        List<SeasonView.Window> seasons = new ArrayList<>();
        for (int i = 0; i < season.windows().size(); i++) {
            SeasonView.Window window = season.windows().get(i);
            String id = "season-" + brief.season().windows().get(i).subject().key();
            seasons.add(new SeasonView.Window(window.subject(), window.rows(), window.reasons(),
                    Drawn.of(brief.season().charts().get(i), id, sentences)));
        }
        return new Visited(trip.site(), trip.audience(), trip.precision(), trip.sparesThePlace(), light,
                Dates.onDay(trip, brief.date()), List.copyOf(seasons));
    }

    /** What the page of the site shows of two trips: all of the more public one, and of equals the subjects of both. */
    Visited and(Visited other) {
        int byAudience = audience.compareTo(other.audience);
        int more = byAudience != 0 ? byAudience : precision.compareTo(other.precision);
        return more > 0 ? this : more < 0 ? other : new Visited(site, audience, precision, spared, light, date, both(seasons, other.seasons));
    }

    private static List<SeasonView.Window> both(Collection<SeasonView.Window> seasons, Collection<SeasonView.Window> others) {
        Map<String, SeasonView.Window> bySubject = new LinkedHashMap<>();
        seasons.forEach(window -> bySubject.put(window.subject(), window));
        others.forEach(window -> bySubject.putIfAbsent(window.subject(), window));
        return List.copyOf(bySubject.values());
    }
}
