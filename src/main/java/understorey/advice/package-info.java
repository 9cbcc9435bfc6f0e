/**
 * Advice as typed facts. {@link understorey.advice.Advice Advice} is sealed by topic; each topic holds a record a reason,
 * and the type of a record gives its severity. Other rooms construct the records, and decide by the facts of their own
 * results, never by advice. {@link understorey.advice.In In} gives the unit of a component.
 */
@NullMarked
package understorey.advice;

import org.jspecify.annotations.NullMarked;
