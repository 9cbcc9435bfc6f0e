package understorey.plan;

import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One visit to one wood. Components are null (or empty lists) if the author left them out.
 *
 * @param slug     name of its folder in the pages: the file name without its ending
 * @param when     the day, or the days to choose from
 * @param arrive   local time on site
 * @param leave    local time off site, the next day if it is not after the arrival
 * @param forecast hours in order
 * @param shots    in file order
 * @param wishes   about the date
 * @param display  units and clock of its pages
 */
public record Trip(String title, String slug, @Nullable String series, Site site, When when, @Nullable LocalTime arrive,
                   @Nullable LocalTime leave, Bag gear, List<Companion> companions, @Nullable Contact contact,
                   @Nullable SkyWord sky, List<ForecastHour> forecast, @Nullable String story, List<Shot> shots,
                   @Nullable Share share, DayWishes wishes, Display display) {

    /** A trip without wishes about its date, in the usual units. */
    public Trip(String title, String slug, @Nullable String series, Site site, When when, @Nullable LocalTime arrive,
                @Nullable LocalTime leave, Bag gear, List<Companion> companions, @Nullable Contact contact, @Nullable SkyWord sky,
                List<ForecastHour> forecast, @Nullable String story, List<Shot> shots, @Nullable Share share) {
        this(title, slug, series, site, when, arrive, leave, gear, companions, contact, sky, forecast, story, shots,
                share, DayWishes.NONE, Display.USUAL);
    }

    /** This trip to another site. */
    public Trip at(Site other) {
        return new Trip(title, slug, series, other, when, arrive, leave, gear, companions, contact, sky, forecast, story, shots,
                share, wishes, display);
    }

    /** This trip with its forecast replaced. */
    public Trip with(List<ForecastHour> other) {
        return new Trip(title, slug, series, site, when, arrive, leave, gear, companions, contact, sky, other, story, shots, share, wishes,
                display);
    }

    /** This trip for readers of other units or another clock. */
    public Trip shown(Display other) {
        return new Trip(title, slug, series, site, when, arrive, leave, gear, companions, contact, sky, forecast, story, shots, share, wishes,
                other);
    }

    /** Clock times of the visit. */
    public Stay stay() {
        return new Stay(arrive, leave);
    }

    public Share.Audience audience() {
        return share == null || share.audience() == null ? Share.Audience.PRIVATE : share.audience();
    }

    /** True for a public page of a sensitive site: the place is to be spared, and nothing may lead to it. */
    public boolean sparesThePlace() {
        return audience() == Share.Audience.PUBLIC && site.sensitive();
    }

    /** True where the public learns the month alone, since a day and its times tell a longitude. */
    public boolean hidesTheDay() {
        return sparesThePlace() && precision() == Share.Precision.HIDDEN;
    }

    /** Minutes to which pages that spare a place give their times; a time to the minute tells a longitude. */
    public static int clockStepMin(Share.Precision precision) {
        return precision == Share.Precision.HIDDEN ? 15 : 5;
    }

    public Share.Precision precision() {
        return share == null || share.position() == null ? Share.Precision.EXACT : share.position();
    }
}
