/**
 * Decides which body, lens, support and filter serves which picture, and why.
 *
 * <p>Start at {@link understorey.kit.Intent Intent}, a shot with its defaults filled in, and
 * {@link understorey.kit.ShotFit ShotFit}, every lens of a bag tried on it; then
 * {@link understorey.kit.SmallestBag SmallestBag}, the lightest part of the bag that takes every picture as well.
 * Distances are metres, optics millimetres. The rules of craft are common practice, no source: see
 * {@link understorey.kit.Craft Craft}, {@link understorey.kit.Framing Framing} and
 * {@link understorey.kit.LensTrial LensTrial}.
 */
@NullMarked
package understorey.kit;

import org.jspecify.annotations.NullMarked;
