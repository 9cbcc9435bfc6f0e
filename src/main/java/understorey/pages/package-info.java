/**
 * From a {@link understorey.brief.Brief Brief} to pages: HTML and Markdown by templates, JSON, iCalendar and
 * GPX by small writers. {@link understorey.pages.Words Words} gives every figure its unit and its rounding,
 * {@link understorey.pages.Sentences Sentences} finds the words for a reason; the templates decide the rest.
 * Nothing is computed here.
 */
package understorey.pages;
