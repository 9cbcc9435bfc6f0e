package understorey.reading.site;

import org.jspecify.annotations.Nullable;
import understorey.plan.Site;
import understorey.reading.subject.SubjectCatalogue;
import understorey.reading.subject.Subjects;
import understorey.yaml.Names;

/**
 * A site that was read, with the names that a trip can use.
 *
 * @param site  null when it has errors or is not known
 * @param spots null when they are not known
 */
public record SiteRead(@Nullable Site site, @Nullable Names spots, Subjects subjects) {

    /** For a file that could not be read: the names that a trip uses are not checked. */
    public static SiteRead unknown(SubjectCatalogue catalogue) {
        return new SiteRead(null, null, new Subjects(catalogue, false));
    }
}
