package understorey.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/**
 * A wood.
 *
 * @param name       as the author calls it
 * @param slug       of its page
 * @param publicName used on public pages when the site is sensitive; null when not given
 * @param position   of the site as a whole
 * @param elevationM above sea level; null when not given
 * @param zone       in which every time of the plan is local
 * @param skyline    by rising bearing; empty for a level horizon
 * @param canopy     null when the author did not say: open ground
 * @param spots      in file order
 * @param walks      between spots
 * @param opening    null when always open
 * @param parking    null when not given
 * @param seasons    one a subject
 * @param subjects   described by the site itself
 * @param access     Markdown; null when not given
 * @param reports    where to ask for the state of the flowers; null when not given
 * @param sensitive  public pages never give position, spot names, access or reports
 * @param cautions   Markdown, a line each
 * @param notes      Markdown; null when there are none
 */
public record Site(String name, String slug, String publicName, Position position, Double elevationM, ZoneId zone,
                   List<SkylinePoint> skyline, Canopy canopy, List<Spot> spots, List<Walk> walks, Opening opening,
                   Parking parking, List<Season> seasons, List<Subject> subjects, String access, String reports,
                   boolean sensitive, List<String> cautions, String notes) {

    /** The same wood with another page. */
    public Site withSlug(String other) {
        return new Site(name, other, publicName, position, elevationM, zone, skyline, canopy, spots, walks, opening,
                parking, seasons, subjects, access, reports, sensitive, cautions, notes);
    }

    /** False for a day that the calendar of this place left out, as Samoa did when it crossed the date line. */
    public boolean has(LocalDate date) {
        return date.atStartOfDay(zone).toLocalDate().equals(date);
    }

    /** The spot of that name, or null. */
    public Spot spot(String spotName) {
        for (Spot spot : spots) {
            if (spot.name().equals(spotName)) {
                return spot;
            }
        }
        return null;
    }

    /** The trees above a spot; above the site itself when the spot is null. */
    public Canopy canopyAt(Spot spot) {
        Canopy here = canopy == null ? Canopy.NONE : canopy;
        return spot == null || spot.canopy() == null ? here : spot.canopy().over(here);
    }

    /** The skyline seen from a spot; from the site itself when the spot is null. */
    public List<SkylinePoint> skylineAt(Spot spot) {
        return spot == null || spot.skyline() == null ? skyline : spot.skyline();
    }

    /** Where a spot lies; the site's own position when the spot is null or has none. */
    public Position positionOf(Spot spot) {
        return spot == null || spot.at() == null ? position : spot.at();
    }
}
