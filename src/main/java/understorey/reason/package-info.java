/**
 * Advice as data: a {@link understorey.reason.Reason Reason} is a kind and its figures, a
 * {@link understorey.reason.Figure Figure} is a value and what it measures. Words are found for both in
 * {@code pages} only, so that one reason serves HTML, Markdown and JSON.
 */
package understorey.reason;
