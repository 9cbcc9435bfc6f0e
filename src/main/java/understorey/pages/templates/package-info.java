/**
 * How a template becomes a page: {@link understorey.pages.templates.Templates Templates} reads the templates of the program and
 * those of the user, and fills one with a record. A template sees components of records and calls no method; a missing value and a
 * template without end are a {@link understorey.pages.words.TemplateFault TemplateFault} with file, line and column.
 */
@NullMarked
package understorey.pages.templates;

import org.jspecify.annotations.NullMarked;
