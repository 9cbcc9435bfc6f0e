package understorey.plan;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A wood, with its spots and what is known about it.
 *
 * @param name       in the words of the author
 * @param slug       name of its page
 * @param publicName used on public pages if the site is sensitive
 * @param position   of the site as a whole
 * @param elevationM above sea level
 * @param zone       time zone of every clock time in the plan
 * @param skyline    by rising bearing; empty for a level horizon
 * @param canopy     null for open ground
 * @param spots      in file order
 * @param walks      between spots
 * @param opening    null when always open
 * @param seasons    one per subject
 * @param subjects   described by the site itself
 * @param access     Markdown
 * @param reports    where to ask for the state of the flowers
 * @param sensitive  public pages never give position, spot names, access or reports
 * @param cautions   Markdown, one line each
 * @param notes      Markdown
 * @param edges      by rising bearing; empty if none is known
 * @param country    code of ISO 3166-1 alpha-2, in capitals
 */
public record Site(String name, String slug, @Nullable String publicName, Position position, @Nullable Double elevationM,
                   ZoneId zone, List<SkylinePoint> skyline, @Nullable Canopy canopy, List<Spot> spots, List<Walk> walks,
                   @Nullable Opening opening, @Nullable Parking parking, List<Season> seasons, List<Subject> subjects,
                   @Nullable String access, @Nullable String reports, boolean sensitive, List<String> cautions,
                   @Nullable String notes, List<Edge> edges, @Nullable String country) {

    /** This site with another page name. */
    public Site withSlug(String other) {
        return new Site(name, other, publicName, position, elevationM, zone, skyline, canopy, spots, walks, opening,
                parking, seasons, subjects, access, reports, sensitive, cautions, notes, edges, country);
    }

    /** This site under other trees. */
    public Site under(Canopy trees) {
        return new Site(name, slug, publicName, position, elevationM, zone, skyline, trees, spots, walks, opening,
                parking, seasons, subjects, access, reports, sensitive, cautions, notes, edges, country);
    }

    /** False for a day that the calendar of this place left out, as Samoa did when it crossed the date line. */
    public boolean has(LocalDate date) {
        return date.atStartOfDay(zone).toLocalDate().equals(date);
    }

    /** Spot of that name; null if there is none. */
    public @Nullable Spot spot(@Nullable String spotName) {
        return spots.stream().filter(spot -> spot.name().equals(spotName)).findFirst().orElse(null);
    }

    /** Trees above a spot, or above the site itself if the spot is null. */
    public Canopy canopyAt(@Nullable Spot spot) {
        Canopy here = canopy == null ? Canopy.NONE : canopy;
        return spot == null || spot.canopy() == null ? here : spot.canopy().over(here);
    }

    /** Skyline from a spot, or from the site itself if the spot is null. */
    public List<SkylinePoint> skylineAt(@Nullable Spot spot) {
        return spot == null || spot.skyline() == null ? skyline : spot.skyline();
    }

    /** Edges of the wood seen from a spot, or from the site itself if the spot is null. */
    public List<Edge> edgesAt(@Nullable Spot spot) {
        return spot == null || spot.edges() == null ? edges : spot.edges();
    }

    /** Position of a spot, or of the site itself if the spot is null or has none. */
    public Position positionOf(@Nullable Spot spot) {
        return spot == null || spot.at() == null ? position : spot.at();
    }
}
