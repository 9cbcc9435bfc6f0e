/**
 * What the author wrote, bound: a {@link understorey.plan.Trip Trip} with its
 * {@link understorey.plan.Site Site}, {@link understorey.plan.Bag Bag} and
 * {@link understorey.plan.Shot Shot}s.
 *
 * <p>A component is {@code null} where the author left it out; whoever needs it decides the default and
 * says so. Lengths are metres, optics millimetres, angles degrees, weights grams, as the names say.
 */
package understorey.plan;
