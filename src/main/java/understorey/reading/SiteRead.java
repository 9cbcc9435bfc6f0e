package understorey.reading;

import org.jspecify.annotations.Nullable;
import understorey.plan.Site;
import understorey.yaml.Names;

/**
 * A site that was read, with the names that a trip can use.
 *
 * @param site  null when it has errors or is not known
 * @param spots null when they are not known
 */
record SiteRead(@Nullable Site site, @Nullable Names spots, Subjects subjects) {

    /** For a file that could not be read: the names that a trip uses are not checked. */
    static SiteRead unknown(SubjectCatalogue catalogue) {
        return new SiteRead(null, null, new Subjects(catalogue, false));
    }
}
