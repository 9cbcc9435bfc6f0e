package understorey.reading;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import understorey.plan.Bag;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Trip;
import understorey.yaml.finding.Finding;

/**
 * All that a plans folder holds. Trips, sites and bags are those without errors, by file name.
 *
 * @param sites       of site files; a site described inside a trip comes with its trip
 * @param bags        of bag files; a bag described inside a trip, and the built-in one, come with their trip
 * @param findings    by file and place; of a file with more than a hundred the first hundred, and a note of how many more
 * @param errors      how many there are, shown or not
 * @param warnings    how many there are, shown or not
 * @param faultyTrips trip files that cannot be built, because of their own errors or those of a site or
 *                    bag that they name
 * @param subjects    of the built-in catalogue
 * @param places      where each value is written
 * @param folder      of the files
 * @param names       of all trip files there, without the ending
 * @param only        name of the only trip to build; null for the whole folder. Then trips, sites, bags and findings are
 *                    those of this trip
 * @param others      trips beside the only one
 */
public record Plans(List<Trip> trips, List<Site> sites, List<Bag> bags, List<Finding> findings,
                    int errors, int warnings, List<Path> faultyTrips, List<Subject> subjects, Locators places, Path folder,
                    Set<String> names, @Nullable String only, List<Trip> others) {

    /** The file of a trip. */
    public Path file(Trip trip) {
        return folder.resolve(trip.slug() + ".yaml");
    }

    /** A file of the folder as findings show it. */
    public String shown(String file) {
        Path name = folder.getFileName();
        return (name == null || name.toString().isEmpty() ? "" : name + "/") + file;
    }

    /** The same plans without some trips and sites, and with more errors among the findings. */
    public Plans with(List<Trip> otherTrips, List<Site> otherSites, List<Finding> otherFindings) {
        return new Plans(otherTrips, otherSites, bags, otherFindings, errors + otherFindings.size() - findings.size(), warnings,
                faultyTrips, subjects, places, folder, names, only, others);
    }

    /** True when anything stops the build of a page. */
    public boolean hasErrors() {
        return errors > 0;
    }
}
