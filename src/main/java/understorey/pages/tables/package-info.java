/**
 * Tables and lists of facts, each declared once. A {@link understorey.pages.tables.Column Column} has its key, its head, its measure and
 * its value; rows of results make a {@link understorey.pages.tables.Table Table}, one of them a list of
 * {@link understorey.pages.tables.Facts Facts}. Templates show them as HTML and Markdown, {@code pages.json} writes the same
 * columns for programs.
 */
@NullMarked
package understorey.pages.tables;

import org.jspecify.annotations.NullMarked;
