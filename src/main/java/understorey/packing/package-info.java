/**
 * What to carry and what to leave at home, and the cautions that fit the day. Weights are grams, cards
 * gigabytes, temperatures °C. Which things are needed is {@link understorey.kit.SmallestBag SmallestBag}'s answer.
 */
@NullMarked
package understorey.packing;

import org.jspecify.annotations.NullMarked;
