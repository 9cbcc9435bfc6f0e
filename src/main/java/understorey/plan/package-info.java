/**
 * What the author wrote, as records: a {@link understorey.plan.Trip Trip} with its
 * {@link understorey.plan.Site Site}, {@link understorey.plan.Bag Bag} and
 * {@link understorey.plan.Shot Shot}s.
 *
 * <p>A component is {@code null} if the author left it out. The code that needs it sets the default and reports it.
 * Lengths are in metres, optics in millimetres, angles in degrees, weights in grams, as the names say.
 */
@NullMarked
package understorey.plan;

import org.jspecify.annotations.NullMarked;
