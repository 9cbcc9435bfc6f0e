package understorey.pages;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import understorey.brief.Brief;
import understorey.pages.words.Dates;
import understorey.pages.words.Words;

/**
 * What stays of a trip when its own pages are made.
 *
 * @param series   null for a single trip
 * @param site     name of the page of its site
 * @param bag      name of the page of its bag; null for one without a page
 * @param findings of its plan, warnings first, each with its level before it
 */
public record TripLine(Card card, LocalDate date, @Nullable String series, String site, @Nullable String bag, List<String> findings) {

    /** The trip on the index; {@code located} when it has a calendar and waypoints. */
    public record Card(String slug, String title, String date, String site, String pictures, String audience, boolean located) {
    }

    static TripLine of(Brief brief, List<String> findings) {
        int pictures = brief.timed().size();
        Card card = new Card(brief.trip().slug(), brief.trip().title(), Dates.day(brief.trip(), brief.date()),
                brief.trip().site().name(), pictures + (pictures == 1 ? " picture" : " pictures"),
                Words.audience(brief.trip().audience()), !brief.trip().hidesTheDay());
        return new TripLine(card, brief.date(), brief.trip().series(), brief.trip().site().slug(), brief.trip().gear().slug(),
                findings);
    }
}
