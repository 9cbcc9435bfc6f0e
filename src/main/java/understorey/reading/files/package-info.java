/**
 * The author's folder: the files of {@link understorey.reading.files.PlanFolder PlanFolder}, the tables
 * {@link understorey.reading.files.Beside Beside} them, and the names that files and pages can have,
 * {@link understorey.reading.files.Slug Slug}.
 */
@NullMarked
package understorey.reading.files;

import org.jspecify.annotations.NullMarked;
