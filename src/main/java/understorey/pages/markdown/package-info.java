/**
 * The author's own text, CommonMark with tables, made harmless: {@link understorey.pages.markdown.Prose Prose} makes HTML of it,
 * {@link understorey.pages.markdown.MarkdownProse MarkdownProse} the Markdown of the twin, where
 * {@link understorey.pages.markdown.MarkdownFormat MarkdownFormat} escapes all other values.
 */
@NullMarked
package understorey.pages.markdown;

import org.jspecify.annotations.NullMarked;
