package understorey.reading;

import java.nio.file.Path;
import java.util.List;
import understorey.plan.Bag;
import understorey.plan.Site;
import understorey.plan.Subject;
import understorey.plan.Trip;

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
 */
public record Plans(List<Trip> trips, List<Site> sites, List<Bag> bags, List<Finding> findings,
                    int errors, int warnings, List<Path> faultyTrips, List<Subject> subjects) {

    /** True when anything stops the build of a page. */
    public boolean hasErrors() {
        return errors > 0;
    }
}
