/**
 * Reads subjects: the rows of the {@link understorey.reading.subject.SubjectCatalogue SubjectCatalogue}, and those that an author
 * describes. {@link understorey.reading.subject.Subjects Subjects} finds what a shot at a site can name.
 */
@NullMarked
package understorey.reading.subject;

import org.jspecify.annotations.NullMarked;
