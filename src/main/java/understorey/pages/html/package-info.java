/**
 * What the pages show: records of text, ready for the templates of the HTML pages and of the Markdown twin. Start at
 * {@link understorey.pages.html.PlanView PlanView}, the whole of a trip. Every figure is text with its unit already; drawings and
 * the author's own text are HTML. A component is null, or its text empty, where there is nothing to say.
 */
@NullMarked
package understorey.pages.html;

import org.jspecify.annotations.NullMarked;
