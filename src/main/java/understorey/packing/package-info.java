/**
 * Packing list and cautions of a day. Weights are grams, cards gigabytes, temperatures °C. {@link
 * understorey.kit.SmallestBag SmallestBag} decides which things are needed.
 */
@NullMarked
package understorey.packing;

import org.jspecify.annotations.NullMarked;
