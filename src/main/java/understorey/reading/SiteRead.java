package understorey.reading;

import understorey.plan.Site;

/**
 * A site as read, with the names that a trip may use.
 *
 * @param site  null when it has errors or is not known
 * @param spots null when they are not known
 */
record SiteRead(Site site, Names spots, Subjects subjects) {

    /** Of a file that could not be taken apart: nothing can be said of the names that a trip uses. */
    static SiteRead unknown(SubjectCatalogue catalogue) {
        return new SiteRead(null, null, new Subjects(catalogue, false));
    }
}
