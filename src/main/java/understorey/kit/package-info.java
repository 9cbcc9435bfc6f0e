/**
 * Which lens, support and filter serves which picture, and why.
 *
 * <p>Start at {@link understorey.kit.Intent Intent}, a shot with its defaults filled in, and
 * {@link understorey.kit.ShotFit ShotFit}, every lens of a bag tried on it; then
 * {@link understorey.kit.SmallestBag SmallestBag}, the lightest part of the bag that takes every picture as well.
 * Distances are metres, optics millimetres. The limits of taste (how much crop, how long a step back) are
 * common practice, no source, and stand as constants in {@link understorey.kit.LensTrial LensTrial}.
 */
@NullMarked
package understorey.kit;

import org.jspecify.annotations.NullMarked;
