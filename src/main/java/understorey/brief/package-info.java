/**
 * The one answer that everything shown is drawn from: {@link understorey.brief.Brief Brief}. {@link understorey.brief.Planner
 * Planner} makes it stage by stage: date, day, lens, order, settings, packing, story, drawings.
 */
@NullMarked
package understorey.brief;

import org.jspecify.annotations.NullMarked;
