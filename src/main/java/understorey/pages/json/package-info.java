/**
 * {@code plan.json}: the figures of a trip for other programs. Start at {@link understorey.pages.json.PlanJson PlanJson};
 * {@link understorey.pages.json.Json Json} writes one member a call. The key names the unit ({@code _m}, {@code _mm}, {@code _s},
 * {@code _deg}, {@code _g}), instants are ISO 8601 with their offset, and what is not known is {@code null}.
 */
@NullMarked
package understorey.pages.json;

import org.jspecify.annotations.NullMarked;
